package org.crosshead.kernel.track;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The gradients of a path, measured along the rails in metres. A gradient is rise over horizontal run, positive where the path
 * rises in the direction of running. Before the start and after the end the nearest gradient goes on.
 */
public final class GradientProfile {

    private static final double GRADIENT_MAX = 0.2;

    private final PiecewiseConstant gradients;
    private final PiecewiseConstant sines;

    private GradientProfile(PiecewiseConstant gradients) {
        this.gradients = gradients;
        this.sines = gradients.mapped(Units::sineOfGradient);
    }

    /**
     * Returns a profile.
     *
     * @param boundariesM ends of the lengths, rising, one more than there are gradients
     * @param gradients of each length, from -0.2 to 0.2
     * @throws IllegalArgumentException if the boundaries do not rise or a gradient is out of range
     */
    public static GradientProfile of(double[] boundariesM, double[] gradients) {
        for (double gradient : gradients) {
            Check.within("gradient", gradient, -GRADIENT_MAX, GRADIENT_MAX);
        }
        return new GradientProfile(new PiecewiseConstant(boundariesM, gradients));
    }

    /** Returns one gradient over a length. */
    public static GradientProfile even(double lengthM, double gradient) {
        return of(new double[] {0, lengthM}, new double[] {gradient});
    }

    public double startM() {
        return gradients.startM();
    }

    public double endM() {
        return gradients.endM();
    }

    public double[] boundariesM() {
        return gradients.boundariesM();
    }

    public double gradientAt(double positionM) {
        return gradients.at(positionM);
    }

    /** Returns the height above the start. */
    public double heightM(double positionM) {
        return sines.integralTo(positionM);
    }

    public double riseM(double fromM, double toM) {
        return heightM(toM) - heightM(fromM);
    }

    /** Returns the mean over a train of rise for each metre of rail: gravity on the train is weight times this. */
    public double meanGradient(double headM, double trainLengthM) {
        return sines.mean(headM - trainLengthM, headM);
    }

    /** Returns the mean height of an evenly loaded train above the start. */
    public double meanHeightM(double headM, double trainLengthM) {
        return sines.meanIntegral(headM - trainLengthM, headM);
    }

    /** Returns the same rails run the other way. */
    public GradientProfile reversed() {
        return new GradientProfile(gradients.reversed(gradient -> -gradient));
    }
}
