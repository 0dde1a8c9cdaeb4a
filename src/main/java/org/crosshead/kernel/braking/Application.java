package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;

/**
 * One way of applying the train's brake: time for the crew to act, dead time of the apparatus, a build-up during which the force
 * grows in proportion to time, then the full force of this application.
 *
 * @param reactionS from deciding to moving the handle
 * @param delayS from moving the handle until the mean block bites
 * @param buildUpS from biting to full force
 */
public record Application(Kind kind, double reactionS, double delayS, double buildUpS, BrakeForce force) {

    public Application {
        Check.within("reactionS", reactionS, 0, 60);
        Check.within("delayS", delayS, 0, 120);
        Check.within("buildUpS", buildUpS, 0, 120);
    }

    /** Kind of application; kept apart everywhere. */
    public enum Kind {
        SERVICE,
        EMERGENCY
    }
}
