package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * Force that sets standing stock in motion: 16 pounds per short ton (8 thousandths of the weight), falling to 5 by 6 mph.
 *
 * <p>Source: [HENDERSON], in an excerpt that quotes it; plus or minus 30 per cent. Plain bearings after a short stand; a
 * long stand in frost needs more. Agrees with 6 to 10 thousandths from memory. Starting a loose-coupled train vehicle by
 * vehicle is not credited.
 */
public final class StartingResistance {

    private static final double LB_PER_SHORT_TON = 16;

    private StartingResistance() {}

    /** Returns newtons per kilogram. */
    public static double perMassN() {
        return ShortTon.newtonsPerKg(LB_PER_SHORT_TON);
    }

    /** Returns the force that starts a vehicle of this mass. */
    public static double ofN(double massKg) {
        return perMassN() * Check.positive("massKg", massKg);
    }
}
