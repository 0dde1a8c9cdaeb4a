package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.working.WorkingFixtures.LONDON;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.crosshead.working.BookedTimes.Reading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Checks how times of a timetable become moments, past midnight and over both changes of the clock. */
class BookedTimesTests {

    private static final LocalDate ORDINARY = LocalDate.of(2030, 5, 6);
    private static final LocalDate CLOCK_GOES_FORWARD = LocalDate.of(2030, 3, 31);
    private static final LocalDate CLOCK_GOES_BACK = LocalDate.of(2030, 10, 27);

    @Test
    void takesAnEarlierTimeAsPastMidnight() {
        assertThat(moments(ORDINARY, "23:50", "00:05", "00:20"))
                .containsExactly(at("2030-05-06T22:50:00Z"), at("2030-05-06T23:05:00Z"), at("2030-05-06T23:20:00Z"));
    }

    @Test
    void leavesAPlaceWithoutTimeWithoutMoment() {
        assertThat(moments(ORDINARY, null, "10:00", null, "10:05"))
                .containsExactly(null, at("2030-05-06T09:00:00Z"), null, at("2030-05-06T09:05:00Z"));
    }

    @Test
    void endsBeforeATimeThatRunsBackwards() {
        BookedTimes.Resolved resolved = resolve(ORDINARY, "10:00", "09:50", "10:10");

        assertThat(resolved.moments()).containsExactly(at("2030-05-06T09:00:00Z"));
        assertThat(resolved.skipped()).isFalse();
    }

    @Test
    void countsNoHourThatTheClockLeavesOut() {
        assertThat(moments(CLOCK_GOES_FORWARD, "00:50", "02:10"))
                .containsExactly(at("2030-03-31T00:50:00Z"), at("2030-03-31T01:10:00Z"));
    }

    @Test
    void refusesATimeThatTheClockLeavesOut() {
        assertThat(resolve(CLOCK_GOES_FORWARD, "00:50", "01:30"))
                .isEqualTo(new BookedTimes.Resolved(List.of(at("2030-03-31T00:50:00Z")), true));
        assertThat(resolve(CLOCK_GOES_FORWARD, "01:30")).isEqualTo(new BookedTimes.Resolved(List.of(), true));
        assertThat(resolve(CLOCK_GOES_FORWARD.minusDays(1), "23:50", "01:30").skipped())
                .isTrue();
        assertThat(resolve(CLOCK_GOES_FORWARD.minusDays(1), "03:00", "01:30").skipped())
                .as("nobody stands until the night after")
                .isFalse();
    }

    @Test
    void takesTheSecondOfTwoReadingsWhereTheFirstWouldRunBackwards() {
        assertThat(moments(CLOCK_GOES_BACK, "00:50", "01:30", "01:10", "02:05"))
                .containsExactly(
                        at("2030-10-26T23:50:00Z"),
                        at("2030-10-27T00:30:00Z"),
                        at("2030-10-27T01:10:00Z"),
                        at("2030-10-27T02:05:00Z"));
    }

    @Test
    void takesTheSecondOfTwoReadingsWhereItIsAskedFor() {
        Reading again = new Reading(LocalTime.of(1, 30), true);

        assertThat(BookedTimes.resolve(CLOCK_GOES_BACK, LONDON, List.of(again)).moments())
                .containsExactly(at("2030-10-27T01:30:00Z"));
        assertThat(BookedTimes.resolve(CLOCK_GOES_BACK, LONDON, List.of(reading("00:50"), again))
                        .moments())
                .last()
                .isEqualTo(at("2030-10-27T01:30:00Z"));
    }

    @Test
    void findsTheNearestMomentOfAReading() {
        Instant halfPastMidnight = at("2030-05-05T23:30:00Z");

        assertThat(BookedTimes.nearest(halfPastMidnight, reading("23:40"), LONDON))
                .contains(at("2030-05-05T22:40:00Z"));
        assertThat(BookedTimes.nearest(halfPastMidnight, reading("07:00"), LONDON))
                .contains(at("2030-05-06T06:00:00Z"));
    }

    private static List<@Nullable Instant> moments(LocalDate day, @Nullable String... times) {
        return resolve(day, times).moments();
    }

    private static BookedTimes.Resolved resolve(LocalDate day, @Nullable String... times) {
        return BookedTimes.resolve(
                day,
                LONDON,
                Arrays.stream(times)
                        .map(time -> time == null ? null : reading(time))
                        .toList());
    }

    private static Reading reading(String time) {
        return new Reading(LocalTime.parse(time), false);
    }

    private static Instant at(String moment) {
        return Instant.parse(moment);
    }
}
