package org.crosshead.kernel.track;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.crosshead.kernel.units.Check;

/**
 * A value that is constant over lengths of a path, with its running integral. Before the first and after the last boundary the
 * nearest length goes on, so that a train may stand with its tail behind the start.
 */
final class PiecewiseConstant {

    private static final int SHARES_PER_LENGTH = 4;

    private final double[] boundariesM;
    private final double[] values;
    /** Integral from the first boundary to each boundary. */
    private final double[] integral;
    /** Integral of that integral, from the first boundary to each boundary. */
    private final double[] second;
    /** Length at the start of each of many equal shares of the whole, from which a place is found in a step or two. */
    private final int[] lengthAtShare;

    private final double sharesPerM;

    /**
     * @param boundariesM rising, one more than there are values
     */
    PiecewiseConstant(double[] boundariesM, double[] values) {
        Check.that(values.length >= 1, "there must be at least one length");
        Check.that(boundariesM.length == values.length + 1, "boundariesM must be one more than the lengths");
        for (int i = 0; i < values.length; i++) {
            Check.that(
                    boundariesM[i + 1] > boundariesM[i], "boundariesM must rise, but did not after " + boundariesM[i]);
        }
        this.boundariesM = boundariesM.clone();
        this.values = values.clone();
        integral = new double[boundariesM.length];
        second = new double[boundariesM.length];
        for (int i = 0; i < values.length; i++) {
            double lengthM = boundariesM[i + 1] - boundariesM[i];
            integral[i + 1] = integral[i] + values[i] * lengthM;
            second[i + 1] = second[i] + lengthM * (integral[i] + integral[i + 1]) / 2;
        }
        lengthAtShare = new int[SHARES_PER_LENGTH * values.length];
        sharesPerM = lengthAtShare.length / (endM() - startM());
        int length = 0;
        for (int i = 0; i < lengthAtShare.length; i++) {
            length = from(length, startM() + i / sharesPerM);
            lengthAtShare[i] = length;
        }
    }

    PiecewiseConstant mapped(DoubleUnaryOperator function) {
        return new PiecewiseConstant(
                boundariesM, Arrays.stream(values).map(function).toArray());
    }

    PiecewiseConstant reversed(DoubleUnaryOperator function) {
        int count = values.length;
        double endM = endM();
        double[] boundaries = new double[count + 1];
        double[] turned = new double[count];
        for (int i = 0; i <= count; i++) {
            boundaries[i] = endM - boundariesM[count - i];
        }
        for (int i = 0; i < count; i++) {
            turned[i] = function.applyAsDouble(values[count - 1 - i]);
        }
        return new PiecewiseConstant(boundaries, turned);
    }

    double startM() {
        return boundariesM[0];
    }

    double endM() {
        return boundariesM[boundariesM.length - 1];
    }

    int count() {
        return values.length;
    }

    double[] boundariesM() {
        return boundariesM.clone();
    }

    /** Returns the value of the length that begins at or before the place. */
    double at(double positionM) {
        return values[index(positionM)];
    }

    /** Returns the least value of the lengths from that of one place to that of another further on. */
    double least(double fromM, double toM) {
        int last = index(toM);
        double least = values[last];
        for (int i = index(fromM); i < last; i++) {
            least = Math.min(least, values[i]);
        }
        return least;
    }

    /** Returns the integral from the first boundary; negative before it where the value is positive. */
    double integralTo(double positionM) {
        int i = index(positionM);
        return integral[i] + values[i] * (positionM - boundariesM[i]);
    }

    double mean(double fromM, double toM) {
        return (integralTo(toM) - integralTo(fromM)) / (toM - fromM);
    }

    /** Returns the mean of {@link #integralTo} between two places. */
    double meanIntegral(double fromM, double toM) {
        return (secondTo(toM) - secondTo(fromM)) / (toM - fromM);
    }

    private double secondTo(double positionM) {
        int i = index(positionM);
        double alongM = positionM - boundariesM[i];
        return second[i] + alongM * (integral[i] + values[i] * alongM / 2);
    }

    private int index(double positionM) {
        int share = (int) ((positionM - boundariesM[0]) * sharesPerM);
        return from(lengthAtShare[Math.max(0, Math.min(lengthAtShare.length - 1, share))], positionM);
    }

    /** Returns the last length that begins at or before a place, or the first; sought from a length near it. */
    private int from(int near, double positionM) {
        int i = near;
        while (i + 1 < values.length && boundariesM[i + 1] <= positionM) {
            i++;
        }
        while (i > 0 && boundariesM[i] > positionM) {
            i--;
        }
        return i;
    }
}
