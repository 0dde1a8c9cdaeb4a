package org.crosshead.briefing;

import java.time.Instant;
import org.crosshead.briefing.document.BriefingDocument;
import org.jspecify.annotations.Nullable;

/** A briefing as stored. */
public record StoredBriefing(
        long id,
        long trainId,
        @Nullable Integer issueNumber,
        BriefingState state,
        Instant preparedAt,
        String preparedBy,
        @Nullable Instant issuedAt,
        @Nullable String issuedBy,
        @Nullable String issuedDespite,
        BriefingDocument document) {}
