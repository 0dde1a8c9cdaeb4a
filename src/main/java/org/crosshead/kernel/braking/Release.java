package org.crosshead.kernel.braking;

import org.crosshead.kernel.braking.ContinuousBrake.Timing;
import org.crosshead.kernel.units.Check;

/**
 * How long a brake takes from the handle until it is off along the whole train and ready to be applied again with its full force.
 *
 * <p>All from memory, the slower end of what is told: air 15 to 20 s set for passenger trains and 45 to 60 s for goods (UIC 540, whose
 * text was not read); vacuum by the large ejector 20 to 60 s, the longer the train the slower. Vacuum by the small ejector alone takes
 * minutes and is not counted. Steam and hand brakes: estimates of this project.
 */
public final class Release {

    private static final double AIR_PASSENGER_S = 20;
    private static final double AIR_GOODS_S = 60;
    private static final double VACUUM_LEAST_S = 20;
    private static final double VACUUM_MOST_S = 60;
    /** Length of train at which a vacuum brake takes longest: some fifty short vehicles, an estimate. */
    private static final double VACUUM_MOST_M = 400;

    private static final double STEAM_S = 3;
    private static final double HAND_S = 20;

    private Release() {}

    /** Returns the time from the handle until it is off and ready. */
    public static double recoverS(ContinuousBrake brake) {
        return switch (brake.means()) {
            case AIR -> brake.timing() == Timing.PASSENGER ? AIR_PASSENGER_S : AIR_GOODS_S;
            case VACUUM ->
                VACUUM_LEAST_S + (VACUUM_MOST_S - VACUUM_LEAST_S) * Math.min(1, brake.lengthM() / VACUUM_MOST_M);
            case STEAM -> STEAM_S;
            case HAND -> HAND_S;
        };
    }

    /**
     * Returns the share of its force that a brake has when it is applied again so long after it was let go: it recovers in proportion to
     * time, an estimate.
     *
     * @param afterS 0 or more
     */
    public static double share(ContinuousBrake brake, double afterS) {
        Check.notNegative("afterS", afterS);
        return Math.min(1, afterS / recoverS(brake));
    }
}
