package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.KnowledgePolicy.Regime;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.Closure;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is held on a day, by dates that are easily got wrong. People and lines are invented. */
class HoldingRulesTests {

    static final Subject ROAD = new Subject(Subject.Kind.SECTION, "HV3-DOWN");
    static final Instant LATER = Instant.parse("2030-01-01T00:00:00Z");
    private static final long INA = 1;

    static KnowledgePolicy policy(int assessmentMonths, Kind... keepsAlive) {
        Map<Band, Integer> lapse = new EnumMap<>(Map.of(Band.HARD, 6, Band.USUAL, 12, Band.EASY, 12));
        return new KnowledgePolicy(
                1,
                LocalDate.of(2020, 1, 1),
                lapse,
                12,
                assessmentMonths,
                60,
                Set.of(keepsAlive),
                false,
                Regime.SEPARATE_LINE,
                "Inspector",
                "Manager");
    }

    static CompetenceEvent event(long id, Kind kind, String day) {
        LocalDate on = LocalDate.parse(day);
        return new CompetenceEvent(
                id, INA, kind, ROAD, on, on.atStartOfDay().toInstant(java.time.ZoneOffset.UTC), 9L, null, "");
    }

    private static CompetenceEvent struck(long id, long struckId, String entered) {
        return new CompetenceEvent(
                id,
                INA,
                Kind.STRUCK,
                ROAD,
                LocalDate.parse(entered),
                Instant.parse(entered + "T00:00:00Z"),
                9L,
                struckId,
                "not driven");
    }

    private static HoldingRules.Terms terms(int lapseMonths, @Nullable String closed, KnowledgePolicy policy) {
        return new HoldingRules.Terms(
                ROAD, lapseMonths, closed == null ? List.of() : List.of(new Closure(LocalDate.parse(closed))), policy);
    }

    private static Holding on(List<CompetenceEvent> events, String day, int lapseMonths) {
        return HoldingRules.on(events, terms(lapseMonths, null, policy(240)), LocalDate.parse(day), LATER);
    }

    /** Calendar months and last good days, computed by the calendar. */
    @ParameterizedTest
    @CsvSource({
        "2024-02-29, 12, 2025-02-28",
        "2025-08-31,  6, 2026-02-28",
        "2025-11-25, 12, 2026-11-25",
        "2025-09-20, 12, 2026-09-20",
        "2025-12-31, 12, 2026-12-31",
        "2026-03-31,  6, 2026-09-30",
        "2023-08-31,  6, 2024-02-29"
    })
    void lastGoodDayIsSoManyCalendarMonthsAfterTheLastTurn(String worked, int months, String last) {
        List<CompetenceEvent> events =
                List.of(event(1, Kind.TAKEN_OVER, "2020-01-01"), event(2, Kind.WORKED, "2020-06-01"));
        List<CompetenceEvent> kept = new ArrayList<>(events);
        LocalDate day = LocalDate.parse("2020-06-01").plusMonths(months);
        for (long id = 3; day.isBefore(LocalDate.parse(worked)); id++) {
            kept.add(event(id, Kind.WORKED, day.toString()));
            day = day.plusMonths(months);
        }
        kept.add(event(99, Kind.WORKED, worked));
        assertThat(on(kept, worked, months).lastGoodDay()).isEqualTo(LocalDate.parse(last));
        assertThat(on(kept, last, months).counts()).isTrue();
        assertThat(on(kept, LocalDate.parse(last).plusDays(1).toString(), months)
                        .state())
                .isEqualTo(State.LAPSED);
    }

    /** Last drove on 20 September 2025, so not on 5 December 2026. */
    @Test
    void lapsedRoadIsNotBroughtBackByWorkingIt() {
        List<CompetenceEvent> events = List.of(
                event(1, Kind.TAKEN_OVER, "2024-10-01"),
                event(2, Kind.WORKED, "2025-09-20"),
                event(3, Kind.WORKED_CONDUCTED, "2026-12-05"),
                event(4, Kind.WORKED, "2026-12-12"));
        assertThat(on(events, "2026-12-05", 12).state()).isEqualTo(State.LAPSED);
        assertThat(on(events, "2026-12-31", 12).state()).isEqualTo(State.LAPSED);
        List<CompetenceEvent> again = new ArrayList<>(events);
        again.add(event(5, Kind.DECLARED, "2027-01-02"));
        again.add(event(6, Kind.QUESTIONS_PASSED, "2027-01-03"));
        again.add(event(7, Kind.PRACTICE_PASSED, "2027-01-04"));
        assertThat(on(again, "2027-01-05", 12).state()).isEqualTo(State.ASSESSED);
        again.add(event(8, Kind.AUTHORISED, "2027-01-05"));
        assertThat(on(again, "2027-01-05", 12).state()).isEqualTo(State.HELD);
        assertThat(on(again, "2027-01-05", 12).lastGoodDay()).isEqualTo(LocalDate.of(2028, 1, 5));
    }

