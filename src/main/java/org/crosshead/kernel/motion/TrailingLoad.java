package org.crosshead.kernel.motion;

import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.units.Check;

/** The part of a train that is hauled: what is made heavier or lighter when the greatest load is sought. */
public record TrailingLoad(double massKg, RunningResistance resistance) {

    public static final TrailingLoad NONE = new TrailingLoad(0, RunningResistance.NONE);

    public TrailingLoad {
        Check.notNegative("massKg", massKg);
    }
}
