package org.crosshead.platform.journal;

import java.time.OffsetDateTime;

/** One change as the journal tells it; entries with a higher id came later. */
public record JournalEntry(
        long id, OffsetDateTime at, String actor, String kind, String subjectType, long subjectId, String summary) {}
