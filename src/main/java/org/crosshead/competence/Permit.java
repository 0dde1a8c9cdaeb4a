package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Whether a crew may take a train, by the records: it says that no bar was found, never that it is safe. The manager and the people
 * themselves remain responsible, and each of them may always decline.
 *
 * @param answer for the whole train: the worst of its lines, and never simply allowed where its path has gaps
 * @param day on which the turn ends, which is the day that is asked about
 * @param policyVersion by which it was decided
 * @param lines one for each person and subject, in running order
 * @param instead who could take the place of somebody who may not, those first who lack least
 * @param bars what stands in the way besides road and engine
 * @param detours one for each driver and section where the train may be diverted as planned; they bar nothing yet; none in what was kept
 *     before this was asked
 * @param gaps stretches of its path of which no section is laid down, so that nothing can be said
 */
public record Permit(
        Answer answer,
        LocalDate day,
        int policyVersion,
        List<Line> lines,
        List<Candidate> instead,
        List<Gap> gaps,
        List<Bar> bars,
        List<Line> detours) {

    /** What comes of the records, the worst last. */
    public enum Answer {
        ALLOWED,
        /** By an exemption of the policy, which is named, though it is not held. */
        EXEMPT,
        /** Only under the teacher who is named and goes along in charge. */
        INSTRUCTED,
        /** Only while a conductor driver who knows it goes along. */
        CONDUCTED,
        /** Nobody holds it at all: it is for the manager of operations to say how it may begin again. */
        REFERRED,
        REFUSED
    }

    public Permit {
        lines = List.copyOf(lines);
        instead = List.copyOf(instead);
        gaps = List.copyOf(gaps);
        bars = List.copyOf(bars);
        detours = List.copyOf(Objects.requireNonNullElse(detours, List.of()));
    }

    /** Says whether the same was found; who could go instead aside. */
    public boolean saysTheSame(Permit other) {
        return lines.equals(other.lines)
                && gaps.equals(other.gaps)
                && bars.equals(other.bars)
                && detours.equals(other.detours);
    }

    /**
     * What stands in the way of one person, whatever they know.
     *
     * @param code of the message that says what
     * @param figures that the message names
     */
    public record Bar(long personId, String code, List<Double> figures) {

        public Bar {
            figures = List.copyOf(figures);
        }
    }

    /**
     * A stretch of a route that no section covers wholly.
     *
     * @param fromMeasure where it begins, in running order
     */
    public record Gap(String routeCode, double fromMeasure, double toMeasure) {}

    /**
     * Somebody who could go in place of another.
     *
     * @param insteadOf who may not go
     * @param lacks what they would have to be passed for first; empty where nothing
     */
    public record Candidate(long insteadOf, long personId, List<Subject> lacks) {

        public Candidate {
            lacks = List.copyOf(lacks);
        }
    }

    /**
     * One question.
     *
     * @param holding of the person, with its evidence
     * @param why of the message that says why it does not simply count; {@code held} or {@code state} where the holding says it
     * @param rides from which booked stop to which whoever goes along over it rides, in words; null where nobody conducts
     * @param conductors who could go along: of this train's crew where the answer is that they do, otherwise of everybody
     */
    public record Line(
            long personId,
            Holding holding,
            Answer answer,
            String why,
            List<Long> conductors,
            @Nullable String rides) {

        /** Why somebody is refused beside a conductor driver who has not accepted by a permitted case. */
        static final String NOT_ACCEPTED = "not-accepted";

        public Line {
            conductors = List.copyOf(conductors);
        }

        /** Says whether somebody goes along who could conduct and has not accepted by a permitted case. */
        public boolean isToBeAccepted() {
            return answer == Answer.REFUSED && why.equals(NOT_ACCEPTED);
        }
    }
}
