package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Strahl's resistance of bogie coaches: {@code w = 2.5 + V^2/4000} kilograms-force per tonne, V in km/h.
 *
 * <p>Source: from memory, [STRAHL]; never shown as sourced. For comparison only. Up to 120 km/h.
 */
public final class Strahl {

    static final double SPEED_MAX_MPS = Units.mpsFromKmh(120);

    private Strahl() {}

    /** Returns newtons per kilogram of coaches on straight level track. */
    public static double perMassN(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        double v = Units.kmhFromMps(speedMps);
        return (2.5 + v * v / 4000) * Units.GRAVITY_MPS2 / 1000;
    }
}
