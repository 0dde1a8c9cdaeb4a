package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.crosshead.competence.KnowledgePolicy.Hours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Customary limits of Great Britain: 12 hours a turn, 12 between turns, 72 in seven days, 13 turns in fourteen days; from memory. */
class HoursRulesTests {

    private static HoursRules.Work work(String on, String off) {
        return new HoursRules.Work(
                LocalDateTime.parse(on).toInstant(ZoneOffset.UTC),
                LocalDateTime.parse(off).toInstant(ZoneOffset.UTC));
    }

    private static List<String> codes(HoursRules.Work work, List<HoursRules.Work> around) {
        return HoursRules.bars(1, work, around, Hours.CUSTOMARY).stream()
                .map(Permit.Bar::code)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-12-05T07:30, 2026-12-05T19:30, ''",
        "2026-12-05T07:30, 2026-12-05T19:31, turn-hours",
        "2026-12-05T07:30, 2026-12-05T20:45, turn-hours",
        "2026-12-05T22:00, 2026-12-06T10:00, ''",
        "2026-12-05T22:00, 2026-12-06T10:05, turn-hours"
    })
    void turnLastsTwelveHoursAtMost(String on, String off, String told) {
        assertThat(String.join(" ", codes(work(on, off), List.of()))).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-12-05T17:00, 2026-12-06T05:00, ''",
        "2026-12-05T17:00, 2026-12-06T04:59, rest-before",
        "2026-12-05T17:01, 2026-12-06T05:00, rest-before"
    })
    void twelveHoursLieBetweenTurns(String before, String on, String told) {
        HoursRules.Work first = new HoursRules.Work(
                LocalDateTime.parse("2026-12-05T08:00").toInstant(ZoneOffset.UTC),
                LocalDateTime.parse(before).toInstant(ZoneOffset.UTC));
        HoursRules.Work second = work(on, "2026-12-06T12:00");
        assertThat(String.join(" ", codes(second, List.of(first)))).isEqualTo(told);
        assertThat(String.join(" ", codes(first, List.of(second)))).isEqualTo(told.replace("before", "after"));
    }

    /** A pause of up to four hours belongs to the turn: several trains, one turn. */
    @Test
    void trainsWithShortPausesAreOneTurn() {
        List<HoursRules.Work> trains = List.of(
                work("2026-12-05T08:20", "2026-12-05T10:20"),
                work("2026-12-05T14:20", "2026-12-05T18:15"),
                work("2026-12-05T10:30", "2026-12-05T12:05"));
        assertThat(HoursRules.turns(trains, Hours.CUSTOMARY))
                .containsExactly(work("2026-12-05T08:20", "2026-12-05T18:15"));
        assertThat(codes(work("2026-12-05T18:30", "2026-12-05T20:30"), trains)).containsExactly("turn-hours");
    }

    @Test
    void seventyTwoHoursInSevenDays() {
        List<HoursRules.Work> week = new ArrayList<>();
        for (int day = 1; day <= 6; day++) {
            week.add(work("2026-12-0" + day + "T07:00", "2026-12-0" + day + "T19:00"));
        }
        assertThat(codes(work("2026-12-07T07:00", "2026-12-07T08:00"), week)).containsExactly("week-hours");
        assertThat(codes(work("2026-12-08T07:00", "2026-12-08T19:00"), week)).isEmpty();
    }

    @Test
    void thirteenTurnsInFourteenDays() {
        List<HoursRules.Work> before = new ArrayList<>();
        for (int day = 1; day <= 13; day++) {
            String date = "2026-12-%02dT".formatted(day);
            before.add(work(date + "10:00", date + "14:00"));
        }
        HoursRules.Work fourteenth = work("2026-12-14T10:00", "2026-12-14T14:00");
        assertThat(codes(fourteenth, before.subList(1, 13))).isEmpty();
        assertThat(codes(fourteenth, before)).containsExactly("fortnight-turns");
    }

    /** In the night in which the clocks go back, 20:00 to 07:30 by the clock are twelve and a half hours. */
    @Test
    void hoursAreCountedByInstants() {
        ZoneId zone = ZoneId.of("Europe/London");
        Instant on = LocalDateTime.parse("2026-10-24T20:00").atZone(zone).toInstant();
        Instant off = LocalDateTime.parse("2026-10-25T07:30").atZone(zone).toInstant();
        assertThat(Duration.between(on, off)).isEqualTo(Duration.ofMinutes(750));
        assertThat(codes(new HoursRules.Work(on, off), List.of())).containsExactly("turn-hours");
    }

    @Test
    void figuresOfABarAreWhatIsAndWhatMayBe() {
        assertThat(HoursRules.bars(7, work("2026-12-05T07:30", "2026-12-05T20:45"), List.of(), Hours.CUSTOMARY))
                .containsExactly(new Permit.Bar(7, "turn-hours", List.of(13.25, 12.0)));
    }
}
