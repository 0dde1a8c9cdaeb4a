package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Units;

/** Pounds per short ton of 2000 lb, in which American formulas of resistance are printed. */
final class ShortTon {

    private static final double LB_PER_SHORT_TON = 2000;
    private static final double MPH_PER_MPS = Units.mphFromMps(1);

    private ShortTon() {}

    static double fromKg(double massKg) {
        return Units.lbFromKg(massKg) / LB_PER_SHORT_TON;
    }

    static double newtonsPerKg(double lbPerShortTon) {
        return lbPerShortTon * Units.GRAVITY_MPS2 / LB_PER_SHORT_TON;
    }

    /** Returns newtons per m/s from pounds per mile an hour. */
    static double newtonsPerMps(double lbPerMph) {
        return Units.newtonsFromLbf(lbPerMph) * MPH_PER_MPS;
    }

    /** Returns newtons per (m/s)2 from pounds per (mile an hour)2. */
    static double newtonsPerMps2(double lbPerMph2) {
        return Units.newtonsFromLbf(lbPerMph2) * MPH_PER_MPS * MPH_PER_MPS;
    }
}
