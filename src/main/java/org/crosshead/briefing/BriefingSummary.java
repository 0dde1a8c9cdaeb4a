package org.crosshead.briefing;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A briefing as a line in a list. */
public record BriefingSummary(
        long id,
        long trainId,
        @Nullable Integer issueNumber,
        BriefingState state,
        Instant preparedAt,
        String preparedBy,
        @Nullable Instant issuedAt,
        @Nullable String issuedBy) {}
