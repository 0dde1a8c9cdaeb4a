package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;

/**
 * Whether a crew may take a train, by the records: it says that no bar was found, never that it is safe. The manager and the people
 * themselves remain responsible, and each of them may always decline.
 *
 * @param answer for the whole train: the worst of its lines
 * @param day on which the turn ends, which is the day that is asked about
 * @param policyVersion by which it was decided
 * @param lines one for each person and subject, in running order
 */
public record Permit(Answer answer, LocalDate day, int policyVersion, List<Line> lines) {

    /** What comes of the records, the worst last. */
    public enum Answer {
        ALLOWED,
        /** Only while a conductor driver who knows it goes along. */
        CONDUCTED,
        /** Nobody holds it at all: it is for the manager of operations to say how it may begin again. */
        REFERRED,
        REFUSED
    }

    public Permit {
        lines = List.copyOf(lines);
    }

    /**
     * One question.
     *
     * @param holding of the person, with its evidence
     * @param conductors who could go along: of this train's crew where the answer is that they do, otherwise of everybody
     */
    public record Line(long personId, Holding holding, Answer answer, List<Long> conductors) {

        public Line {
            conductors = List.copyOf(conductors);
        }
    }
}
