package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.Closure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties of what is derived, over invented histories of 10,000 events each. */
class HoldingHistoriesTests {

    private static final int EVENTS = 10_000;
    private static final int PEOPLE = 60;
    private static final int DAYS = 2_500;
    private static final LocalDate BEGIN = LocalDate.of(2020, 1, 1);
    private static final Instant LATER = Instant.parse("2030-01-01T00:00:00Z");
    private static final KnowledgePolicy POLICY = HoldingRulesTests.policy(36);

    /** A road that was closed twice, after which it was learned anew the second time, and is closed at the end. */
    private static final List<Closure> CLOSURES = List.of(
            new Closure(LocalDate.of(2021, 2, 1), LocalDate.of(2021, 4, 1), false, null, null, "flood"),
            new Closure(LocalDate.of(2022, 5, 1), LocalDate.of(2023, 6, 2), true, null, null, "bridge"),
            new Closure(LocalDate.of(2026, 9, 1)));

    private static HoldingRules.Terms terms() {
        return new HoldingRules.Terms(HoldingRulesTests.ROAD, 6, CLOSURES, POLICY);
    }

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 3);
    }

    /** One history of everybody; some of it is struck later. */
    private static Map<Long, List<CompetenceEvent>> history(long seed) {
        Random random = new Random(seed);
        List<Kind> kinds = new ArrayList<>(List.of(Kind.values()));
        kinds.remove(Kind.STRUCK);
        for (int i = 0; i < 8; i++) {
            kinds.addAll(List.of(
                    Kind.WORKED,
                    Kind.WORKED,
                    Kind.DECLARED,
                    Kind.QUESTIONS_PASSED,
                    Kind.PRACTICE_PASSED,
                    Kind.AUTHORISED));
        }
        List<CompetenceEvent> events = new ArrayList<>();
        List<Long> struck = new ArrayList<>();
        for (long id = 1; id <= EVENTS; id++) {
            CompetenceEvent earlier = events.isEmpty() ? null : events.get(random.nextInt(events.size()));
            boolean strikes = random.nextInt(20) == 0
                    && earlier != null
                    && earlier.kind() != Kind.STRUCK
                    && !struck.contains(earlier.id());
            if (strikes && earlier != null) {
                struck.add(earlier.id());
                events.add(
                        event(id, earlier.personId(), Kind.STRUCK, BEGIN.plusDays(random.nextInt(DAYS)), earlier.id()));
            } else {
                Kind kind = kinds.get(random.nextInt(kinds.size()));
                events.add(event(id, random.nextInt(PEOPLE), kind, BEGIN.plusDays(random.nextInt(DAYS)), 0));
            }
        }
        return events.stream()
                .collect(Collectors.groupingBy(CompetenceEvent::personId, TreeMap::new, Collectors.toList()));
    }

    private static CompetenceEvent event(long id, long person, Kind kind, LocalDate day, long struck) {
        return new CompetenceEvent(
                id,
                person,
                kind,
                HoldingRulesTests.ROAD,
                day,
                day.atStartOfDay().toInstant(ZoneOffset.UTC),
                9L,
                struck == 0 ? null : Long.valueOf(struck),
                kind == Kind.CARRIED_OVER ? day : null,
                "");
    }

    private static Holding on(List<CompetenceEvent> events, LocalDate day) {
        return HoldingRules.on(events, terms(), day, LATER);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfEntryDoesNotMatter(int seed) {
        history(seed).values().forEach(events -> {
            List<CompetenceEvent> shuffled = new ArrayList<>(events);
            Collections.shuffle(shuffled, new Random(seed));
            for (int month = 0; month < 84; month += 5) {
                LocalDate day = BEGIN.plusMonths(month);
                assertThat(on(shuffled, day)).isEqualTo(on(events, day));
            }
        });
    }

    /** A clerk who keeps a card day by day comes to the same as asking once. */
    @ParameterizedTest
    @MethodSource("seeds")
    void equalsAPlainSlowFold(int seed) {
        List<State> seen = new ArrayList<>();
        history(seed).values().forEach(events -> {
            SlowFold slow = new SlowFold(6, 36, 60, CLOSURES);
            List<Long> struck = events.stream()
                    .map(CompetenceEvent::struckId)
                    .filter(Objects::nonNull)
                    .toList();
            Map<LocalDate, List<CompetenceEvent>> byDay = events.stream()
                    .filter(event -> event.kind() != Kind.STRUCK && !struck.contains(event.id()))
                    .collect(Collectors.groupingBy(CompetenceEvent::day));
            for (LocalDate day = BEGIN; day.isBefore(BEGIN.plusDays(DAYS + 30)); day = day.plusDays(1)) {
                slow.day(day, byDay.getOrDefault(day, List.of()));
                if (day.getDayOfMonth() % 9 == 1) {
                    Holding derived = on(events, day);
                    assertThat(derived.state()).as("%s", day).isEqualTo(slow.state(day));
                    assertThat(derived.limits())
                            .extracting(Holding.Limit::name)
                            .containsExactlyInAnyOrderElementsOf(slow.limits());
                    seen.add(derived.state());
                }
            }
        });
        assertThat(seen).contains(State.HELD, State.DUE, State.LAPSED, State.LEARN_ANEW, State.CLOSED, State.ASSESSED);
    }

    /** How it stands after the last event answers for every later day as all the events do. */
    @ParameterizedTest
    @MethodSource("seeds")
    void standingAfterTheLastEventAnswersForEveryLaterDay(int seed) {
        history(seed).values().forEach(all -> {
            List<CompetenceEvent> events = all.subList(0, all.size() / 2);
            Standing standing = HoldingRules.standing(events, terms());
            LocalDate last = Objects.requireNonNull(standing.lastDay());
            for (int days = 0; days < 800; days += 50) {
                LocalDate day = last.plusDays(days);
                Holding whole = on(events, day);
                assertThat(standing.on(day, terms(), whole.because())).isEqualTo(whole);
            }
        });
    }

    /** A turn more, or a passed assessment more, never takes anything away. */
    @ParameterizedTest
    @ValueSource(strings = {"WORKED", "PRACTICE_PASSED", "QUESTIONS_PASSED"})
    void whatIsDoneWellNeverShortensADate(Kind kind) {
        Random random = new Random(kind.name().hashCode());
        int held = 0;
        for (List<CompetenceEvent> events : history(7).values()) {
            for (int i = 0; i < 20; i++) {
                LocalDate day = BEGIN.plusDays(random.nextInt(DAYS));
                Holding before = on(events, day);
                List<CompetenceEvent> more = new ArrayList<>(events);
                more.add(event(EVENTS + 1, 0, kind, BEGIN.plusDays(random.nextInt(DAYS)), 0));
                Holding after = on(more, day);
                if (before.counts()) {
                    held++;
                    assertThat(after.counts()).isTrue();
                    assertThat(Objects.requireNonNull(after.lastGoodDay()))
                            .isAfterOrEqualTo(Objects.requireNonNull(before.lastGoodDay()));
                }
            }
        }
        assertThat(held).isGreaterThan(50);
    }

    /** What may be authorised, which is only what stands assessed not too long ago, is held then. */
    @ParameterizedTest
    @MethodSource("seeds")
    void authorisationOfWhatIsAssessedMakesItHeld(int seed) {
        int authorised = 0;
        for (List<CompetenceEvent> all : history(seed).values()) {
            for (int size = 1; size < all.size(); size++) {
                List<CompetenceEvent> events = all.subList(0, size);
                LocalDate day = LocalDate.of(2026, 8, 1);
                Holding holding = on(events, day);
                LocalDate assessed = holding.assessed();
                boolean fresh = assessed != null && !assessed.plusMonths(36).isBefore(day);
                if (holding.state() == State.ASSESSED && fresh) {
                    List<CompetenceEvent> more = new ArrayList<>(events);
                    more.add(event(EVENTS + 1, 0, Kind.AUTHORISED, day, 0));
                    assertThat(on(more, day).counts()).isTrue();
                    authorised++;
                }
            }
        }
        assertThat(authorised).isPositive();
    }
}
