package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;

/**
 * Reaction and equivalent build-up times of air brakes by kind and length of train.
 *
 * <p>Source: [SUBSET-026-3] A.3.8 and A.3.9 (read). The equivalent time T is the reaction time plus half the rise: a brake that
 * springs to full force T after the handle moved stops in nearly the same distance. Lengths up to 1500 m.
 */
public enum Subset026Times {
    /** Passenger train, position P. */
    PASSENGER_P(1.42, 1.06),
    /** Goods train, position P. */
    FREIGHT_P(2.99, 2.07),
    /** Goods train, position G. */
    FREIGHT_G(9.30, 5.70);

    private static final double LENGTH_MAX_M = 1500;
    private static final double LONG_M = 900;
    private static final double SHORT_M = 400;

    private final double emergencyReactionS;
    private final double serviceReactionS;

    Subset026Times(double emergencyReactionS, double serviceReactionS) {
        this.emergencyReactionS = emergencyReactionS;
        this.serviceReactionS = serviceReactionS;
    }

    public double emergencyReactionS() {
        return emergencyReactionS;
    }

    public double serviceReactionS() {
        return serviceReactionS;
    }

    /** Returns T of an emergency application. */
    public double emergencyS(double lengthM) {
        double hundreds = Math.max(SHORT_M, checkedM(lengthM)) / 100;
        if (this == PASSENGER_P || (this == FREIGHT_P && lengthM <= LONG_M)) {
            return 2.30 + 0.17 * hundreds * hundreds;
        }
        if (this == FREIGHT_G && lengthM <= LONG_M) {
            double plain = lengthM / 100;
            return 12.00 + 0.05 * plain * plain;
        }
        return -0.40 + 1.60 * hundreds + 0.03 * hundreds * hundreds;
    }

    /** Returns T of a full service application. */
    public double serviceS(double lengthM) {
        double hundreds = checkedM(lengthM) / 100;
        if (this == PASSENGER_P) {
            return 3.00 + 1.50 * hundreds + 0.10 * hundreds * hundreds;
        }
        if (this == FREIGHT_G) {
            hundreds = Math.max(SHORT_M, lengthM) / 100;
        }
        return lengthM <= LONG_M ? 3.00 + 2.77 * hundreds : 10.50 + 0.32 * hundreds + 0.18 * hundreds * hundreds;
    }

    private static double checkedM(double lengthM) {
        return Check.within("lengthM", lengthM, 0, LENGTH_MAX_M);
    }
}
