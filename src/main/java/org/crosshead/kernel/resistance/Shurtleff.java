package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * A. K. Shurtleff's resistance of freight cars at low speed: {@code R = 1 + 90/C} pounds per short ton, C short tons a car.
 *
 * <p>Source: [RAN] discussion, quoting AREMWA Bulletin 84, 1907 (read). Speed is not in it. Refused outside 0.5 to 500 tonnes.
 */
public final class Shurtleff {

    private Shurtleff() {}

    /** Returns newtons per kilogram of a car of this mass. */
    public static double perMassN(double massKg) {
        Check.within("massKg", massKg, 500, 500_000);
        return ShortTon.newtonsPerKg(1 + 90 / ShortTon.fromKg(massKg));
    }
}
