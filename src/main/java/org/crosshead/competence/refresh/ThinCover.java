package org.crosshead.competence.refresh;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Subject;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.competence.refresh.RefreshProblem.Need;

/**
 * Who is asked to begin with what fewer people hold than the policy's least: those who lapsed last on it, then those drivers who lack
 * least of what a train over it asks. Pure: equal inputs give equal answers.
 *
 * @param all what everybody holds, by subject
 * @param meant ids of those whose cover is meant
 * @param drivers ids of those of them who may be asked to begin
 * @param learning ids of those who learn a subject by a plan
 * @param asked what each train to come asks of a driver who is meant or of another
 * @param least the policy's least
 */
record ThinCover(
        Map<Subject, Map<Long, Holding>> all,
        Set<Long> meant,
        Set<Long> drivers,
        Map<Subject, Set<Long>> learning,
        List<Asked> asked,
        int least) {

    /** Nobody is asked to learn more at once: own rule. */
    static final int AT_ONCE = 2;

    private static final Set<State> MAY_BEGIN = Set.of(State.NOT_HELD, State.LEARNING, State.HANDED_BACK);

    ThinCover {
        all = Map.copyOf(all);
        meant = Set.copyOf(meant);
        drivers = Set.copyOf(drivers);
        learning = Map.copyOf(learning);
        asked = List.copyOf(asked);
    }

    /** What a train asks of one of its drivers. */
    record Asked(long driverId, Set<Subject> subjects) {

        Asked {
            subjects = Set.copyOf(subjects);
        }
    }

    /** Why too few begin. */
    enum Why {
        /** It is not laid down and approved, it is closed, or nobody is named who teaches it. */
        NOT_TAUGHT,
        /** No train of the coming weeks runs over it whose driver holds it. */
        NO_TRAIN,
        /** Nobody is left who could begin: they learn enough already, are not drivers, or no train suits their hours. */
        NOBODY
    }

    /** What stays thin though it is planned for. */
    record Unmet(Subject subject, Why why) {}

    /** Who begins, and what stays thin. */
    record Plan(List<Need> needs, List<Unmet> unmet) {

        Plan {
            needs = List.copyOf(needs);
            unmet = List.copyOf(unmet);
        }
    }

    /** What can be learned now, on which trains of the coming weeks, and how many trips that takes somebody. */
    interface Teaching {

        /** Says whether it can be learned now, under somebody who is named. */
        boolean isTaught(Subject subject);

        /** Says whether a train of the coming weeks runs over it whose driver holds it. */
        boolean isRun(Subject subject);

        /** Says whether any of those trains suits somebody's hours, and they have not left a turn on which they would begin with it. */
        boolean suits(long personId, Subject subject);

        int trips(long personId, Subject subject);
    }

    /** Returns who is asked to begin by a day. */
    Plan plan(Teaching teaching, LocalDate end) {
        List<Need> needs = new ArrayList<>();
        List<Unmet> unmet = new ArrayList<>();
        Map<Long, Integer> load = new HashMap<>();
        learning.values().forEach(people -> people.forEach(person -> load.merge(person, 1, Integer::sum)));
        for (Subject subject : subjects()) {
            int lacking = shortOf(subject);
            if (lacking <= 0) {
                continue;
            }
            if (!teaching.isTaught(subject)) {
                unmet.add(new Unmet(subject, Why.NOT_TAUGHT));
            } else if (!teaching.isRun(subject)) {
                unmet.add(new Unmet(subject, Why.NO_TRAIN));
            } else {
                List<Long> begin = candidates(subject, load).stream()
                        .filter(person -> teaching.suits(person, subject))
                        .limit(lacking)
                        .toList();
                begin.forEach(person -> {
                    load.merge(person, 1, Integer::sum);
                    needs.add(new Need(person, subject, end, teaching.trips(person, subject), Aim.COVER));
                });
                if (begin.size() < lacking) {
                    unmet.add(new Unmet(subject, Why.NOBODY));
                }
            }
        }
        return new Plan(needs, unmet);
    }

    /** Returns the roads and classes with which those who are meant have to do, or that a train of theirs asks. */
    private Set<Subject> subjects() {
        Set<Subject> subjects = new TreeSet<>();
        all.forEach((subject, holders) -> {
            if (holders.keySet().stream().anyMatch(meant::contains)) {
                subjects.add(subject);
            }
        });
        asked.stream().filter(one -> meant.contains(one.driverId())).forEach(one -> subjects.addAll(one.subjects()));
        subjects.removeIf(subject -> subject.kind() == Subject.Kind.PERSON);
        return subjects;
    }

    /** Returns how many are lacking besides those who hold it and those who learn it. */
    private int shortOf(Subject subject) {
        Set<Long> there = new HashSet<>(learning.getOrDefault(subject, Set.of()));
        of(subject).forEach((person, holding) -> {
            if (holding.counts()) {
                there.add(person);
            }
        });
        there.retainAll(meant);
        return least - there.size();
    }

    private Map<Long, Holding> of(Subject subject) {
        return all.getOrDefault(subject, Map.of());
    }

    /** Returns who could begin: who lapsed on it, the latest first, then who lacks least besides it. */
    private List<Long> candidates(Subject subject, Map<Long, Integer> load) {
        Set<Long> learns = learning.getOrDefault(subject, Set.of());
        List<Long> free = meant.stream()
                .filter(person -> !learns.contains(person) && load.getOrDefault(person, 0) < AT_ONCE)
                .toList();
        List<Long> lapsed = free.stream()
                .filter(person -> state(person, subject) == State.LAPSED)
                .sorted(Comparator.comparing((Long person) -> worked(person, subject))
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        ToIntFunction<Long> lacks = person -> lacks(person, subject);
        List<Long> beginners = free.stream()
                .filter(person -> drivers.contains(person) && MAY_BEGIN.contains(state(person, subject)))
                .sorted(Comparator.comparingInt((Long person) -> load.getOrDefault(person, 0))
                        .thenComparingInt(lacks)
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        List<Long> both = new ArrayList<>(lapsed);
        both.addAll(beginners);
        return both;
    }

    private State state(long personId, Subject subject) {
        return Optional.ofNullable(of(subject).get(personId))
                .map(Holding::state)
                .orElse(State.NOT_HELD);
    }

    private LocalDate worked(long personId, Subject subject) {
        return Optional.ofNullable(of(subject).get(personId))
                .map(Holding::lastWorked)
                .orElse(LocalDate.MIN);
    }

    /** Returns how much else somebody lacks of the train over it of which they lack least. */
    private int lacks(long personId, Subject subject) {
        return asked.stream()
                .filter(one -> one.subjects().contains(subject))
                .mapToInt(one -> (int) one.subjects().stream()
                        .filter(other -> !other.equals(subject) && !holds(personId, other))
                        .count())
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private boolean holds(long personId, Subject subject) {
        Holding holding = of(subject).get(personId);
        return holding != null && holding.counts();
    }
}
