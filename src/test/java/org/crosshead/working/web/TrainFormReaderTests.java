package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.working.WorkingFixtures.LONDON;
import static org.crosshead.working.WorkingFixtures.leg;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.crosshead.crew.Post;
import org.crosshead.route.MeasureUnit;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.WorkingFixtures;
import org.crosshead.working.web.TrainForm.CallRow;
import org.crosshead.working.web.TrainForm.CrewRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks that a train's form reads back as it was written, and what it takes from a hand that types. */
class TrainFormReaderTests {

    private static final Map<String, MeasureUnit> UNITS = Map.of("MAIN", MeasureUnit.CHAINS);
    private static final LocalDate CLOCK_GOES_BACK = LocalDate.of(2030, 10, 27);

    @Test
    void readsBackWhatWasWrittenOnTheNightInWhichTheClockGoesBack() {
        TrainDraft night = night();

        TrainForm form = written(night);
        TrainFormReader.Read read = read(form);

        assertThat(form.calls().get(0).departure()).isEqualTo("01:40 again");
        assertThat(form.crew().get(0).bookOn()).isEqualTo("23:30");
        assertThat(form.calls().get(1).atMeasure()).isEqualTo("1m 0.25ch");
        assertThat(read.problems()).isEmpty();
        assertThat(read.draft()).isEqualTo(night);
    }

    @Test
    void putsACallThatWasAddedAtTheEndWhereItLies() {
        TrainForm form = written(WorkingFixtures.train());
        List<CallRow> rows = new ArrayList<>(form.calls());
        Collections.reverse(rows);
        rows.add(new CallRow("Halfway", "", "3m 0ch", "true", "11.05", "11:06:30", ""));

        TrainFormReader.Read read = read(form.with(rows));

        assertThat(read.problems()).isEmpty();
        assertThat(read.draft().calls()).extracting(Call::place).containsExactly("Anfang", "Halfway", "Mitte");
        assertThat(read.draft().calls().get(1).departure()).isEqualTo(Instant.parse("2030-05-06T10:06:30Z"));
    }

    @ParameterizedTest
    @CsvSource({
        "10:05,    true",
        "9:05,     true",
        "09.05,    true",
        "10:05:30, true",
        "24:00,    false",
        "10:60,    false",
        "1005,     false",
        "10:5,     false",
        "-1:00,    false",
        "10:05pm,  false"
    })
    void knowsATime(String typed, boolean taken) {
        TypedFields fields = new TypedFields();

        assertThat(fields.time(TypedFields.Cell.of("departure", typed)) != null).isEqualTo(taken);
        assertThat(fields.problems().isEmpty()).isEqualTo(taken);
    }

    @ParameterizedTest
    @CsvSource({"225, true", "0.5, true", "-3, true", "NaN, false", "1e3, false", "0x10, false", "Infinity, false"})
    void knowsANumber(String typed, boolean taken) {
        TypedFields fields = new TypedFields();
        fields.number(TypedFields.Cell.of("pressurePsi", typed), 0);

        assertThat(fields.problems().isEmpty()).isEqualTo(taken);
    }

    @Test
    void leavesOutRowsInWhichNothingIsTyped() {
        TrainForm form = written(WorkingFixtures.train());

        assertThat(form.crewRows()).hasSize(form.crew().size() + 2);
        TrainForm sent = new TrainForm(
                form.code(),
                form.title(),
                form.day(),
                form.kind(),
                form.formationCode(),
                form.rail(),
                form.weather(),
                form.dark(),
                form.heated(),
                form.version(),
                form.reason(),
                form.legRows(),
                form.callRows(),
                form.engineRows(),
                form.crewRows());
        assertThat(sent).isEqualTo(form);
    }

    @Test
    void namesTheOnlyEngineForWhoLeavesItOut() {
        CrewRow row = new CrewRow("T-1", "FIREMAN", "", "", "", "", "");

        CrewSlot slot = new CrewTimes(LONDON, WorkingFixtures.DAY, List.of())
                .slot(row, 0, WorkingFixtures.train().engines(), new TypedFields());

        assertThat(slot).isEqualTo(new CrewSlot("T-1", Post.FIREMAN, "612", null, null, null, null));
    }

    /** Leaves in the second hour between one and two; the crew book on the evening before. */
    private static TrainDraft night() {
        TrainDraft train = WorkingFixtures.train(
                List.of(leg("MAIN", 0, 80.25)),
                List.of(
                        new Call(1, 0, "Anfang", true, null, Instant.parse("2030-10-27T01:40:00Z"), false),
                        new Call(1, 80.25, "Mitte", true, Instant.parse("2030-10-27T02:00:30Z"), null, false)));
        return new TrainDraft(
                train.code(),
                train.title(),
                CLOCK_GOES_BACK,
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                train.calls(),
                train.engines(),
                List.of(new CrewSlot(
                        "T-1",
                        Post.DRIVER,
                        "612",
                        null,
                        null,
                        Instant.parse("2030-10-26T22:30:00Z"),
                        Instant.parse("2030-10-27T06:00:00Z"))));
    }

    private static TrainForm written(TrainDraft draft) {
        Train train = new Train(1, 1, false, 1, 1, Instant.EPOCH, "Anna", "entered", draft);
        return new TrainFormWriter(LONDON, UNITS).form(train);
    }

    private static TrainFormReader.Read read(TrainForm form) {
        return new TrainFormReader(LONDON, UNITS).read(form, WorkingFixtures.DAY);
    }
}
