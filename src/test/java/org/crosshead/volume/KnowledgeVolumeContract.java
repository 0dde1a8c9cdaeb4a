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
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Decision;
import org.crosshead.competence.Decisions;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.Permits;
import org.crosshead.competence.StandingKeeper;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.refresh.RefreshPlans;
import org.crosshead.crew.Group;
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
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

/**
 * A depot of 2,000 people, 500 sections and 60 classes with ten years of entries beside the demonstration railway, all of it invented.
 * What is asked of one train, one person or what is shown must be found by an index; how long it takes is written down, not asserted.
 */
@Tag("slow")
@SpringBootTest
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class KnowledgeVolumeContract {

    private static final int PEOPLE = 2_000;
    private static final int TIMES = 40;
    private static final Set<String> MANAGER = Set.of("INSPECTOR", "MANAGER");

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Permits permits;

    @Autowired
    private Decisions decisions;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private Holdings holdings;

    @Autowired
    private StandingKeeper keeper;

    @Autowired
    private Trains trains;

    @Autowired
    private LearningPlans learning;

    @Autowired
    private RefreshPlans refresh;

    @Autowired
    private MockMvcTester mvc;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    private final List<String> report = new ArrayList<>();
    private LocalDate today;

    abstract String database();

    /** How many entries each person has. */
    abstract int entriesEach();

    /** A table of the numbers from 1 to so many, in a column n. */
    abstract String numbers(int most);

    /** What stands before a query whose plan is asked for. */
    abstract void forbidScansWhereAnIndexWillDo();

    @BeforeAll
    void runTenYears() {
        today = LocalDate.now(clock.withZone(zone));
        long begin = System.nanoTime();
        jdbc.sql("insert into person (staff_number, name, version) select 'V-' || n, 'Person ' || n, 1 from "
                        + numbers(PEOPLE))
                .update();
        jdbc.sql("insert into person_post (person_id, post, first_day, depot) select id, 'DRIVER', date '2015-01-01',"
                        + " 'Depot ' || mod(id, 20) from person where staff_number like 'V-%'")
                .update();
        jdbc.sql("insert into route_section (code, title, route_code, from_measure, to_measure, direction, band, hard,"
                        + " entered_by, approved_by, version) select 'VS-' || n, 'Section ' || n, 'V' || (n / 10), (n % 10) * 100,"
                        + " (n % 10) * 100 + 100, 'RISING', 'USUAL', 'invented', 'one', 'another', 1 from "
                        + numbers(500))
                .update();
        // Each person has to do with 22 sections and 3 classes; the demonstration's own sections are among them.
        for (int chunk = 0; chunk < 20; chunk++) {
            jdbc.sql(entries(chunk)).param("first", today.minusYears(10)).update();
        }
        long all = jdbc.sql("select count(*) from competence_event")
                .query(Long.class)
                .single();
        report.add(all + " entries, " + Timings.seconds("entered", begin));
        begin = System.nanoTime();
        keeper.deriveAll();
        report.add(Timings.seconds("what everybody holds derived anew", begin));
        analyse();
    }

    abstract void analyse();

    private String entries(int chunk) {
        int each = entriesEach();
        return "insert into competence_event (person_id, event_kind, subject_kind, subject_code, event_day, entered_at, entered_by,"
                + " other_id, note) select p.id, case when e.n <= 25 then 'TAKEN_OVER' else 'WORKED' end,"
                + " case when e.n % 25 < 3 then 'CLASS' else 'SECTION' end,"
                + " case when e.n % 25 < 3 then 'VC-' || ((p.id + e.n % 25) % 60)"
                + " when e.n % 25 < 6 and p.id % 10 = 0 then (array['ZU-DN', 'UG-DN', 'GC-DN'])[e.n % 25 - 2]"
                + " else 'VS-' || ((p.id * 7 + (e.n % 25) * 13) % 500) end,"
                + " cast(:first as date) + cast(floor((e.n * 3640.0) / " + each + ") as integer),"
                + " cast(:first as date), 'ledger', null, 'V' || e.n from person p, " + numbers(each)
                + " where p.staff_number like 'V-%' and p.id % 20 = " + chunk;
    }

    private void page(String address) {
        assertThat(mvc.get()
                        .uri(address)
                        .with(SecurityMockMvcRequestPostProcessors.csrf())
                        .with(SecurityMockMvcRequestPostProcessors.user("m").roles("MANAGER")))
                .hasStatusOk();
    }

    /** The demonstration's eight trains again on each day of the coming eight weeks. */
    private void runAgain() {
        List<TrainSummary> pattern = trains.between(today, today);
        for (int day = 1; day <= 56; day++) {
            for (TrainSummary train : pattern) {
                if (trains.find(train.code(), today.plusDays(day)).isEmpty()) {
                    trains.copy(train.id(), today.plusDays(day), new DayShift(zone));
                }
            }
        }
    }

    /** What looks at all trains of eight weeks. */
    private void comingWeeks() {
        ServiceJob.run(MANAGER, this::runAgain);
        report.add(trains.between(today, today.plusDays(56)).size() + " trains in eight weeks");
        report.add(Timings.median(
                "page of everybody of one of 20 depots", TIMES, () -> page("/knowledge?kind=SECTION&depot=Depot+7")));
        report.add(Timings.median("cover of the trains", 5, () -> page("/cover")));
        report.add(Timings.median("cover of the trains of a depot", 5, () -> page("/cover?depot=Quillhaven")));
        ServiceJob.run(MANAGER, () -> learning.open("D-02", new Subject(Subject.Kind.SECTION, "GC-DN"), null));
        long plan = learning.visible(true).stream()
                .filter(one -> one.plan().subject().code().equals("GC-DN"))
                .findFirst()
                .orElseThrow()
                .plan()
                .id();
        report.add(Timings.median("trains on which a learner could learn", 5, () -> page("/learning/" + plan)));
        long begin = System.nanoTime();
        ServiceJob.run(MANAGER, () -> refresh.begin(Group.EVERYBODY));
        while (refresh.standing().works()) {
            LockSupport.parkNanos(10_000_000);
        }
        assertThat(refresh.standing().phase()).isEqualTo(RefreshPlans.Phase.READY);
        RefreshPlans.Result result = Objects.requireNonNull(refresh.standing().result());
        report.add(Timings.seconds(
                "plan of the coming weeks read and solved: "
                        + result.problem().needs().size() + " needs, "
                        + result.problem().options().size() + " options, gap "
                        + Math.round(1000 * result.plan().gap()) / 10.0 + " %",
                begin));
    }

    @Test
    void whatIsAskedOfOneTrainOrPersonIsFound() throws IOException {
        ServiceJob.run(MANAGER, () -> {
            long train = trains.between(today, today).stream()
                    .filter(one -> one.code().equals("1X01"))
                    .findFirst()
                    .orElseThrow()
                    .id();
            report.add(Timings.median("one decision", TIMES, () -> permits.of(train)));
            report.add(Timings.median(
                    "one decision made and kept", TIMES, () -> decisions.decide(train, Decision.Occasion.BOOKING_ON)));
            long person = jdbc.sql("select id from person where staff_number = 'V-1000'")
                    .query(Long.class)
                    .single();
            report.add(Timings.median("what a person holds", TIMES, () -> holdings.of(person, today)));
            report.add(Timings.median("page of a person", TIMES, () -> page("/knowledge/V-1000")));
            report.add(Timings.median(
                    "page of everybody, 200 people by 100 sections", TIMES, () -> page("/knowledge?kind=SECTION")));
            report.add(Timings.median("start page", TIMES, () -> page("/")));
            long begin = System.nanoTime();
            page("/knowledge.csv");
            report.add(Timings.seconds("everything as CSV", begin));
            Subject subject = holdings.of(person, today).get(0).subject();
            int[] note = {0};
            report.add(Timings.median(
                    "one entry",
                    TIMES,
                    () -> knowledge.enter(new Knowledge.Entry(
                            person, Kind.RODE, subject, today.minusDays(note[0]++), null, null, "volume"))));
            assertThat(knowledge.events(person).get(0).kind()).isEqualTo(Kind.RODE);
        });
        comingWeeks();
        Path file = Path.of("target", "volume-knowledge-" + database() + ".txt");
        Files.createDirectories(file.getParent());
        Files.write(file, report);
    }

    /** For fifty people what is derived is what the events say. */
    @Test
    void whatIsDerivedIsWhatTheEventsSay() {
        List<Long> some = jdbc.sql("select id from person where staff_number like 'V-%00' or staff_number like 'V-%50'")
                .query(Long.class)
                .list();
        assertThat(some).hasSizeGreaterThan(30);
        for (long person : some) {
            for (Holding holding : holdings.of(person, today)) {
                Holding told = knowledge.holding(person, holding.subject(), today, clock.instant());
                assertThat(told)
                        .usingRecursiveComparison()
                        .ignoringFields("because")
                        .isEqualTo(holding);
            }
        }
    }

    /** No decision, page or entry looks at all entries. */
    @Test
    void nothingLooksAtAllEntries() {
        forbidScansWhereAnIndexWillDo();
        Map.of(
                        "select * from competence_event where person_id = 7 and subject_kind = 'SECTION' and subject_code = 'A'",
                                "competence_event_",
                        "select * from competence_event where person_id = 7 order by id desc limit 200",
                                "competence_event_",
                        "select * from competence_event where subject_kind = 'SECTION' and subject_code in ('A', 'B')",
                                "competence_event_of_subject",
                        "select * from competence_standing where person_id = 7",
                                "competence_standing_of_person|competence_standing_person_index",
                        "select * from competence_standing where subject_kind = 'SECTION' and subject_code in ('A', 'B')",
                                "primary_key|competence_standing_pkey",
                        "select * from permit_decision where train_id = 7 order by id desc limit 1",
                                "permit_decision_of_train|permit_decision_train_index")
                .forEach((sql, index) -> assertThat(plan(sql))
                        .containsAnyOf(index.split("\\|"))
                        .doesNotContain("tablescan", "seq scan"));
    }

    private String plan(String sql) {
        return String.join("\n", jdbc.sql("explain " + sql).query(String.class).list())
                .toLowerCase(Locale.ROOT);
    }
}
