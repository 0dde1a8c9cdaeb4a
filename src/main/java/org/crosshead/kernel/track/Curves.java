package org.crosshead.kernel.track;

import java.util.function.DoubleUnaryOperator;
import org.crosshead.kernel.units.Check;

/** The curves of a path by radius; an infinite radius is straight. */
public final class Curves {

    private static final double RADIUS_LEAST_M = 20;

    private final PiecewiseConstant radii;

    private Curves(PiecewiseConstant radii) {
        this.radii = radii;
    }

    /**
     * Returns curves.
     *
     * @param boundariesM ends of the lengths, rising, one more than there are radii
     * @param radiiM radius of each length, 20 m or more; {@link Double#POSITIVE_INFINITY} for straight track
     */
    public static Curves of(double[] boundariesM, double[] radiiM) {
        for (double radiusM : radiiM) {
            Check.within("radiusM", radiusM, RADIUS_LEAST_M, Double.POSITIVE_INFINITY);
        }
        return new Curves(new PiecewiseConstant(boundariesM, radiiM));
    }

    /** Returns straight track over a length. */
    public static Curves straight(double lengthM) {
        return of(new double[] {0, lengthM}, new double[] {Double.POSITIVE_INFINITY});
    }

    public double radiusAt(double positionM) {
        return radii.at(positionM);
    }

    /** Returns the curves as resistance, by a function of the radius. */
    public CurveDrag drag(DoubleUnaryOperator newtonsPerKgOfRadiusM) {
        return new CurveDrag(radii.mapped(newtonsPerKgOfRadiusM));
    }

    /** Resistance of the curves for each kilogram of train. */
    public static final class CurveDrag {

        private final PiecewiseConstant newtonsPerKg;

        private CurveDrag(PiecewiseConstant newtonsPerKg) {
            this.newtonsPerKg = newtonsPerKg;
        }

        /** Returns the mean over a train, N/kg. */
        public double mean(double headM, double trainLengthM) {
            return newtonsPerKg.mean(headM - trainLengthM, headM);
        }

        /** Returns the work for each kilogram of train while its head runs from the start to a place, J/kg. */
        public double workTo(double headM, double trainLengthM) {
            return newtonsPerKg.meanIntegral(headM - trainLengthM, headM);
        }
    }
}
