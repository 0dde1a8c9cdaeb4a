package org.crosshead.stock;

/** Kind of axle bearing of a vehicle. */
public enum Bearing {
    PLAIN,
    ROLLER,
    UNKNOWN
}
