package org.crosshead.kernel.motion;

import org.crosshead.kernel.resistance.RunningResistance;

/** Takes a part of a resistance away or adds more of it; never below zero, where rounding could put it. */
final class Resistances {

    private Resistances() {}

    static RunningResistance scaled(RunningResistance whole, RunningResistance part, double more) {
        return new RunningResistance(
                Math.max(0, whole.constantN() + more * part.constantN()),
                Math.max(0, whole.linearNPerMps() + more * part.linearNPerMps()),
                Math.max(0, whole.quadraticNPerMps2() + more * part.quadraticNPerMps2()),
                Math.max(0, whole.startingN() + more * part.startingN()));
    }
}
