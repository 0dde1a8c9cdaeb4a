package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.crosshead.Acting;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.learning.LearningBookings;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningPlans.Step;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.crew.People;
import org.crosshead.platform.ServiceJob;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** A driver of the docks learns the bank of the demonstration's main line on the excursion, under its driver. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:permits;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@Transactional
class LearningOnDemonstrationTests {

    private static final Subject BANK = new Subject(Subject.Kind.SECTION, "GC-DN");
    private static final Subject HARBOUR = new Subject(Subject.Kind.SECTION, "ZU-DN");

    @Autowired
    private LearningPlans plans;

    @Autowired
    private LearningTurns turns;

    @Autowired
    private LearningBookings bookings;

    @Autowired
    private ClassGuides guides;

    @Autowired
    private Permits permits;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private Trains trains;

    @Autowired
    private People people;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Autowired
    private MockMvc mvc;

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    private long person(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow().id();
    }

    private TrainSummary train(String code) {
        return trains.between(today(), today()).stream()
                .filter(train -> train.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static void office(Runnable work) {
        ServiceJob.run(Set.of("MANAGER", "INSPECTOR"), work);
    }

    private void as(String staffNumber, String post, Runnable work) {
        Acting.as(person(staffNumber), post, work);
    }

    private LearningPlans.Progress open(String staffNumber, Subject subject) {
        office(() -> plans.open(staffNumber, subject, today().plusMonths(3)));
        return plans.visible(true).stream()
                .filter(one -> one.plan().personId() == person(staffNumber)
                        && one.plan().subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private LearningTurn booked(LearningPlans.Progress plan, String code, String teacher) {
        office(() -> bookings.book(plan.plan().id(), train(code).id(), person(teacher)));
        return turns.visible(true).stream()
                .filter(turn -> turn.trainCode().equals(code)
                        && turn.learnerId() == plan.plan().personId())
                .findFirst()
                .orElseThrow();
    }

    private static LearningTurns.Telling told(boolean drove, boolean dark, Subject... subjects) {
        return new LearningTurns.Telling(Set.of(subjects), drove, dark, false, "well");
    }

    private void refused(String code, Runnable work) {
        assertThatThrownBy(work::run).isInstanceOf(ActRefusedException.class).hasMessage(code);
    }

    /** Booked by the office, told of by the teacher, counted by light and by who drove; then the learner says they are ready. */
    @Test
    void learnerIsBookedUnderADriverWhoHoldsItAndWhatTheyTellCounts() {
        LearningPlans.Progress plan = open("D-02", BANK);
        assertThat(plan.step()).isEqualTo(Step.TRIPS);
        assertThat(plan.learned().needs().trips()).isEqualTo(8);
        List<LearningBookings.Chance> chances = bookings.chances(plan.plan());
        assertThat(chances).isNotEmpty().allMatch(chance -> chance.subjects().contains(BANK));
        assertThat(chances)
                .extracting(chance -> chance.train().code())
                .contains("1A40", "0L36")
                .doesNotContain("2K07");
        LearningTurn turn = booked(plan, "1A40", "D-05");
        office(() -> refused("turn-already", () -> bookings.book(plan.plan().id(), turn.trainId(), person("D-05"))));
        as("D-04", "DRIVER", () -> refused("not-their-lesson", () -> turns.tell(turn.id(), told(true, false, BANK))));
        as("D-05", "DRIVER", () -> {
            refused("train-not-over", () -> turns.tell(turn.id(), told(true, false, HARBOUR)));
            refused("train-not-over", () -> turns.tell(turn.id(), told(true, false)));
            turns.tell(turn.id(), told(true, true, BANK));
            refused("turn-told", () -> turns.tell(turn.id(), told(true, true, BANK)));
        });
        Learned learned = plans.progress(plan.plan().id()).learned();
        assertThat(learned.had().trips()).isEqualTo(1);
        assertThat(learned.had().dark()).isEqualTo(1);
        assertThat(learned.had().driven()).isEqualTo(1);
        assertThat(learned.had().badWeather()).isZero();
        as("D-02", "DRIVER", () -> refused("trips-missing", () -> declare("D-02", BANK)));
        jdbc.sql("update route_section set trips_least = 1, dark_least = 1, driven_least = 1, weather_least = 0"
                        + " where code = 'GC-DN'")
                .update();
        assertThat(plans.progress(plan.plan().id()).step()).isEqualTo(Step.DECLARE);
        as("D-02", "DRIVER", () -> declare("D-02", BANK));
        assertThat(plans.progress(plan.plan().id()).step()).isEqualTo(Step.ASSESS);
    }

    private void declare(String staffNumber, Subject subject) {
        knowledge.enter(new Knowledge.Entry(person(staffNumber), Kind.DECLARED, subject, today(), null, null, ""));
    }

    @Test
    void planNeedsARoadThatIsOpenATeacherAndSomethingToLearn() {
        office(() -> {
            refused("not-open", () -> plans.open("D-02", new Subject(Subject.Kind.SECTION, "UH"), null));
            refused("held-already", () -> plans.open("D-01", BANK, null));
            refused("plan-past", () -> plans.open("D-02", BANK, today().minusDays(1)));
            refused("other-subject", () -> plans.open("D-02", Subject.LICENCE, null));
            refused("no-teacher", () -> plans.open("D-02", new Subject(Subject.Kind.CLASS, "T3"), null));
            plans.open("D-02", BANK, null);
            refused("plan-already", () -> plans.open("D-02", BANK, null));
        });
    }

    /** A train that does not run over it, one that the learner works at that time, one with a learner aboard, one not told by its teacher. */
    @Test
    void turnIsBookedWhereItTeachesAndHoursAllow() {
        LearningPlans.Progress plan = open("D-02", BANK);
        LearningPlans.Progress other = open("F-03", BANK);
        office(() -> {
            refused(
                    "plan-not-on-train",
                    () -> bookings.book(plan.plan().id(), train("2K07").id(), person("D-02")));
            refused(
                    "plan-not-on-train",
                    () -> bookings.book(plan.plan().id(), train("1A40").id(), person("D-01")));
            refused(
                    "turn-hours",
                    () -> bookings.book(other.plan().id(), train("1A40").id(), person("D-05")));
        });
        LearningTurn turn = booked(plan, "1A40", "D-05");
        assertThat(bookings.chances(other.plan()))
                .as("that of the coming days is free")
                .allMatch(chance -> chance.train().day().isAfter(today()));
        office(() -> {
            turns.notRun(turn.id());
            bookings.book(plan.plan().id(), turn.trainId(), person("D-05"));
            turns.notRun(turns.visible(true).stream()
                    .filter(one -> one.learnerId() == person("D-02"))
                    .findFirst()
                    .orElseThrow()
                    .id());
            plans.close(plan.plan().id());
            refused("plan-closed", () -> bookings.book(plan.plan().id(), turn.trainId(), person("D-05")));
            refused("plan-closed", () -> plans.close(plan.plan().id()));
        });
        assertThat(turns.visible(true)).noneMatch(one -> one.id() == turn.id());
    }

    /** From 6:50 with the docks train to 12:12 with the excursion is one turn of 5 h 22: over a most of 5 h it is barred, without it not. */
    @Test
    void learningTurnCountsInTheHoursOfADecision() {
        long docks = train("2K07").id();
        jdbc.sql("update knowledge_policy set turn_hours_most = 5").update();
        office(() -> assertThat(bars("D-02", docks)).isEmpty());
        jdbc.sql("update knowledge_policy set turn_hours_most = 12").update();
        LearningTurn turn = booked(open("D-02", BANK), "1A40", "D-05");
        jdbc.sql("update knowledge_policy set turn_hours_most = 5").update();
        office(() -> assertThat(permits.of(docks).bars())
                .extracting(Permit.Bar::code)
                .isNotEmpty());
        office(() -> turns.notRun(turn.id()));
        office(() -> assertThat(bars("D-02", docks)).isEmpty());
    }

    private List<Permit.Bar> bars(String staffNumber, long trainId) {
        return permits.of(trainId).bars().stream()
                .filter(bar -> bar.personId() == person(staffNumber))
                .toList();
    }

    @Test
    void pagesShowPlansTurnsAndWhatComesNext() throws Exception {
        LearningPlans.Progress plan = open("D-02", BANK);
        booked(plan, "1A40", "D-05");
        mvc.perform(get("/learning").with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("0 of 8 trips")))
                .andExpect(content().string(containsString("trips under a teacher")))
                .andExpect(content().string(containsString("Bettine Quarrel (D-02) under Ezra Mistleton (D-05)")));
        mvc.perform(get("/learning/{id}", plan.plan().id())
                        .with(csrf())
                        .with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Trains to learn on")));
        mvc.perform(get("/learning").with(csrf()).with(user("d").roles("DRIVER")))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Bettine Quarrel"))));
        mvc.perform(get("/learning/{id}", plan.plan().id()).with(user("d").roles("DRIVER")))
                .andExpect(status().isForbidden());
        mvc.perform(post("/learning")
                        .param("person", "D-02")
                        .param("subject", "SECTION:GC-DN")
                        .with(user("m").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.plan-already"));
        mvc.perform(post("/learning")
                        .param("person", "D-02")
                        .param("subject", "SECTION:GC-DN")
                        .with(user("d").roles("DRIVER"))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }

    private ClassGuides.Draft guide(String like, String words, @Nullable LocalDate briefedFrom) {
        return new ClassGuides.Draft(
                "T3", like, words, "D-04", org.crosshead.routeknowledge.LearningNeeds.NONE, briefedFrom);
    }

    @Test
    void guidesComeByFileToo() {
        assertThat(guides.find("M2")).hasValueSatisfying(guide -> {
            assertThat(guide.similarTo()).isEqualTo("E4");
            assertThat(guide.teacherId()).isEqualTo(person("I-01"));
            assertThat(guide.needs().trips()).isEqualTo(4);
            assertThat(guide.needs().refresher()).isEqualTo(1);
            assertThat(guide.briefedFrom()).isNull();
            assertThat(guide.approvedBy()).isNotNull();
        });
        assertThat(guides.find("A8"))
                .hasValueSatisfying(guide -> assertThat(guide.approvedBy())
                        .as("as a section by file, to be approved by a second person")
                        .isNull());
    }

    /** Two who enter a guide at once: one wins or both do one after the other; whoever loses is told so. */
    @Test
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    void whoEntersAGuideAtTheSameMomentIsTold() throws Exception {
        ClassGuide before = guides.find("A8").orElseThrow();
        ClassGuides.Draft draft = new ClassGuides.Draft(
                "A8", before.similarTo(), before.differences(), "D-02", before.needs(), before.briefedFrom());
        ExecutorService two = Executors.newFixedThreadPool(2);
        int entered = 0;
        try {
            for (int round = 0; round < 10; round++) {
                CountDownLatch begin = new CountDownLatch(1);
                Callable<String> enter = () -> {
                    begin.await();
                    try {
                        office(() -> guides.enter(draft));
                        return "entered";
                    } catch (ActRefusedException ex) {
                        return ex.code();
                    }
                };
                List<Future<String>> both = List.of(two.submit(enter), two.submit(enter));
                begin.countDown();
                List<String> said = List.of(both.get(0).get(), both.get(1).get());
                assertThat(said).contains("entered").isSubsetOf("entered", "section-changed");
                entered += Collections.frequency(said, "entered");
            }
        } finally {
            two.shutdown();
        }
        assertThat(guides.find("A8").orElseThrow().version()).isEqualTo(before.version() + entered);
    }

    /** A class that visits: everybody booked on it is briefed on it first (practice of heritage railways, as reported). */
    @Test
    void visitingClassAsksForABriefingOfEverybodyOnIt() throws Exception {
        long branch = train("2B51").id();
        office(() -> assertThat(permits.of(branch).answer()).isEqualTo(Permit.Answer.ALLOWED));
        office(() -> {
            refused("guide-similar", () -> guides.enter(guide("T3", "like itself", null)));
            refused("guide-class", () -> guides.enter(guide("X9", "like nothing", null)));
            refused("guide-words", () -> guides.enter(guide("M2", " ", null)));
            guides.enter(guide("M2", "Bunker first: sight on the left only.", today()));
        });
        office(() -> {
            Permit told = permits.of(branch);
            assertThat(told.answer()).as("nobody has been briefed on it").isEqualTo(Permit.Answer.REFERRED);
            assertThat(told.lines())
                    .filteredOn(line -> line.answer() != Permit.Answer.ALLOWED)
                    .hasSize(2)
                    .allMatch(line -> line.holding().state() == Holding.State.LEARN_ANEW);
        });
        Subject tank = new Subject(Subject.Kind.CLASS, "T3");
        for (String staffNumber : List.of("D-04", "F-04")) {
            office(() -> knowledge.enter(new Knowledge.Entry(
                    person(staffNumber), Kind.BRIEFED, tank, today(), person("I-01"), null, "by the guide")));
        }
        office(() -> assertThat(permits.of(branch).answer()).isEqualTo(Permit.Answer.ALLOWED));
        office(() -> refused(
                "other-subject",
                () -> knowledge.enter(
                        new Knowledge.Entry(person("D-04"), Kind.BRIEFED, BANK, today(), null, null, ""))));
        as("D-05", "DRIVER", () -> refused("not-open", () -> declare("D-05", tank)));
        int version = guides.find("T3").orElseThrow().version();
        mvc.perform(get("/class-guides").with(csrf()).with(user("i").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Bunker first: sight on the left only.")))
                .andExpect(content().string(containsString("Like M2, but:")));
        mvc.perform(post("/class-guides/T3/approve")
                        .param("version", String.valueOf(version))
                        .with(user("a").roles("ASSESSOR"))
                        .with(csrf()))
                .andExpect(flash().attribute("done", "competence.guide.approved-done"));
        as("D-05", "DRIVER", () -> declare("D-05", tank));
    }
}
