package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.working.WorkingFixtures.LONDON;
import static org.crosshead.working.WorkingFixtures.leg;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.crosshead.working.TrainDraft.Call;
import org.junit.jupiter.api.Test;

/** Checks that a train copied to another day keeps the readings of the railway's clock. */
class DayShiftTests {

    private static final LocalDate BEFORE_THE_CHANGE = LocalDate.of(2030, 3, 30);
    private static final LocalDate AFTER_THE_CHANGE = LocalDate.of(2030, 4, 1);

    @Test
    void movesCallsAndCrewByWholeDays() {
        TrainDraft moved = new DayShift(ZoneOffset.UTC).to(LocalDate.of(2030, 5, 9), WorkingFixtures.train());

        assertThat(moved.day()).isEqualTo(LocalDate.of(2030, 5, 9));
        assertThat(moved.calls()).extracting(Call::departure).containsExactly(at("2030-05-09T10:00:00Z"), null);
        assertThat(moved.calls()).extracting(Call::arrival).containsExactly(null, at("2030-05-09T10:20:00Z"));
        assertThat(moved.crew().get(0).bookOn()).isEqualTo(at("2030-05-09T09:15:00Z"));
        assertThat(moved.crew().get(0).bookOff()).isEqualTo(at("2030-05-09T16:00:00Z"));
        assertThat(moved.crew().get(1).bookOn()).isNull();
        assertThat(moved.legs()).isEqualTo(WorkingFixtures.train().legs());
        assertThat(moved.engines()).isEqualTo(WorkingFixtures.train().engines());
    }

    @Test
    void keepsTheReadingOverAChangeOfTheClockAndPastMidnight() {
        TrainDraft moved = new DayShift(LONDON).to(AFTER_THE_CHANGE, nightTrain());

        assertThat(moved.calls().get(0).departure()).isEqualTo(at("2030-04-01T22:50:00Z"));
        assertThat(moved.calls().get(1).arrival()).isEqualTo(at("2030-04-01T23:20:00Z"));
    }

    @Test
    void comesBackUnchanged() {
        DayShift shift = new DayShift(LONDON);

        assertThat(shift.to(BEFORE_THE_CHANGE.minusDays(9), shift.to(AFTER_THE_CHANGE, nightTrain())))
                .isEqualTo(shift.to(BEFORE_THE_CHANGE.minusDays(9), nightTrain()));
    }

    /** Leaves at ten to midnight by the clock of winter, a day before summer's begins. */
    private static TrainDraft nightTrain() {
        TrainDraft train = WorkingFixtures.train(
                List.of(leg("MAIN", 0, 480)),
                List.of(
                        new Call(1, 0, "Anfang", true, null, at("2030-03-30T23:50:00Z"), false),
                        new Call(1, 480, "Mitte", true, at("2030-03-31T00:20:00Z"), null, false)));
        return new TrainDraft(
                train.code(),
                train.title(),
                BEFORE_THE_CHANGE,
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                train.calls(),
                train.engines(),
                List.of());
    }

    private static Instant at(String moment) {
        return Instant.parse(moment);
    }
}
