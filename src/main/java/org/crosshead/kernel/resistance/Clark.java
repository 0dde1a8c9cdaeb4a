package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * D. K. Clark's resistance of a whole train, engine included: {@code R = V^2/171 + 8} pounds per long ton, V in miles an hour.
 *
 * <p>Source: [BOU] question 499 and [VOS] p. 249 (read). Printed from 15 to 240 mph, useful to about 60. Known to be too high for
 * later stock: [SINCLAIR] quotes 11 lb measured against 22.6 by the formula at 50 mph. Kept as an upper check, not used in runs.
 */
public final class Clark {

    static final double SPEED_MAX_MPS = Units.mpsFromMph(240);

    private static final double CONSTANT_LB = 8;
    private static final double PER_V_SQUARED_LB = 1.0 / 171;

    private Clark() {}

    /** Returns newtons per kilogram of train on straight level track. */
    public static double perMassN(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        double v = Units.mphFromMps(speedMps);
        return Units.newtonsPerKgFromLbPerLongTon(CONSTANT_LB + PER_V_SQUARED_LB * v * v);
    }
}
