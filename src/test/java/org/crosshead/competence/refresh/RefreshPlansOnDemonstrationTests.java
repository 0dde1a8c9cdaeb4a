package org.crosshead.competence.refresh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.crosshead.Acting;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningBookings;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.platform.ServiceJob;
import org.crosshead.working.DayShift;
import org.crosshead.working.Train;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;

/** The branch train runs again in a week; one other driver's knowledge of the branch lapses in three. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:refresh;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@DirtiesContext
class RefreshPlansOnDemonstrationTests {

    private static final Set<String> MANAGER = Set.of("MANAGER", "INSPECTOR");

    @Autowired
    private RefreshPlans plans;

    @Autowired
    private RefreshProblems problems;

    @Autowired
    private LearningPlans learning;

    @Autowired
    private LearningTurns turns;

    @Autowired
    private LearningBookings bookings;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private ProposalStore store;

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

    private LocalDate today;
    private long person;
    private Subject road;

    @BeforeEach
    void runAgainInAWeek() {
        today = LocalDate.now(clock.withZone(zone));
        person = people.byStaffNumber("D-02").orElseThrow().id();
        road = new Subject(Subject.Kind.SECTION, "MQ-DN");
        TrainSummary night = trains.between(today, today).stream()
                .filter(train -> train.code().equals("6U20"))
                .findFirst()
                .orElseThrow();
        boolean there = !trains.between(today.plusDays(7), today.plusDays(7)).isEmpty();
        if (!there) {
            ServiceJob.run(MANAGER, () -> {
                trains.copy(night.id(), today.plusDays(7), new DayShift(zone));
                jdbc.sql("delete from competence_event where person_id = ? and subject_code = ?")
                        .params(person, road.code())
                        .update();
                knowledge.enter(new Knowledge.Entry(
                        person,
                        Kind.TAKEN_OVER,
                        road,
                        today.plusDays(21).minusMonths(12),
                        null,
                        null,
                        "ledger, page 7"));
            });
        }
    }

    private List<Train> coming() {
        return trains.running(today.plusDays(1), today.plusDays(56));
    }

    @Test
    void whoseKnowledgeLapsesIsPutOnTheTrainWhoseDriverHoldsIt() {
        RefreshProblem problem = problems.of(today, Group.EVERYBODY, coming()).problem();
        int need = problem.needs().stream()
                .filter(one -> one.personId() == person && one.subject().equals(road))
                .map(problem.needs()::indexOf)
                .findFirst()
                .orElseThrow();
        assertThat(problem.needs().get(need).last()).isEqualTo(today.plusDays(21));
        List<RefreshProblem.Option> options = problem.options().stream()
                .filter(option -> option.needs().contains(need))
                .toList();
        assertThat(options).hasSize(1);
        assertThat(options.get(0).teacherId())
                .isEqualTo(people.byStaffNumber("D-03").orElseThrow().id());
        RefreshPlan plan = RefreshSolver.plan(problem, 10);
        assertThat(plan.missed()).doesNotContain(need);
    }

    @Test
    void planIsProposedAndTheirOwnAnswerCounts() throws InterruptedException {
        assertThatThrownBy(() -> plans.begin(Group.EVERYBODY))
                .isInstanceOf(org.springframework.security.core.AuthenticationException.class);
        ServiceJob.run(MANAGER, () -> plans.begin(Group.EVERYBODY));
        for (int i = 0; i < 400 && plans.standing().works(); i++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
        assertThat(plans.standing().phase()).isEqualTo(RefreshPlans.Phase.READY);
        ServiceJob.run(MANAGER, () -> {
            assertThat(plans.propose()).isPositive();
            assertThat(plans.propose()).as("proposed once").isZero();
        });
        Proposal proposal = plans.proposals().stream()
                .filter(one -> one.personId() == person && one.subjects().contains("MQ-DN"))
                .findFirst()
                .orElseThrow();
        assertThat(proposal.state()).isEqualTo(Proposal.State.PROPOSED);
        as(
                people.byStaffNumber("D-04").orElseThrow().id(),
                () -> assertThatThrownBy(() -> plans.answer(proposal.id(), true))
                        .isInstanceOf(ActRefusedException.class));
        as(person, () -> {
            plans.answer(proposal.id(), true);
            assertThat(plans.own()).extracting(Proposal::state).contains(Proposal.State.ACCEPTED);
        });
    }

    /** Who learns the road of the train that runs again is put on it too, and booked once they take it. */
    @Test
    void learnerIsPutOnATrainAndBookedWhenTheyTakeIt() {
        Subject docks = new Subject(Subject.Kind.SECTION, "MQ-DN");
        long learner = people.byStaffNumber("F-02").orElseThrow().id();
        ServiceJob.run(MANAGER, () -> learning.open("F-02", docks, null));
        RefreshProblem problem = problems.of(today, Group.EVERYBODY, coming()).problem();
        List<RefreshProblem.Need> needs = problem.needs().stream()
                .filter(need -> need.personId() == learner)
                .toList();
        assertThat(needs)
                .extracting(RefreshProblem.Need::aim, RefreshProblem.Need::count)
                .containsExactlyInAnyOrder(tuple(Aim.TRIPS, 6), tuple(Aim.DARK_TRIPS, 1));
        RefreshProblem.Option option = problem.options().stream()
                .filter(one -> one.personId() == learner)
                .findFirst()
                .orElseThrow();
        assertThat(option.needs()).as("a trip, and in the dark").hasSize(2);
        bookings.takeUp(option.trainId(), learner, option.teacherId());
        assertThat(turns.visible(true)).anyMatch(turn -> turn.learnerId() == learner);
        assertThat(problems.of(today, Group.EVERYBODY, coming()).problem().needs())
                .filteredOn(need -> need.personId() == learner)
                .extracting(RefreshProblem.Need::aim, RefreshProblem.Need::count)
                .containsExactly(tuple(Aim.TRIPS, 5));
    }

    /** Fewer hold the road than the policy's least: who lapsed on it begins anew, and gets a plan where it is proposed. */
    @Test
    void whoLapsedBeginsAnewWithWhatTooFewHold() {
        long lapsed = people.byStaffNumber("D-04").orElseThrow().id();
        Subject docks = new Subject(Subject.Kind.SECTION, "MQ-DN");
        ServiceJob.run(
                MANAGER,
                () -> knowledge.enteredAnew(new Knowledge.Entry(
                        lapsed, Kind.TAKEN_OVER, docks, today.minusMonths(30), null, null, "ledger, page 9")));
        assertThat(knowledge.holding(lapsed, docks, today, clock.instant()).state())
                .isEqualTo(Holding.State.LAPSED);
        assertThat(covers(lapsed)).as("enough hold it").isEmpty();
        jdbc.sql("update knowledge_policy set holders_least = 9").update();
        assertThat(covers(lapsed)).extracting(RefreshProblem.Need::count).containsExactly(6);
        ServiceJob.run(MANAGER, () -> learning.begin(lapsed, docks));
        assertThat(covers(lapsed)).as("a plan asks for the trips now").isEmpty();
        assertThat(problems.of(today, Group.EVERYBODY, coming()).problem().needs())
                .anyMatch(need -> need.personId() == lapsed && need.aim() == Aim.TRIPS);
        jdbc.sql("update knowledge_policy set holders_least = 2").update();
    }

    /** Nobody begins before they have taken a turn; who leaves it is not asked again, and an answer is given once. */
    @Test
    void planOfLearningBeginsWhenATurnIsTakenAndNotWhenItIsProposed() {
        long other = people.byStaffNumber("F-03").orElseThrow().id();
        Subject bank = new Subject(Subject.Kind.SECTION, "CM-DN");
        LocalDate day = today.plusDays(12);
        long train = trains.find("1A40", day).orElseThrow().id();
        long teacher = people.byStaffNumber("D-05").orElseThrow().id();
        for (long who : List.of(other, person)) {
            store.insert(
                    new RefreshProblem.Option(who, train, day, clock.instant(), clock.instant(), teacher, List.of()),
                    "CM-DN",
                    List.of(bank),
                    clock.instant(),
                    "a test");
        }
        assertThat(learns(other, bank)).isFalse();
        Proposal proposal = of(other);
        assertThat(proposal.begins()).containsExactly(bank);
        as(other, () -> plans.answer(proposal.id(), true));
        assertThat(learns(other, bank)).as("taken").isTrue();
        as(
                other,
                () -> assertThatThrownBy(() -> plans.answer(proposal.id(), false))
                        .isInstanceOf(ActRefusedException.class));
        jdbc.sql("update knowledge_policy set holders_least = 12").update();
        assertThat(asked(bank)).as("too few hold it").contains(person);
        Proposal left = of(person);
        as(person, () -> plans.answer(left.id(), false));
        assertThat(asked(bank)).isNotEmpty().doesNotContain(person);
        jdbc.sql("update knowledge_policy set holders_least = 2").update();
        assertThat(learns(person, bank)).as("left").isFalse();
    }

    private List<Long> asked(Subject subject) {
        return problems.of(today, Group.EVERYBODY, coming()).problem().needs().stream()
                .filter(need -> need.aim() == Aim.COVER && need.subject().equals(subject))
                .map(RefreshProblem.Need::personId)
                .toList();
    }

    private Proposal of(long personId) {
        return store.of(personId).stream()
                .filter(one -> one.subjects().equals("CM-DN"))
                .findFirst()
                .orElseThrow();
    }

    private boolean learns(long personId, Subject subject) {
        return learning.visible(true).stream()
                .anyMatch(one -> one.plan().personId() == personId
                        && one.plan().subject().equals(subject));
    }

    private List<RefreshProblem.Need> covers(long personId) {
        return problems.of(today, Group.EVERYBODY, coming()).problem().needs().stream()
                .filter(need -> need.personId() == personId && need.aim() == Aim.COVER)
                .filter(need -> need.subject().equals(road))
                .toList();
    }

    private static void as(long personId, Runnable work) {
        Acting.as(personId, "DRIVER", work);
    }
}
