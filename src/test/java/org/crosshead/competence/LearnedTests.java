package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.routeknowledge.LearningNeeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How trips are counted. Directive 2007/59/EC Annex III, from memory: an appropriate number of journeys, by day and by night. */
class LearnedTests {

    private static final LearningNeeds NEEDS = new LearningNeeds(4, 1, 2, 1, 2);

    private final List<CompetenceEvent> events = new ArrayList<>();

    private void event(Kind kind, String day, Circumstance... circumstances) {
        events.add(new CompetenceEvent(
                events.size() + 1L,
                1,
                kind,
                HoldingRulesTests.ROAD,
                LocalDate.parse(day),
                Instant.EPOCH,
                9L,
                null,
                null,
                "",
                Set.of(circumstances)));
    }

    private Learned on(String day) {
        return Learned.of(events, NEEDS, 6, 12, LocalDate.parse(day));
    }

    @Test
    void tripsAreCountedByLightWeatherAndWhoDrove() {
        event(Kind.RODE, "2026-01-01");
        event(Kind.LEARNED, "2026-01-02", Circumstance.DARK);
        event(Kind.RODE, "2026-01-03", Circumstance.BAD_WEATHER);
        assertThat(on("2026-02-01").had()).isEqualTo(new LearningNeeds(3, 1, 1, 1, 0));
        assertThat(on("2026-02-01").isEnough()).isFalse();
        event(Kind.LEARNED, "2026-01-04");
        assertThat(on("2026-02-01").isEnough()).isTrue();
        assertThat(on("2026-01-03").isEnough()).as("not yet that day").isFalse();
    }

    /** Four trips by day are not enough where one in the dark is laid down. */
    @Test
    void tripInTheDarkIsNotMadeUpForByDay() {
        for (int i = 1; i < 9; i++) {
            event(Kind.LEARNED, "2026-01-0" + i, Circumstance.BAD_WEATHER);
        }
        assertThat(on("2026-02-01").isEnough()).isFalse();
    }

    /** Last worked on 1 January, lapsed on 1 July 2026: the refresher is enough until 1 July 2027, then all is learned anew. */
    @ParameterizedTest
    @CsvSource({"2026-08-01, true", "2027-07-01, true", "2027-07-02, false"})
    void whoLapsedNotLongAgoNeedsTheRefresherAlone(String day, boolean refresher) {
        event(Kind.LEARNED, "2025-06-01");
        event(Kind.AUTHORISED, "2025-07-01");
        event(Kind.WORKED, "2026-01-01");
        assertThat(on(day).refresher()).isEqualTo(refresher);
        assertThat(on(day).had().trips()).as("lessons before it was held").isZero();
        assertThat(on(day).needs().trips()).isEqualTo(refresher ? 2 : 4);
    }

    /** Work in breach, before it was held or after it had lapsed, makes nobody somebody who held it. */
    @Test
    void workWithoutHoldingItIsNoHolding() {
        event(Kind.LEARNED, "2026-01-01");
        event(Kind.WORKED, "2026-01-02");
        assertThat(on("2026-02-01").refresher()).isFalse();
        assertThat(on("2026-02-01").had().trips()).as("the lesson before stays").isEqualTo(1);
        event(Kind.TAKEN_OVER, "2026-03-01");
        event(Kind.WORKED, "2026-09-01");
        event(Kind.LEARNED, "2026-10-01");
        event(Kind.WORKED, "2027-04-01");
        assertThat(on("2027-05-01").had().trips()).as("since it was last held").isEqualTo(1);
        assertThat(on("2028-03-01").refresher())
                .as("eighteen months after 1 September 2026")
                .isTrue();
        assertThat(on("2028-03-02").refresher()).isFalse();
    }

    @Test
    void whoWasWithdrawnLearnsAsABeginner() {
        event(Kind.TAKEN_OVER, "2026-01-01");
        event(Kind.LEARNED, "2026-01-02");
        event(Kind.WITHDRAWN, "2026-02-01");
        assertThat(on("2026-03-01").refresher()).isFalse();
        assertThat(on("2026-03-01").had().trips()).isZero();
    }
}
