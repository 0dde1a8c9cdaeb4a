package org.crosshead.kernel.traction;

/** State of the rail, as a crew would call it. */
public enum RailState {
    DRY,
    DAMP,
    WET,
    GREASY,
    /** Crushed leaves on the rail. */
    LEAVES,
    SANDED
}
