package org.crosshead.stock;

/** Kind of brake on an engine or vehicle. */
public enum BrakeKind {
    VACUUM,
    AIR,
    STEAM,
    HAND,
    /** Piped through, without a brake of its own. */
    PIPED,
    NONE
}
