package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The Baldwin rule for a train: {@code R = 3 + V/6} pounds per short ton, V in miles an hour.
 *
 * <p>Source: [HENDERSON] Locomotive Operation, 1907, in an excerpt (read). No range is printed; refused above 80 mph.
 */
public final class Baldwin {

    static final double SPEED_MAX_MPS = Units.mpsFromMph(80);

    private Baldwin() {}

    /** Returns newtons per kilogram of train on straight level track. */
    public static double perMassN(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        return ShortTon.newtonsPerKg(3 + Units.mphFromMps(speedMps) / 6);
    }
}
