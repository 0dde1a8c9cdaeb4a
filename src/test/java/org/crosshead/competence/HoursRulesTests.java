package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.competence.KnowledgePolicy.Accrued;
import org.crosshead.competence.KnowledgePolicy.Hours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Customary limits of Great Britain where nothing else is said: 12 hours a turn, 12 between turns, 72 in seven days, 13 turns in fourteen days; from memory. */
class HoursRulesTests {

    private static HoursRules.Work work(String on, String off) {
        return new HoursRules.Work(
                LocalDateTime.parse(on).toInstant(ZoneOffset.UTC),
                LocalDateTime.parse(off).toInstant(ZoneOffset.UTC));
    }

    private static List<String> codes(HoursRules.Work work, List<HoursRules.Work> around) {
        return codes(work, around, Hours.CUSTOMARY);
    }

    private static List<String> codes(HoursRules.Work work, List<HoursRules.Work> around, Hours hours) {
        return HoursRules.bars(1, work, around, hours, ZoneOffset.UTC).stream()
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

    /** Crews of passenger trains: eight hours off, ten after twelve on duty; 49 CFR 228.405(a)(1)-(2), read. */
    @ParameterizedTest
    @CsvSource({
        "2026-12-05T05:00, 2026-12-05T17:00, 2026-12-06T03:00, ''",
        "2026-12-05T05:00, 2026-12-05T17:00, 2026-12-06T02:59, rest-before",
        "2026-12-05T05:00, 2026-12-05T16:30, 2026-12-06T00:30, ''",
        "2026-12-05T05:00, 2026-12-05T16:30, 2026-12-06T00:29, rest-before"
    })
    void moreRestFollowsALongTurn(String on, String off, String next, String told) {
        Hours hours = new Hours(12, 8, 4, 84, 14, new Accrued(0, 14, 48, 10));
        HoursRules.Work after =
                new HoursRules.Work(work(next, next).on(), work(next, next).on().plus(Duration.ofHours(6)));
        assertThat(codes(after, List.of(work(on, off)), hours)).isEqualTo(told.isEmpty() ? List.of() : List.of(told));
        assertThat(codes(work(on, off), List.of(after), hours))
                .isEqualTo(told.isEmpty() ? List.of() : List.of("rest-after"));
    }

    /** Crews of other trains: six days in a row, then 48 hours off; 49 USC 21103, from memory. */
    @Test
    void timeOffFollowsDaysInARow() {
        Hours hours = new Hours(12, 10, 4, 84, 14, new Accrued(276, 6, 48, 0));
        List<HoursRules.Work> six = days(1, 6);
        assertThat(codes(work("2026-12-07T06:00", "2026-12-07T10:00"), six, hours))
                .as("the seventh day")
                .containsExactly("days-off");
        assertThat(codes(work("2026-12-08T09:59", "2026-12-08T14:00"), six, hours))
                .as("a day between, and a minute too little")
                .containsExactly("days-off");
        assertThat(codes(work("2026-12-08T10:00", "2026-12-08T14:00"), six, hours))
                .isEmpty();
        assertThat(codes(work("2026-12-06T18:00", "2026-12-06T20:00"), days(1, 5), hours))
                .as("the sixth day itself")
                .isEmpty();
        assertThat(codes(work("2026-12-07T06:00", "2026-12-07T10:00"), days(2, 6), hours))
                .as("the sixth day in a row")
                .isEmpty();
    }

    /** 276 hours in a calendar month: 49 USC 21103, from memory. The 277th is refused; the month before counts for itself. */
    @Test
    void hoursOfACalendarMonthAreLimited() {
        Hours hours = new Hours(12, 10, 4, 84, 14, new Accrued(276, 0, 0, 0));
        List<HoursRules.Work> month = new ArrayList<>();
        for (int day = 1; day <= 23; day++) {
            String date = "2026-12-%02dT".formatted(day);
            month.add(work(date + "06:00", date + "17:30"));
        }
        assertThat(hoursOf(month)).isEqualTo(264.5);
        assertThat(codes(work("2026-12-29T06:00", "2026-12-29T17:30"), month, hours))
                .isEmpty();
        assertThat(codes(work("2026-12-29T06:00", "2026-12-29T17:31"), month, hours))
                .containsExactly("month-hours");
        assertThat(codes(work("2026-12-31T20:00", "2027-01-01T08:00"), month, hours))
                .as("four hours of it are of December, eight of January")
                .isEmpty();
        assertThat(codes(work("2027-01-01T06:00", "2027-01-01T18:00"), month, hours))
                .isEmpty();
    }

    private static double hoursOf(List<HoursRules.Work> works) {
        return works.stream().mapToDouble(HoursRules.Work::hours).sum();
    }

    private static List<HoursRules.Work> days(int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(day -> work("2026-12-0" + day + "T06:00", "2026-12-0" + day + "T10:00"))
                .toList();
    }

    @Test
    void figuresOfABarAreWhatIsAndWhatMayBe() {
        assertThat(HoursRules.bars(
                        7, work("2026-12-05T07:30", "2026-12-05T20:45"), List.of(), Hours.CUSTOMARY, ZoneOffset.UTC))
                .containsExactly(new Permit.Bar(7, "turn-hours", List.of(13.25, 12.0)));
    }
}
