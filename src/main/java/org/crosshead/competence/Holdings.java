package org.crosshead.competence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** What many people hold, answered from what is derived already where it can be. */
@Service
public class Holdings {

    private final EventStore events;
    private final StandingStore standings;
    private final KnowledgePolicies policies;
    private final LaidDown laidDown;

    Holdings(EventStore events, StandingStore standings, KnowledgePolicies policies, LaidDown laidDown) {
        this.events = events;
        this.standings = standings;
        this.policies = policies;
        this.laidDown = laidDown;
    }

    /** Returns what everybody who has to do with a subject holds of it on a day, by person; without what it rests on. */
    public Map<Long, Holding> holders(Subject subject, LocalDate day) {
        HoldingRules.Terms terms = laidDown.terms(subject, policies.on(day));
        Map<Long, Holding> holders = new TreeMap<>();
        standings.of(subject).forEach(row -> holders.put(row.personId(), holding(row, terms, day)));
        return holders;
    }

    boolean anybodyHolds(Subject subject, LocalDate day) {
        HoldingRules.Terms terms = laidDown.terms(subject, policies.on(day));
        return standings.of(subject).stream()
                .sorted(Comparator.comparing(row -> !row.answers(day, terms)))
                .anyMatch(row -> holding(row, terms, day).counts());
    }

    /** Answers from what is derived already where it can, else from the events themselves. */
    private Holding holding(StandingStore.Row row, HoldingRules.Terms terms, LocalDate day) {
        return row.answers(day, terms)
                ? row.standing().on(day, terms, List.of())
                : HoldingRules.on(events.of(row.personId(), row.subject()), terms, day, Instant.MAX);
    }

    /** Returns what a person holds on a day, by subject; without what it rests on. */
    public List<Holding> of(long personId, LocalDate day) {
        KnowledgePolicy policy = policies.on(day);
        LaidDown.Book known = laidDown.book();
        return standings.of(personId).stream()
                .map(row -> holding(row, known.terms(row.subject(), policy), day))
                .sorted(Comparator.comparing(Holding::subject))
                .toList();
    }

    /** Returns what some people hold on a day, by person; without what it rests on. */
    public Map<Long, List<Holding>> of(Collection<Long> personIds, LocalDate day) {
        Function<Subject, HoldingRules.Terms> terms = terms(policies.on(day), laidDown.book());
        Map<Long, List<Holding>> holdings = new TreeMap<>();
        for (StandingStore.Row row : standings.of(personIds)) {
            holdings.computeIfAbsent(row.personId(), key -> new ArrayList<>())
                    .add(holding(row, terms.apply(row.subject()), day));
        }
        holdings.values().forEach(own -> own.sort(Comparator.comparing(Holding::subject)));
        return holdings;
    }

    /** Returns every subject of which something is entered, in order. */
    public List<Subject> subjects() {
        return standings.subjects().stream().sorted().toList();
    }

    /** Returns every subject of which something is entered about any of these people, in order. */
    public List<Subject> subjects(Collection<Long> personIds) {
        return standings.subjects(personIds).stream().sorted().toList();
    }

    /** Returns what everybody holds of some subjects on each of some days, by subject and then by person; all is read once. */
    public List<Map<Subject, Map<Long, Holding>>> everybody(List<Subject> subjects, List<LocalDate> days) {
        List<StandingStore.Row> rows = byKind(subjects, standings::of);
        LaidDown.Book known = laidDown.book();
        return days.stream()
                .map(day -> {
                    Function<Subject, HoldingRules.Terms> terms = terms(policies.on(day), known);
                    Map<Subject, Map<Long, Holding>> all = new TreeMap<>();
                    for (StandingStore.Row row : rows) {
                        all.computeIfAbsent(row.subject(), key -> new TreeMap<>())
                                .put(row.personId(), holding(row, terms.apply(row.subject()), day));
                    }
                    return all;
                })
                .toList();
    }

    /** As {@link #everybody}, for a day that has passed or as it was known at a moment: from the events themselves. */
    public Map<Subject, Map<Long, Holding>> everybodyAsKnown(List<Subject> subjects, LocalDate day, Instant knownAt) {
        Function<Subject, HoldingRules.Terms> terms = terms(policies.on(day), laidDown.book());
        Map<Subject, Map<Long, Holding>> all = new TreeMap<>();
        byKind(subjects, events::of).stream()
                .collect(Collectors.groupingBy(
                        CompetenceEvent::subject, Collectors.groupingBy(CompetenceEvent::personId)))
                .forEach((subject, people) -> {
                    Map<Long, Holding> holdings = new TreeMap<>();
                    people.forEach((person, own) ->
                            holdings.put(person, HoldingRules.on(own, terms.apply(subject), day, knownAt)));
                    all.put(subject, holdings);
                });
        return all;
    }

    private static <T> List<T> byKind(
            List<Subject> subjects, BiFunction<Subject.Kind, Collection<String>, List<T>> read) {
        return Stream.of(Subject.Kind.values())
                .flatMap(kind -> read
                        .apply(
                                kind,
                                subjects.stream()
                                        .filter(subject -> subject.kind() == kind)
                                        .map(Subject::code)
                                        .toList())
                        .stream())
                .toList();
    }

    private static Function<Subject, HoldingRules.Terms> terms(KnowledgePolicy policy, LaidDown.Book known) {
        Map<Subject, HoldingRules.Terms> found = new HashMap<>();
        return of -> found.computeIfAbsent(of, subject -> known.terms(subject, policy));
    }

    /**
     * Returns what is held of some subjects: of a crew with what it rests on, of everybody else only who holds it.
     *
     * @param present who holds any post that day; nobody else counts as a holder
     * @param knownAt the moment at which it was known so of the crew
     */
    List<PermitRules.Held> held(
            Set<Subject> of,
            Set<Long> crew,
            Set<Long> present,
            KnowledgePolicy policy,
            LocalDate day,
            Instant knownAt) {
        List<Subject> subjects = of.stream().sorted().toList();
        Function<Subject, HoldingRules.Terms> terms = terms(policy, laidDown.book(subjects));
        Map<Subject, List<StandingStore.Row>> rows =
                byKind(subjects, standings::of).stream().collect(Collectors.groupingBy(StandingStore.Row::subject));
        Map<Subject, Map<Long, List<CompetenceEvent>>> entered =
                byKind(subjects, (kind, codes) -> events.of(crew, kind, codes)).stream()
                        .collect(Collectors.groupingBy(
                                CompetenceEvent::subject, Collectors.groupingBy(CompetenceEvent::personId)));
        List<PermitRules.Held> held = new ArrayList<>();
        for (Subject subject : subjects) {
            Map<Long, Holding> ofCrew = new HashMap<>();
            entered.getOrDefault(subject, Map.of())
                    .forEach((person, own) ->
                            ofCrew.put(person, HoldingRules.on(own, terms.apply(subject), day, knownAt)));
            held.add(new PermitRules.Held(
                    subject,
                    ofCrew,
                    rows.getOrDefault(subject, List.of()).stream()
                            .filter(row ->
                                    holding(row, terms.apply(subject), day).counts())
                            .map(StandingStore.Row::personId)
                            .filter(present::contains)
                            .sorted()
                            .toList()));
        }
        return held;
    }

    /** Returns how it stands with everybody who has to do with a subject, after all that is entered. */
    Map<Long, Standing> standings(Subject subject) {
        return standings.of(subject).stream()
                .collect(Collectors.toMap(StandingStore.Row::personId, StandingStore.Row::standing));
    }
}
