package org.crosshead.kernel.traction;

/** Family of valve gear, by the travel of the valve in full gear. */
public enum ValveFamily {
    SHORT_TRAVEL,
    LONG_TRAVEL
}
