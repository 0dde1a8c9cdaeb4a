package org.crosshead.volume;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.crosshead.briefing.Briefings;
import org.crosshead.platform.ServiceJob;
import org.crosshead.working.DayShift;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;

/**
 * A season of the demonstration railway: its eight trains on every day, each briefed and issued over its first weeks. What is asked
 * for one day or one train must be found by an index and not by looking at all; how long it takes is written down, not asserted.
 */
@Tag("slow")
@SpringBootTest
@ActiveProfiles("demo")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class VolumeContract {

    private static final int DAYS = 120;
    private static final int DAYS_BRIEFED = 40;
    private static final int TIMES = 60;

    @Autowired
    private Briefings briefings;

    @Autowired
    private Trains trains;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    private final List<String> report = new ArrayList<>();
    private final List<Long> issued = new ArrayList<>();
    private LocalDate today;

    /** Name of the database in the report. */
    abstract String database();

    /** What stands before a query whose plan is asked for. */
    abstract void forbidScansWhereAnIndexWillDo();

    @BeforeAll
    void runASeason() {
        today = LocalDate.now(clock.withZone(zone));
        ServiceJob.run(Set.of("INSPECTOR", "MANAGER"), () -> {
            List<TrainSummary> pattern = trains.between(today, today);
            assertThat(pattern).hasSize(8);
            long begin = System.nanoTime();
            for (int day = 1; day <= DAYS; day++) {
                for (TrainSummary train : pattern) {
                    if (trains.find(train.code(), today.plusDays(day)).isEmpty()) {
                        trains.copy(train.id(), today.plusDays(day), new DayShift(zone));
                    }
                }
            }
            report.add(Timings.seconds("enter " + DAYS * pattern.size() + " trains", begin));
            begin = System.nanoTime();
            for (TrainSummary train : trains.between(today.plusDays(1), today.plusDays(DAYS_BRIEFED))) {
                long id = briefings.prepare(train.id());
                briefings.issue(id, "a season's volume, invented");
                issued.add(id);
            }
            report.add(Timings.seconds("prepare and issue " + issued.size() + " briefings", begin));
        });
    }

    @Test
    void whatIsAskedOfOneDayOrTrainIsFound() throws IOException {
        ServiceJob.run(Set.of("INSPECTOR", "MANAGER"), () -> {
            LocalDate day = today.plusDays(DAYS_BRIEFED / 2);
            assertThat(trains.between(day, day)).hasSize(8);
            assertThat(trains.between(today, today.plusDays(DAYS))).hasSize(8 * (DAYS + 1));
            report.add(Timings.median("trains of a day", TIMES, () -> trains.between(day, day)));
            long train = trains.between(day, day).get(0).id();
            assertThat(briefings.ofTrain(train)).hasSize(1);
            report.add(Timings.median("briefings of a train", TIMES, () -> briefings.ofTrain(train)));
            long id = issued.get(issued.size() / 2);
            assertThat(briefings.show(id).outOfDate()).isEmpty();
            report.add(Timings.median("a briefing with its check for changes", TIMES, () -> briefings.show(id)));
        });
        Path file = Path.of("target", "volume-" + database() + ".txt");
        Files.createDirectories(file.getParent());
        Files.write(file, report);
    }

    @Test
    void nothingAskedOfOneDayTrainOrPersonLooksAtAll() {
        forbidScansWhereAnIndexWillDo();
        assertThat(plan("select * from train where running_day between date '2030-01-01' and date '2030-01-02'"))
                .contains("train_on_day");
        assertThat(plan("select * from train where code = '1X01' and running_day = date '2030-01-01'"))
                .contains("train_code_on_day");
        assertThat(plan("select * from train_crew_slot where staff_number = 'D-01'"))
                .contains("train_crew_slot_person");
        assertThat(plan("select * from train_engine where engine_number = '401'"))
                .contains("train_engine_number");
        assertThat(plan("select * from briefing where train_id = 7 and briefing_state = 'ISSUED'"))
                .contains("briefing_of_train");
        assertThat(plan("select * from train_call where revision_id = 7"))
                .containsAnyOf("index", "train_call_revision", "primary_key")
                .doesNotContain("tablescan", "seq scan");
        assertThat(plan("select * from briefing_acknowledgement where briefing_id = 7"))
                .containsAnyOf("briefing_acknowledgement_person", "briefing_acknowledgement_briefing")
                .doesNotContain("tablescan", "seq scan");
    }

    private String plan(String sql) {
        return String.join("\n", jdbc.sql("explain " + sql).query(String.class).list())
                .toLowerCase(Locale.ROOT);
    }
}
