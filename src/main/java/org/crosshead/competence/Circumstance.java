package org.crosshead.competence;

/** In what a road or an engine is worked. */
public enum Circumstance {
    DARK,
    TENDER_FIRST,
    /** Fog, rain, snow, or leaves on the line. */
    BAD_WEATHER
}
