package org.crosshead.working;

import java.time.Instant;

/** A time for which a person is bound to a train: from booking on to booking off, or while it runs where that is not entered. */
public record CrewBooking(long trainId, Instant from, Instant to) {}
