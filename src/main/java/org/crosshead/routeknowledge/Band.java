package org.crosshead.routeknowledge;

/** How hard a section is by its risk assessment. */
public enum Band {
    /** Complex, or rarely worked. */
    HARD,
    /** Usual. */
    USUAL,
    /** Simple. */
    EASY
}
