package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Deceleration and times of a train of known braked percentage (lambda), by the conversion model of the European train control
 * system.
 *
 * <p>Source: [SUBSET-026-3] A.3.7 to A.3.9 (formulas and coefficients read). Made for composition-era stock with lambda from 30 to
 * 250 and up to 200 km/h; used here as a check on our own distances and for stock of which only the braked weight is known. A
 * deceleration is that of the whole train on the level, turning wheels and resistance included.
 */
public final class Subset026Conversion {

    private static final double LAMBDA_MIN = 10;
    private static final double LAMBDA_MAX = 250;
    private static final double[] STEP_ENDS_KMH = {100, 120, 150, 180, Double.POSITIVE_INFINITY};
    /** a3, a2, a1, a0 for n = 1 to 5, [SUBSET-026-3] A.3.7.6. */
    private static final double[][] COEFFICIENTS = {
        {-6.30E-07, 6.10E-05, 4.72E-03, 0.0663},
        {2.73E-07, -4.54E-06, 5.14E-03, 0.1300},
        {5.58E-08, -6.76E-06, 5.81E-03, 0.0479},
        {3.00E-08, -3.85E-06, 5.52E-03, 0.0480},
        {3.23E-09, 1.66E-06, 5.06E-03, 0.0559}
    };

    private Subset026Conversion() {}

    /** Returns the speed up to which {@link #basicMps2} holds. */
    public static double speedLimitMps(double lambda) {
        checkLambda(lambda);
        return Units.mpsFromKmh(16.85 * Math.pow(lambda, 0.428));
    }

    /** Returns the emergency deceleration AD_0, from rest up to {@link #speedLimitMps}. */
    public static double basicMps2(double lambda) {
        checkLambda(lambda);
        return 0.0075 * lambda + 0.076;
    }

    /** Returns the emergency deceleration AD_n of a step above {@link #speedLimitMps}; n from 1 to 5. */
    public static double stepMps2(int n, double lambda) {
        Check.within("n", n, 1, COEFFICIENTS.length);
        checkLambda(lambda);
        double[] a = COEFFICIENTS[n - 1];
        return ((a[0] * lambda + a[1]) * lambda + a[2]) * lambda + a[3];
    }

    /** Returns the emergency deceleration at a speed. */
    public static double decelerationMps2(double lambda, double speedMps) {
        Check.within("speedMps", speedMps, 0, Units.mpsFromKmh(200));
        if (speedMps <= speedLimitMps(lambda)) {
            return basicMps2(lambda);
        }
        double v = Units.kmhFromMps(speedMps);
        int n = 1;
        while (v > STEP_ENDS_KMH[n - 1]) {
            n++;
        }
        return stepMps2(n, lambda);
    }

    /** Returns the force that gives these decelerations to a body; its resistance must then not be counted again. */
    public static BrakeForce force(double lambda, double inertiaKg) {
        checkLambda(lambda);
        Check.positive("inertiaKg", inertiaKg);
        return speedMps -> inertiaKg * decelerationMps2(lambda, speedMps);
    }

    private static void checkLambda(double lambda) {
        Check.within("lambda", lambda, LAMBDA_MIN, LAMBDA_MAX);
    }
}
