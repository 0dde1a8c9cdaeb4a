package org.crosshead.stock.figure;

/** What a figure is needed for; worded on pages from {@code stock.need.<name>}. */
public enum Need {
    PULL,
    STEAM,
    ADHESION,
    MASS,
    LENGTH,
    BRAKE,
    WATER,
    COAL,
    SPEED,
    /** Which lines the vehicle may run on; not in the forecast. */
    ROAD,
    /** Used in the forecast where it is known. */
    WHERE_KNOWN,
    /** Kept for the record; no calculation uses it. */
    RECORD
}
