package org.crosshead.briefing;

/** What was asked of a briefing can't be done; the code names why, message {@code briefing.refused.<code>}. */
public final class BriefingRefusedException extends RuntimeException {

    private final String code;

    /** Refuses for a reason. */
    public BriefingRefusedException(String code) {
        super("briefing refused: " + code);
        this.code = code;
    }

    public String code() {
        return code;
    }
}
