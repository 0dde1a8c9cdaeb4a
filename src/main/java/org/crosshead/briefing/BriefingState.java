package org.crosshead.briefing;

/** Where a briefing stands. */
public enum BriefingState {
    /** Computed; seen by those who may issue it, not by the crew. */
    PREPARED,
    /** Frozen and numbered: what the crew reads. */
    ISSUED,
    /** Frozen and numbered, and followed by a later issue. */
    REPLACED
}
