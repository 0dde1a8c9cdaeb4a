package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;
import org.crosshead.kernel.units.Units;

/**
 * How the cutoff is brought back while a train gathers speed: full gear at the very start, a half soon after, a quarter from about
 * 15 mph, and from 20 mph on what the plan says. Common practice, no source.
 */
public final class StartingNotches {

    /** How far from a stop a train is taken to be starting away. */
    public static final double REACH_M = 1_500;

    private static final double[] FROM_MPS = {
        0, 2, Units.mpsFromMph(8), Units.mpsFromMph(12), Units.mpsFromMph(15), Units.mpsFromMph(20)
    };
    private static final double[] CUTOFF = {1, 0.5, 0.4, 0.3, 0.25, 0};

    private StartingNotches() {}

    /** Returns the longest cutoff at a speed, within the gear. */
    public static double cutoff(ValveGear gear, double speedMps) {
        int at = 0;
        while (at + 1 < FROM_MPS.length && speedMps >= FROM_MPS[at + 1]) {
            at++;
        }
        return Math.max(gear.cutoffLeast(), Math.min(gear.cutoffFull(), CUTOFF[at]));
    }

    /** Returns the cutoff to be worked with at a speed and a distance from the stop, where the plan says another. */
    public static double cutoff(ValveGear gear, double planned, double speedMps, double sinceStopM) {
        return sinceStopM > REACH_M ? planned : Math.max(planned, cutoff(gear, speedMps));
    }
}
