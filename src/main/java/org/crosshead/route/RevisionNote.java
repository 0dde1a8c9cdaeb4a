package org.crosshead.route;

import java.time.Instant;

/** Who made a revision of a route, when and why. */
public record RevisionNote(long id, int number, Instant madeAt, String madeBy, String reason) {}
