package org.crosshead.kernel.traction;

import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;

/**
 * Heat that a hand-fired grate gives. Efficiency falls evenly with the rate of firing, from about 0.775 at 20 to 0.525 at 120 lb
 * of coal for each square foot of grate and hour (from memory, after Fry). A good rate for good is one hundredweight (Bourne,
 * key BOU in docs/sources.md).
 */
final class Grate {

    private static final double GOOD_RATE_LB_PER_SQ_FT_HOUR = 112;
    private static final double EFFICIENCY_AT_REST = 0.825;
    private static final double EFFICIENCY_FALL = 0.0025;
    private static final double HOUR_S = 3_600;

    /** Evaporation for each square foot of heating surface in an hour, lb (Bourne). */
    private static final double SURFACE_LB_PER_SQ_FT_HOUR = 12.5;

    private final double rateUnitKgPerS;
    private final double heatJPerKg;
    private final double surfaceLimitKgPerS;

    Grate(Boiler boiler) {
        double sqFt = Units.sqFtFromM2(boiler.grateM2());
        this.rateUnitKgPerS = Units.kgFromLb(sqFt) / HOUR_S;
        this.heatJPerKg = boiler.coalHeatJPerKg();
        this.surfaceLimitKgPerS =
                Units.kgFromLb(SURFACE_LB_PER_SQ_FT_HOUR * Units.sqFtFromM2(boiler.heatingSurfaceM2())) / HOUR_S;
    }

    double coalMaxKgPerS() {
        return GOOD_RATE_LB_PER_SQ_FT_HOUR * rateUnitKgPerS;
    }

    /** Returns the steam that the heating surface makes at most. */
    double surfaceLimitKgPerS() {
        return surfaceLimitKgPerS;
    }

    /** Returns the heat that reaches water and steam; above the greatest rate more coal gives no more. */
    double heatW(double coalKgPerS) {
        double coal = Math.min(coalKgPerS, coalMaxKgPerS());
        double rate = coal / rateUnitKgPerS;
        return coal * heatJPerKg * (EFFICIENCY_AT_REST - EFFICIENCY_FALL * rate);
    }

    /** Returns the coal for a heat, at most the greatest rate. */
    double coalKgPerS(double heatW) {
        double perUnitW = rateUnitKgPerS * heatJPerKg;
        double root = EFFICIENCY_AT_REST * EFFICIENCY_AT_REST - 4 * EFFICIENCY_FALL * heatW / perUnitW;
        if (root <= 0) {
            return coalMaxKgPerS();
        }
        double rate = (EFFICIENCY_AT_REST - Math.sqrt(root)) / (2 * EFFICIENCY_FALL);
        return Math.min(coalMaxKgPerS(), rate * rateUnitKgPerS);
    }
}
