package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Permit.Candidate;
import org.crosshead.competence.Permit.Line;

/** Decides from what everybody holds whether a crew may take a train. Pure: equal inputs give equal answers. */
final class PermitRules {

    private static final int LACKS_MOST = 2;
    private static final int CANDIDATES = 5;

    private PermitRules() {}

    /**
     * A person of the crew and what they must hold.
     *
     * @param subjects in running order
     * @param others who holds the same post and is not of this crew
     */
    record Needs(long personId, List<Subject> subjects, List<Long> others) {

        /** Where nobody else could be asked. */
        Needs(long personId, List<Subject> subjects) {
            this(personId, subjects, List.of());
        }
    }

    /**
     * Somebody of the crew who could conduct.
     *
     * @param sections codes of the sections over which they go along
     */
    record Companion(long personId, List<String> sections) {}

    /**
     * Returns the answer.
     *
     * @param day on which the turn ends
     * @param holdings what everybody holds on that day: by subject, then by person
     */
    static Permit decide(
            LocalDate day,
            int policyVersion,
            List<Needs> crew,
            List<Companion> companions,
            List<Permit.Gap> gaps,
            Map<Subject, Map<Long, Holding>> holdings) {
        List<Line> lines = new ArrayList<>();
        for (Needs needs : crew) {
            for (Subject subject : needs.subjects()) {
                lines.add(line(needs.personId(), subject, companions, holdings.getOrDefault(subject, Map.of())));
            }
        }
        Answer worst = Stream.concat(
                        lines.stream().map(Line::answer), gaps.stream().map(gap -> Answer.REFERRED))
                .max(Comparator.naturalOrder())
                .orElse(Answer.ALLOWED);
        List<Candidate> instead = crew.stream()
                .filter(needs -> lines.stream()
                        .anyMatch(line -> line.personId() == needs.personId() && line.answer() != Answer.ALLOWED))
                .flatMap(needs -> instead(needs, holdings).stream())
                .toList();
        return new Permit(worst, day, policyVersion, lines, instead, gaps);
    }

    /** Returns who could go instead: those who lack nothing, or else who lack least. */
    private static List<Candidate> instead(Needs needs, Map<Subject, Map<Long, Holding>> holdings) {
        return needs.others().stream()
                .map(other -> new Candidate(
                        needs.personId(),
                        other,
                        needs.subjects().stream()
                                .filter(subject -> !counts(holdings, subject, other))
                                .toList()))
                .filter(candidate -> candidate.lacks().size() <= LACKS_MOST
                        && candidate.lacks().size() < needs.subjects().size())
                .sorted(Comparator.comparing(
                                (Candidate candidate) -> candidate.lacks().size())
                        .thenComparing(Candidate::personId))
                .limit(CANDIDATES)
                .toList();
    }

    private static boolean counts(Map<Subject, Map<Long, Holding>> holdings, Subject subject, long personId) {
        Holding holding = holdings.getOrDefault(subject, Map.of()).get(personId);
        return holding != null && holding.counts();
    }

    private static Line line(long personId, Subject subject, List<Companion> companions, Map<Long, Holding> holders) {
        Holding own = holders.getOrDefault(
                personId, new Holding(subject, Holding.State.NOT_HELD, null, null, null, List.of()));
        if (own.counts()) {
            return new Line(personId, own, Answer.ALLOWED, List.of());
        }
        List<Long> others = holders.entrySet().stream()
                .filter(entry -> entry.getKey() != personId && entry.getValue().counts())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        boolean neverConducted = subject.kind() == Subject.Kind.CLASS
                || own.state() == Holding.State.SUSPENDED
                || own.state() == Holding.State.WITHDRAWN;
        if (others.isEmpty() && own.state() != Holding.State.SUSPENDED) {
            return new Line(personId, own, Answer.REFERRED, List.of());
        }
        List<Long> along = companions.stream()
                .filter(companion -> companion.sections().contains(subject.code()))
                .map(Companion::personId)
                .filter(others::contains)
                .sorted()
                .toList();
        return neverConducted || along.isEmpty()
                ? new Line(personId, own, Answer.REFUSED, neverConducted ? List.of() : others)
                : new Line(personId, own, Answer.CONDUCTED, along);
    }
}
