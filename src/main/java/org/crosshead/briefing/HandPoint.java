package org.crosshead.briefing;

import java.time.Instant;

/** A change by hand as it is stored. */
public record HandPoint(long id, HandPointDraft draft, Instant enteredAt, String enteredBy) {}