    /** The earlier of the two clocks governs: absence, or the assessment's interval (TDLCR schedule 6 and Directive 2007/59/EC Annex VII, numbers from memory). */
    @Test
    void assessmentEndsItThoughWorkedMonthly() {
        List<CompetenceEvent> events = new ArrayList<>(List.of(event(1, Kind.TAKEN_OVER, "2023-12-01")));
        for (int month = 0; month < 36; month++) {
            events.add(event(
                    2 + month,
                    Kind.WORKED,
                    LocalDate.of(2023, 12, 15).plusMonths(month).toString()));
        }
        HoldingRules.Terms terms = terms(12, null, policy(36));
        assertThat(HoldingRules.on(events, terms, LocalDate.of(2026, 12, 1), LATER)
                        .counts())
                .isTrue();
        assertThat(HoldingRules.on(events, terms, LocalDate.of(2026, 12, 2), LATER)
                        .state())
                .isEqualTo(State.LAPSED);
    }

    /** What keeps it alive is policy (practice of the trade, from memory). */
    @ParameterizedTest
    @CsvSource({"RODE, false", "CONDUCTED, false", "WORKED_CONDUCTED, false", "RODE, true", "CONDUCTED, true"})
    void ridingCountsWhereThePolicySaysSo(Kind kind, boolean counts) {
        List<CompetenceEvent> events = List.of(event(1, Kind.TAKEN_OVER, "2025-01-01"), event(2, kind, "2025-11-01"));
        KnowledgePolicy policy = counts ? policy(240, kind) : policy(240);
        Holding holding = HoldingRules.on(events, terms(12, null, policy), LocalDate.of(2026, 6, 1), LATER);
        assertThat(holding.counts()).isEqualTo(counts);
    }

    @ParameterizedTest
    @CsvSource({"2026-07-01, HELD", "2026-10-31, HELD", "2026-11-01, DUE", "2026-12-31, DUE", "2027-01-01, LAPSED"})
    void isDueSixtyDaysBeforeItLapses(String day, State state) {
        List<CompetenceEvent> events =
                List.of(event(1, Kind.TAKEN_OVER, "2025-06-01"), event(2, Kind.WORKED, "2025-12-31"));
        assertThat(on(events, day, 12).state()).isEqualTo(state);
    }

    @Test
    void threeActsInOrderMakeItHeld() {
        List<CompetenceEvent> acts = List.of(
                event(1, Kind.LEARNED, "2026-01-01"),
                event(2, Kind.DECLARED, "2026-02-01"),
                event(3, Kind.QUESTIONS_PASSED, "2026-02-02"),
                event(4, Kind.PRACTICE_PASSED, "2026-02-03"),
                event(5, Kind.AUTHORISED, "2026-02-04"));
        List<State> states = IntStream.rangeClosed(1, 5)
                .mapToObj(n -> on(acts.subList(0, n), "2026-02-10", 12).state())
                .toList();
        assertThat(states).containsExactly(State.LEARNING, State.DECLARED, State.DECLARED, State.ASSESSED, State.HELD);
        assertThat(on(acts, "2026-02-10", 12).because()).containsExactly(1L, 2L, 3L, 4L, 5L);
    }

    @Test
    void authorisedWithoutAssessmentsIsNotHeld() {
        List<CompetenceEvent> acts = List.of(
                event(1, Kind.DECLARED, "2026-02-01"),
                event(2, Kind.PRACTICE_PASSED, "2026-02-03"),
                event(3, Kind.AUTHORISED, "2026-02-04"));
        assertThat(on(acts, "2026-02-10", 12).state()).isEqualTo(State.DECLARED);
    }

    @ParameterizedTest
    @CsvSource({
        "SUSPENDED, SUSPENDED",
        "WITHDRAWN, WITHDRAWN",
        "HANDED_BACK, HANDED_BACK",
        "PRACTICE_FAILED, LEARNING",
        "QUESTIONS_FAILED, LEARNING"
    })
    void maybeEndedAtOnce(Kind kind, State state) {
        List<CompetenceEvent> events = List.of(event(1, Kind.TAKEN_OVER, "2026-01-01"), event(2, kind, "2026-03-01"));
        assertThat(on(events, "2026-02-28", 12).state()).isEqualTo(State.HELD);
        assertThat(on(events, "2026-03-01", 12).state()).isEqualTo(state);
        assertThat(on(events, "2026-03-01", 12).counts()).isFalse();
    }

