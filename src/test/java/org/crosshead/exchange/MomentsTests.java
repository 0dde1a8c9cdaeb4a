package org.crosshead.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Days and times of cells by a railway's clock that is put forward and back: in 2030 on 31 March and 27 October. */
class MomentsTests {

    private static final LocalDate TODAY = LocalDate.of(2030, 5, 6);

    private final ProblemList problems = new ProblemList();
    private final Moments moments = new Moments(TODAY, ZoneId.of("Europe/London"), problems);

    @Test
    void countsDaysFromTheDayOfTheImport() {
        assertThat(moments.day(line("D+0"), "cell")).isEqualTo(TODAY);
        assertThat(moments.day(line("d-400"), "cell")).isEqualTo(LocalDate.of(2029, 4, 1));
        assertThat(moments.day(line("2031-01-02"), "cell")).isEqualTo(LocalDate.of(2031, 1, 2));
        assertThat(moments.dayOrNull(line(""), "cell")).isNull();
    }

    @Test
    void readsTimesByTheRailwaysClock() {
        assertThat(moment("09:05", TODAY, null)).isEqualTo(Instant.parse("2030-05-06T08:05:00Z"));
        assertThat(moment("9:05:30", TODAY, null)).isEqualTo(Instant.parse("2030-05-06T08:05:30Z"));
        assertThat(moment("25:10", TODAY, null)).isEqualTo(Instant.parse("2030-05-07T00:10:00Z"));
        assertThat(moment("D-1 23:10", TODAY, null)).isEqualTo(Instant.parse("2030-05-05T22:10:00Z"));
        assertThat(moment("2030-01-02 12:00", TODAY, null)).isEqualTo(Instant.parse("2030-01-02T12:00:00Z"));
    }

    @Test
    void refusesAnHourThatTheClocksSkip() {
        LocalDate eve = LocalDate.of(2030, 3, 30);

        assertThat(moment("25:30", eve, null)).isNull();

        assertThat(problems.first()).extracting(ImportProblem::code).containsExactly("exchange.refused.hour-missing");
        assertThat(moment("26:00", eve, null)).isEqualTo(Instant.parse("2030-03-31T01:00:00Z"));
    }

    @Test
    void takesAnHourThatComesTwiceSoThatTimeRunsForward() {
        LocalDate day = LocalDate.of(2030, 10, 27);

        assertThat(moment("01:30", day, null)).isEqualTo(Instant.parse("2030-10-27T00:30:00Z"));
        assertThat(moment("01:10", day, Instant.parse("2030-10-27T00:50:00Z")))
                .isEqualTo(Instant.parse("2030-10-27T01:10:00Z"));
    }

    private @Nullable Instant moment(String cell, LocalDate day, @Nullable Instant after) {
        return moments.momentOrNull(line(cell), "cell", day, after);
    }

    private static Line line(String cell) {
        return new Line(ImportFile.CALLS, 2, Map.of("cell", cell));
    }
}
