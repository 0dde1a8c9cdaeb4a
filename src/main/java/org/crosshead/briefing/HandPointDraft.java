package org.crosshead.briefing;

import org.crosshead.kernel.traction.Controls;
import org.jspecify.annotations.Nullable;

/**
 * What an inspector changes in a train's plan by hand.
 *
 * @param to where a setting is moved to; null for the other kinds
 * @param regulator 0 shut, 0.5 first valve, 1 wide open; null but where handles are set
 * @param cutoff from 0.05 to 0.8; null but where handles are set and the regulator is open
 * @param note words for the crew; blank but for a note
 * @param reason why, 5 to 200 letters
 */
public record HandPointDraft(
        Kind kind,
        HandSpot at,
        @Nullable HandSpot to,
        @Nullable Double regulator,
        @Nullable Double cutoff,
        String note,
        String reason) {

    private static final int REASON_LEAST = 5;
    private static final int LETTERS_MOST = 200;
    private static final double CUTOFF_LEAST = 0.05;
    private static final double CUTOFF_MOST = 0.8;

    /** What is done. */
    public enum Kind {
        /** The handles are set so here. */
        SET,
        /** The plan's setting here is made elsewhere. */
        MOVED,
        /** The plan's setting here is left out. */
        STRUCK,
        /** Words for the crew, told at this place. */
        NOTE
    }

    /**
     * A place by the measure of its route.
     *
     * @param pathM along the train's path when it was entered: tells apart places that the train passes twice
     */
    public record HandSpot(String routeCode, double measure, double pathM) {}

    public HandPointDraft {
        note = note.strip();
        reason = reason.strip();
        refuseUnless(reason.length() >= REASON_LEAST, "hand-reason");
        refuseUnless(reason.length() <= LETTERS_MOST && note.length() <= LETTERS_MOST, "hand-long");
        switch (kind) {
            case SET -> {
                refuseUnless(
                        regulator != null && (regulator == 0 || regulator == Controls.FIRST_VALVE || regulator == 1),
                        "hand-regulator");
                refuseUnless(shut(regulator) || within(cutoff), "hand-cutoff");
            }
            case MOVED -> refuseUnless(to != null, "hand-place");
            case NOTE -> refuseUnless(!note.isEmpty(), "hand-note");
            case STRUCK -> {}
        }
    }

    private static boolean shut(@Nullable Double regulator) {
        return regulator != null && regulator == 0;
    }

    private static boolean within(@Nullable Double cutoff) {
        return cutoff != null && cutoff >= CUTOFF_LEAST && cutoff <= CUTOFF_MOST;
    }

    private static void refuseUnless(boolean right, String code) {
        if (!right) {
            throw new BriefingRefusedException(code);
        }
    }
}
