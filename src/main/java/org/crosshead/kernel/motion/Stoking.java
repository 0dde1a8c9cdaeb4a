package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Firing;

/**
 * What a fireman does, and why.
 *
 * @param task names the kind of work; a change of it is a point of the fireman's column
 */
public record Stoking(Firing firing, Task task, Cause cause) {

    /** Kind of work of a fireman. */
    public enum Task {
        /** Fire and feed in step with the steam used. */
        STEADY,
        /** Raise fire, pressure and water ahead of a bank. */
        BUILD_UP,
        /** Fire hard, feed eased. */
        HOLD_FEED,
        /** Feed hard, fire eased: steam is shut or little used. */
        FILL_UP,
        /** Standing or shut off with the boiler full: blower on, nothing more. */
        QUIET
    }
}
