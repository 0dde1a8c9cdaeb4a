package org.crosshead.briefing;

import java.time.Instant;
import java.util.List;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.Phrase;
import org.jspecify.annotations.Nullable;

/**
 * A briefing as it is shown: the stored document, and what has happened since.
 *
 * @param issueNumber null while only prepared
 * @param issuedDespite why it was issued although it names a danger, or null
 * @param outOfDate what has changed since it was made; empty while it holds
 * @param acknowledgedByMe when the person who looks has acknowledged it, or null
 * @param mayAcknowledge whether the person who looks is of its crew and has not acknowledged it
 * @param notYetRead names of the crew who have not acknowledged it
 */
public record IssuedBriefing(
        long id,
        long trainId,
        String trainCode,
        @Nullable Integer issueNumber,
        BriefingState state,
        @Nullable Instant issuedAt,
        @Nullable String issuedBy,
        @Nullable String issuedDespite,
        BriefingDocument document,
        List<Phrase> outOfDate,
        @Nullable Instant acknowledgedByMe,
        boolean mayAcknowledge,
        List<Acknowledgement> acknowledgements,
        List<String> notYetRead) {

    public IssuedBriefing {
        outOfDate = List.copyOf(outOfDate);
        acknowledgements = List.copyOf(acknowledgements);
        notYetRead = List.copyOf(notYetRead);
    }
}
