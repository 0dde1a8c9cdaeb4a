package org.crosshead.kernel.resistance;

/** Family of vehicle, by the resistance formula used for it. */
public enum ResistanceFamily {
    BOGIE_COACH,
    FOUR_WHEEL_COACH,
    BOGIE_WAGON,
    FOUR_WHEEL_WAGON,
    LOCOMOTIVE,
    TENDER
}
