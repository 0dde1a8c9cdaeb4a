package org.crosshead.competence.refresh;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.competence.Subject;

/**
 * A turn proposed to a person.
 *
 * @param subjects what it keeps alive, in words
 * @param begins what the person begins to learn when they take it
 */
public record Proposal(
        long id,
        long personId,
        long trainId,
        String trainCode,
        LocalDate day,
        long teacherId,
        String subjects,
        List<Subject> begins,
        State state) {

    public Proposal {
        begins = List.copyOf(begins);
    }

    /** What the person has said. */
    public enum State {
        PROPOSED,
        ACCEPTED,
        DECLINED
    }
}
