package org.crosshead.kernel.motion;

import org.crosshead.kernel.units.Check;

/**
 * What the railway lays down for a forecast.
 *
 * @param brakingMargin service distances are made longer by this factor, commonly 1.10
 * @param coastS how long before braking steam is shut off where the booked times leave room, 0 for never
 * @param speedMaxMps greatest speed of the train, besides the limits of the road and of its engines
 */
public record RunPolicy(double brakingMargin, double coastS, double speedMaxMps) {

    /** A margin of a tenth, half a minute of coasting, no greatest speed of the train's own. */
    public static final RunPolicy COMMON = new RunPolicy(1.10, 30, 90);

    public RunPolicy {
        Check.within("brakingMargin", brakingMargin, 1, 3);
        Check.within("coastS", coastS, 0, 600);
        Check.within("speedMaxMps", speedMaxMps, 1, 90);
    }
}
