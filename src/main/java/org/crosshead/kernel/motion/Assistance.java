package org.crosshead.kernel.motion;

import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.units.Check;

/**
 * From where to where an assisting engine works. Between, its mass and resistance are added to the train's body, whose length
 * holds the assisting engine's throughout.
 *
 * @param massKg mass of the assisting engine and tender
 */
public record Assistance(double fromM, double toM, double massKg, RunningResistance resistance) {

    /** An engine that works from end to end and is part of the train's body already. */
    public static final Assistance THROUGHOUT = new Assistance(0, Double.MAX_VALUE, 0, RunningResistance.NONE);

    public Assistance {
        Check.notNegative("fromM", fromM);
        Check.that(toM > fromM, "toM must be greater than fromM");
        Check.notNegative("massKg", massKg);
    }
}
