package org.crosshead.platform;

/** Where a stored figure came from. */
public enum Origin {
    SURVEYED,
    PUBLISHED,
    MAKERS,
    /** Worked out by a stated rule; counts only once a person has accepted it. */
    ESTIMATED,
    UNKNOWN;

    /** Returns whether nobody measured or printed it. */
    public boolean isGuess() {
        return this == ESTIMATED || this == UNKNOWN;
    }
}
