package org.crosshead.routeknowledge.question;

/** What a question asks. The words are in the messages; safety-critical ones are never left out for long. */
public enum Sort {
    NEXT_AFTER(false),
    LAST_BEFORE(false),
    NEXT_SIGNAL(true),
    NEXT_STATION(false),
    NEXT_WATER(false),
    /** Catch points that come next: where a train must not set back. */
    NEXT_CATCH_POINTS(true),
    LIMIT(true),
    LIMIT_UNFITTED(true),
    LIMIT_TENDER_FIRST(true),
    /** At which place a lower limit begins. */
    LIMIT_FALLS_AT(true),
    /** The last thing that is passed before a lower limit begins. */
    LAST_BEFORE_LIMIT(true),
    /** Whether the line rises, falls or is level. */
    WAY(true),
    GRADIENT(false),
    /** Steepest gradient between two stations. */
    STEEPEST(false),
    /** Which three things come in which order. */
    ORDER(false),
    BETWEEN(false),
    DISTANCE(false),
    SIGNALS_BETWEEN(false),
    /** From where a signal is seen. */
    SIGHTING(true),
    /** Which of these can be known by night. */
    BY_NIGHT(false),
    TUNNEL_LENGTH(false),
    /** What a thing tells the driver, by the cues of the section. */
    CUE(true),
    /** Written by somebody. */
    BY_HAND(false),
    /** Written by somebody, and safety-critical. */
    BY_HAND_CRITICAL(true);

    private final boolean safetyCritical;

    Sort(boolean safetyCritical) {
        this.safetyCritical = safetyCritical;
    }

    public boolean isSafetyCritical() {
        return safetyCritical;
    }
}
