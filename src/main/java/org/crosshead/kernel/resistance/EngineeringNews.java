package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The "Engineering News" rule for a train: {@code R = 2 + V/4} pounds per short ton, V in miles an hour.
 *
 * <p>Source: [HENDERSON] Locomotive Operation, 1907, in an excerpt (read). No range is printed; refused above 80 mph.
 */
public final class EngineeringNews {

    static final double SPEED_MAX_MPS = Units.mpsFromMph(80);

    private EngineeringNews() {}

    /** Returns newtons per kilogram of train on straight level track. */
    public static double perMassN(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        return ShortTon.newtonsPerKg(2 + Units.mphFromMps(speedMps) / 4);
    }
}
