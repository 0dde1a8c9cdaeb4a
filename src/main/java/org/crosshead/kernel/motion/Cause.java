package org.crosshead.kernel.motion;

/** Why a crew changes something; worded on the page together with its values. */
public enum Cause {
    STARTING,
    BEATS_COUNTED,
    SPEED_RISES,
    SPEED_FALLS,
    BANK_BEGINS,
    BANK_AHEAD,
    BOILER_LIMITS,
    RAIL_POOR,
    LEAST_CUTOFF_REACHED,
    SPEED_REACHED,
    FALL_BEGINS,
    SUMMIT_PASSED,
    LIMIT_AHEAD,
    STOP_AHEAD,
    STANDING,
    LEVEL_HIGH,
    LEVEL_LOW,
    /** An assisting engine begins or ends its work. */
    ASSISTED,
    /** An inspector set it so by hand. */
    SET_BY_HAND
}