    @Test
    void reinstatedStandsAsItWouldWithoutTheSuspension() {
        List<CompetenceEvent> events = List.of(
                event(1, Kind.TAKEN_OVER, "2026-01-01"),
                event(2, Kind.SUSPENDED, "2026-02-01"),
                event(3, Kind.REINSTATED, "2026-03-01"));
        assertThat(on(events, "2026-03-01", 12).state()).isEqualTo(State.HELD);
        assertThat(on(events, "2027-01-02", 12).state()).isEqualTo(State.LAPSED);
    }

    /** A closed section counts for nobody and its clocks run on (closing: synopsis of a standard on proving trains, read; the rest from memory). */
    @Test
    void closedSectionCountsForNobodyAndItsClockRunsOn() {
        List<CompetenceEvent> events = List.of(event(1, Kind.TAKEN_OVER, "2026-01-01"));
        HoldingRules.Terms closed = terms(12, "2026-05-01", policy(240));
        assertThat(HoldingRules.on(events, closed, LocalDate.of(2026, 4, 30), LATER)
                        .counts())
                .isTrue();
        assertThat(HoldingRules.on(events, closed, LocalDate.of(2026, 5, 1), LATER)
                        .state())
                .isEqualTo(State.CLOSED);
        assertThat(on(events, "2027-01-02", 12).state()).isEqualTo(State.LAPSED);
    }

    /** The auditor's question: as known then, and as known now of one turn. */
    @Test
    void lateCorrectionChangesTodaysViewAndNotWhatWasKnown() {
        List<CompetenceEvent> events = List.of(
                event(1, Kind.TAKEN_OVER, "2025-06-01"),
                event(2, Kind.WORKED, "2026-04-02"),
                struck(3, 2, "2026-12-20"));
        HoldingRules.Terms terms = terms(12, null, policy(240));
        LocalDate turn = LocalDate.of(2026, 12, 5);
        assertThat(HoldingRules.on(events, terms, turn, Instant.parse("2026-12-05T07:30:00Z"))
                        .counts())
                .isTrue();
        assertThat(HoldingRules.on(events, terms, turn, LATER).state()).isEqualTo(State.LAPSED);
    }

    @Test
    void nothingIsKnownOfWhatIsEnteredLater() {
        CompetenceEvent late = new CompetenceEvent(
                1,
                INA,
                Kind.TAKEN_OVER,
                ROAD,
                LocalDate.of(2026, 1, 1),
                Instant.parse("2026-05-01T00:00:00Z"),
                9L,
                null,
                "x");
        HoldingRules.Terms terms = terms(12, null, policy(240));
        assertThat(HoldingRules.on(
                                List.of(late), terms, LocalDate.of(2026, 3, 1), Instant.parse("2026-03-01T12:00:00Z"))
                        .state())
                .isEqualTo(State.NOT_HELD);
    }

    /** A limit lasts until it is lifted, or until it is authorised anew. */
    @Test
    void limitsLastUntilTheyAreLiftedOrItIsTakenOverAnew() {
        List<CompetenceEvent> events = new ArrayList<>(List.of(
                event(1, Kind.TAKEN_OVER, "2026-01-01"),
                event(2, Kind.DAY_ONLY, "2026-02-01"),
                event(3, Kind.CHIMNEY_FIRST_ONLY, "2026-03-01")));
        assertThat(on(events, "2026-01-31", 6).limits()).isEmpty();
        assertThat(on(events, "2026-03-01", 6).limits())
                .containsExactlyInAnyOrder(Holding.Limit.DAY_ONLY, Holding.Limit.CHIMNEY_FIRST_ONLY);
        assertThat(on(events, "2026-03-01", 6).counts()).isTrue();
        events.add(event(4, Kind.LIMITS_LIFTED, "2026-04-01"));
        assertThat(on(events, "2026-04-01", 6).limits()).isEmpty();
        events.add(event(5, Kind.WITH_TEACHER_ONLY, "2026-05-01"));
        events.add(event(6, Kind.TAKEN_OVER, "2026-06-01"));
        assertThat(on(events, "2026-06-01", 6).limits()).isEmpty();
    }
}
