package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Von Roeckl's curve resistance of standard-gauge track in thousandths of the weight: {@code 650/(R - 55)} from 300 m,
 * {@code 500/(R - 30)} below, R in metres.
 *
 * <p>Source: [ROECKL] (read in a quotation). As printed it falls by 30 per cent just below 300 m. Refused below 60 m.
 */
public final class Roeckl {

    static final double RADIUS_LEAST_M = 60;
    static final double CHANGE_M = 300;

    private Roeckl() {}

    /** Returns newtons per kilogram of train on the curve; 0 for an infinite radius. */
    public static double perMassN(double radiusM) {
        Check.within("radiusM", radiusM, RADIUS_LEAST_M, Double.POSITIVE_INFINITY);
        double perMille = radiusM >= CHANGE_M ? 650 / (radiusM - 55) : 500 / (radiusM - 30);
        return perMille * Units.GRAVITY_MPS2 / 1000;
    }
}
