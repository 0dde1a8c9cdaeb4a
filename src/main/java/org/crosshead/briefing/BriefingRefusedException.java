package org.crosshead.briefing;

import java.util.Optional;
import org.crosshead.briefing.document.Place;
import org.jspecify.annotations.Nullable;

/** What was asked of a briefing can't be done; the code names why, message {@code briefing.refused.<code>}. */
public final class BriefingRefusedException extends RuntimeException {

    private final String code;

    @Nullable
    private final transient Place place;

    /** Refuses for a reason. */
    public BriefingRefusedException(String code) {
        this(code, null);
    }

    /** Refuses for a reason that lies at a place. */
    public BriefingRefusedException(String code, @Nullable Place place) {
        super("briefing refused: " + code);
        this.code = code;
        this.place = place;
    }

    /** Returns where the reason lies, if it lies anywhere. */
    public Optional<Place> place() {
        return Optional.ofNullable(place);
    }

    public String code() {
        return code;
    }
}
