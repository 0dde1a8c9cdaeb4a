package org.crosshead.competence;

import java.time.Instant;
import java.util.Optional;

/**
 * A decision as it was made; it stays as it is whatever is entered later.
 *
 * @param by who made it, or the service itself
 * @param train what it was called, and the number of its revision
 */
public record Decision(
        long id, long trainId, Instant at, String by, Occasion occasion, String train, Permit permit, Kept kept) {

    /** Why it was made. */
    public enum Occasion {
        /** The train was entered, crewed or changed. */
        CREWED,
        /** Something changed in what its crew hold. */
        CHANGED,
        /** One of the crew books on. */
        BOOKING_ON,
        /** Somebody asked for it. */
        ASKED,
        /** One of the crew says that they do not sign something. */
        DECLINED
    }

    /** What a decision rested on. */
    public sealed interface Kept permits KeptQuestion {

        /** Decides anew from what was kept; equal to what was decided then, but for who could go instead. */
        Permit again();
    }

    /** Returns the line of a person and a subject, if there is one. */
    public Optional<Permit.Line> line(long personId, Subject subject) {
        return permit.lines().stream()
                .filter(line ->
                        line.personId() == personId && line.holding().subject().equals(subject))
                .findFirst();
    }
}
