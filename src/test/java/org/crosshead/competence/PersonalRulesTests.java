package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.Band;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Licences and medical outcomes. */
class PersonalRulesTests {

    private static final KnowledgePolicy POLICY = new KnowledgePolicy(
            1,
            LocalDate.of(2020, 1, 1),
            new EnumMap<>(Map.of(Band.HARD, 6, Band.USUAL, 12, Band.EASY, 12)),
            12,
            24,
            60,
            Set.of(),
            false,
            KnowledgePolicy.Regime.SEPARATE_LINE,
            "one",
            "another");

    private final List<CompetenceEvent> events = new ArrayList<>();

    private void event(Kind kind, Subject subject, String day, @Nullable String until) {
        events.add(new CompetenceEvent(
                events.size() + 1L,
                1,
                kind,
                subject,
                LocalDate.parse(day),
                Instant.parse("2026-11-01T00:00:00Z"),
                9L,
                null,
                until == null ? null : LocalDate.parse(until),
                ""));
    }

    private Holding on(Subject subject, String day) {
        HoldingRules.Terms terms = new HoldingRules.Terms(subject, 12, List.of(), POLICY);
        return HoldingRules.on(events, terms, LocalDate.parse(day), Instant.parse("2026-12-01T00:00:00Z"));
    }

    /** TDLCR(NI) schedule 1 paragraph 3(1), read: every three years up to 55, then every year; the formula between is this project's. */
    @ParameterizedTest
    @CsvSource({
        "1970-02-10, 2024-06-01, 2025-06-01",
        "1970-02-10, 2022-06-01, 2025-02-10",
        "1985-04-02, 2026-01-15, 2029-01-15",
        "1960-04-02, 2026-01-15, 2027-01-15",
        "1972-03-03, 2024-06-01, 2027-03-03",
        ", 2026-01-15, 2029-01-15",
        "1985-04-02, 2024-02-29, 2027-02-28"
    })
    void medicalIsDueByAge(LocalDate born, LocalDate examined, LocalDate last) {
        assertThat(PersonalRules.medicalLast(examined, born)).isEqualTo(last);
    }

    /** TDLCR reg. 12(1), read: ten years; issued 2016-11-30, good on 2026-11-28 and not on 2026-12-05. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-28, DUE",
        "2026-11-30, DUE",
        "2026-12-01, LAPSED",
        "2026-12-05, LAPSED",
        "2026-09-30, HELD",
        "2016-11-29, NOT_HELD"
    })
    void licenceIsGoodToItsLastDay(String day, State state) {
        event(Kind.LICENSED, Subject.LICENCE, "2016-11-30", "2026-11-30");
        assertThat(on(Subject.LICENCE, day).state()).isEqualTo(state);
    }

    /** TDLCR reg. 12(3), read: it ceases to be valid once suspended or withdrawn. */
    @Test
    void suspendedLicenceDoesNotCountUntilItIsReinstated() {
        event(Kind.LICENSED, Subject.LICENCE, "2020-01-01", "2029-12-31");
        event(Kind.SUSPENDED, Subject.LICENCE, "2026-02-01", null);
        assertThat(on(Subject.LICENCE, "2026-01-31").counts()).isTrue();
        assertThat(on(Subject.LICENCE, "2026-02-01").state()).isEqualTo(State.SUSPENDED);
        event(Kind.REINSTATED, Subject.LICENCE, "2026-03-01", null);
        assertThat(on(Subject.LICENCE, "2026-03-01").counts()).isTrue();
        event(Kind.WITHDRAWN, Subject.LICENCE, "2026-04-01", null);
        assertThat(on(Subject.LICENCE, "2026-04-01").state()).isEqualTo(State.WITHDRAWN);
        event(Kind.LICENSED, Subject.LICENCE, "2026-05-01", "2036-04-30");
        assertThat(on(Subject.LICENCE, "2026-05-01").counts()).isTrue();
    }

    @Test
    void unfitLastsUntilADoctorSaysFit() {
        event(Kind.FIT, Subject.MEDICAL, "2025-01-10", "2028-01-10");
        event(Kind.UNFIT, Subject.MEDICAL, "2026-02-01", null);
        assertThat(on(Subject.MEDICAL, "2026-02-01").state()).isEqualTo(State.UNFIT);
        event(Kind.FIT_RESTRICTED, Subject.MEDICAL, "2026-06-01", "2027-06-01");
        assertThat(on(Subject.MEDICAL, "2026-06-01").lasts()).contains(LocalDate.of(2027, 6, 1));
        assertThat(on(Subject.MEDICAL, "2027-06-02").state()).isEqualTo(State.LAPSED);
    }

    /** 49 CFR 240.303(b)-(c), read: once in each calendar year; observed on 5 January 2025 it is not late on 30 December 2026. */
    @ParameterizedTest
    @CsvSource({
        "2025-01-05, 2026-12-30, true",
        "2025-01-05, 2026-12-31, true",
        "2025-01-05, 2027-01-01, false",
        "2025-12-31, 2026-12-31, true",
        "2025-12-31, 2027-01-01, false",
        "2024-02-29, 2025-12-31, true"
    })
    void calendarYearRuleIsNoRollingOne(String observed, String day, boolean good) {
        event(Kind.OBSERVED, Subject.OBSERVED, observed, null);
        event(Kind.TESTED, Subject.TESTED, observed, null);
        assertThat(on(Subject.OBSERVED, day).counts()).isEqualTo(good);
        assertThat(on(Subject.TESTED, day).counts()).isEqualTo(good);
    }

    /** The earlier outcome is struck: what stood before it counts again. */
    @Test
    void whatIsStruckDoesNotCount() {
        event(Kind.FIT, Subject.MEDICAL, "2025-01-10", "2028-01-10");
        event(Kind.UNFIT, Subject.MEDICAL, "2026-02-01", null);
        events.add(new CompetenceEvent(
                3,
                1,
                Kind.STRUCK,
                Subject.MEDICAL,
                LocalDate.of(2026, 2, 2),
                Instant.parse("2026-11-01T00:00:00Z"),
                9L,
                2L,
                "another person"));
        assertThat(on(Subject.MEDICAL, "2026-02-03").state()).isEqualTo(State.HELD);
    }
}
