package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * G. L. Molesworth's approximate rule for a train: {@code R = 6 + 0.009 V^2} pounds per long ton, V in miles an hour.
 *
 * <p>Source: [MOL] p. 223 (read), tabulated there from 10 to 75 mph. A nineteenth-century figure, kept as an upper check.
 */
public final class Molesworth {

    static final double SPEED_MAX_MPS = Units.mpsFromMph(75);

    private static final double CONSTANT_LB = 6;
    private static final double PER_V_SQUARED_LB = 0.009;

    private Molesworth() {}

    /** Returns newtons per kilogram of train on straight level track. */
    public static double perMassN(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        double v = Units.mphFromMps(speedMps);
        return Units.newtonsPerKgFromLbPerLongTon(CONSTANT_LB + PER_V_SQUARED_LB * v * v);
    }
}
