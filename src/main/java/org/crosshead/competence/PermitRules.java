package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Permit.Line;

/** Decides from what everybody holds whether a crew may take a train. Pure: equal inputs give equal answers. */
final class PermitRules {

    private PermitRules() {}

    /**
     * A person of the crew and what they must hold.
     *
     * @param subjects in running order
     */
    record Needs(long personId, List<Subject> subjects) {}

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
            Map<Subject, Map<Long, Holding>> holdings) {
        List<Line> lines = new ArrayList<>();
        for (Needs needs : crew) {
            for (Subject subject : needs.subjects()) {
                lines.add(line(needs.personId(), subject, companions, holdings.getOrDefault(subject, Map.of())));
            }
        }
        Answer worst =
                lines.stream().map(Line::answer).max(Comparator.naturalOrder()).orElse(Answer.ALLOWED);
        return new Permit(worst, day, policyVersion, lines);
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
