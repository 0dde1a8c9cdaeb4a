package org.crosshead.competence.refresh;

import java.time.LocalDate;

/**
 * A turn proposed to a person.
 *
 * @param subjects what it keeps alive, in words
 */
public record Proposal(
        long id,
        long personId,
        long trainId,
        String trainCode,
        LocalDate day,
        long teacherId,
        String subjects,
        State state) {

    /** What the person has said. */
    public enum State {
        PROPOSED,
        ACCEPTED,
        DECLINED
    }
}
