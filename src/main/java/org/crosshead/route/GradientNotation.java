package org.crosshead.route;

/** How the source prints a gradient. The value is signed: positive when climbing as the measure rises. */
public enum GradientNotation {
    /** 1 in n; the value is n. */
    ONE_IN,
    PER_MILLE,
    /** The value is ignored and stored as 0. */
    LEVEL
}
