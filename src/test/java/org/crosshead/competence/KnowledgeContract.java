package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.crew.People;
import org.crosshead.crew.PeopleForTests;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.route.Direction;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.Closure;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionDraft;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.crosshead.routeknowledge.SectionsForTests;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What the services of knowledge promise on every database. People and the line are invented. */
abstract class KnowledgeContract {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Subject ROAD = new Subject(Subject.Kind.SECTION, "HV3-DOWN");

    private final Clock clock = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
    private final List<String> journal = new ArrayList<>();
    private final Journal journaled = (kind, subjectType, id, summary) -> journal.add(kind + " " + summary);
    private CurrentActor.Actor acting = new CurrentActor.Actor("crosshead");
    private RouteSections sections;
    private Knowledge knowledge;
    private Holdings holdings;
    private TransactionTemplate transaction;
    private long ina;
    private long ray;
    private long hilde;
    private People people;
    private KnowledgePolicies policies;
    private JdbcClient jdbc;
    private long finch;

    /** A database with all tables and nothing in them, anew at each call. */
    abstract DataSource dataSource();

    @BeforeEach
    void migrate() {
        DataSource database = dataSource();
        jdbc = JdbcClient.create(database);
        CurrentActor actor = () -> acting;
        people = PeopleForTests.on(jdbc, journaled, actor);
        ina = person(people, "D-1", "Ina Broadbent", Post.DRIVER);
        ray = person(people, "D-2", "Ray Dunmore", Post.DRIVER);
        hilde = person(people, "M-1", "Hilde Marsh", Post.MANAGER);
        finch = person(people, "A-1", "Lorne Finch", Post.ASSESSOR);
        sections = SectionsForTests.on(jdbc, routes(), people, journaled, actor, clock);
        policies = new KnowledgePolicies(jdbc);
        LaidDown laidDown = new LaidDown(sections, new ClassGuideStore(jdbc));
        holdings = new Holdings(new EventStore(jdbc), new StandingStore(jdbc), policies, laidDown);
        knowledge = new Knowledge(
                new EventStore(jdbc),
                new StandingStore(jdbc),
                holdings,
                policies,
                laidDown,
                people,
                journaled,
                actor,
                clock,
                ZoneOffset.UTC,
                event -> {});
        transaction = new TransactionTemplate(new JdbcTransactionManager(database));
    }

    private static Routes routes() {
        RouteDraft draft = mock(RouteDraft.class);
        when(draft.fromMeasure()).thenReturn(0.0);
        when(draft.toMeasure()).thenReturn(1_272.0);
        RouteRevision revision = mock(RouteRevision.class);
        when(revision.content()).thenReturn(draft);
        Routes routes = mock(Routes.class);
        when(routes.current(anyString())).thenReturn(Optional.empty());
        when(routes.current("HV")).thenReturn(Optional.of(revision));
        return routes;
    }

    private static long person(People people, String number, String name, Post post) {
        return people.enter(new PersonDraft(
                        number, name, List.of(new PersonDraft.PostHeld(post, LocalDate.of(2020, 1, 1), null))))
                .id();
    }

    private void policy(String figures) {
        jdbc.sql("update knowledge_policy set " + figures).update();
    }

    private static SectionDraft draft() {
        return new SectionDraft(
                "HV3-DOWN",
                "Corrie Summit to Aldbeck",
                "HV",
                768,
                1_272,
                Direction.RISING,
                Band.USUAL,
                "Tunnel with wet rail",
                "A-1");
    }

    private void approved() {
        sections.enter(draft());
        sections.approve("HV3-DOWN", sections.find("HV3-DOWN").orElseThrow().version());
    }

    private void actAs(long personId, String... posts) {
        acting = new CurrentActor.Actor(1L, personId, "person " + personId, Set.of(posts));
    }

    private void actAsService() {
        acting = new CurrentActor.Actor("crosshead");
    }

    private long enter(long personId, Kind kind, LocalDate day, String note) {
        return knowledge.enter(new Knowledge.Entry(personId, kind, ROAD, day, null, null, note));
    }

    private State state(LocalDate day) {
        return knowledge
                .holding(ina, ROAD, day, Instant.parse("2030-01-01T00:00:00Z"))
                .state();
    }

    @Test
    void sectionIsApprovedByASecondPersonAndAnewWhenItIsChanged() {
        actAs(hilde, "INSPECTOR", "MANAGER");
        sections.enter(draft());
        int version = sections.find("HV3-DOWN").orElseThrow().version();
        assertThatThrownBy(() -> sections.approve("HV3-DOWN", version))
                .isInstanceOf(SectionRefusedException.class)
                .hasMessage("section-own");
        actAs(finch, "ASSESSOR");
        sections.approve("HV3-DOWN", version);
        assertThat(sections.find("HV3-DOWN").orElseThrow().isOpen(TODAY)).isTrue();
        assertThatThrownBy(() -> sections.approve("HV3-DOWN", version)).hasMessage("section-changed");
        actAs(hilde, "INSPECTOR");
        sections.enter(draft());
        assertThat(sections.find("HV3-DOWN").orElseThrow().isOpen(TODAY)).isFalse();
    }

    @Test
    void sectionThatCannotBeIsRefused() {
        SectionDraft good = draft();
        for (SectionDraft wrong : List.of(
                new SectionDraft("X", "t", "NO", 0, 1, Direction.RISING, Band.EASY, "h", ""),
                new SectionDraft("X", "t", "HV", 5, 5, Direction.RISING, Band.EASY, "h", ""),
                new SectionDraft("X", "t", "HV", 5, 5_000, Direction.RISING, Band.EASY, "h", ""),
                new SectionDraft("X", "t", "HV", Double.NaN, 5, Direction.RISING, Band.EASY, "h", ""),
                new SectionDraft("X", "t", "HV", 0, 5, Direction.RISING, Band.EASY, " ", ""),
                new SectionDraft("X", "t", "HV", 0, 5, Direction.RISING, Band.EASY, "h", "nobody"))) {
            assertThatThrownBy(() -> sections.enter(wrong)).isInstanceOf(SectionRefusedException.class);
        }
        assertThat(sections.enter(good).teacherId()).isEqualTo(finch);
        assertThat(RouteSection.over(sections.all(), "HV", "Down", Direction.RISING, 700, 800))
                .hasSize(1);
        assertThat(RouteSection.over(sections.all(), "HV", "Down", Direction.RISING, 700, 768))
                .isEmpty();
        assertThat(RouteSection.over(sections.all(), "HV", "Down", Direction.FALLING, 800, 700))
                .isEmpty();
    }

    /** From the first declaration to the authorisation, by three people; the first assessor of a new road holds it by no other. */
    @Test
    void threeActsByThreePeopleMakeItHeld() {
        approved();
        actAs(ina, "DRIVER");
        enter(ina, Kind.DECLARED, TODAY, "");
        assertThatThrownBy(() -> enter(ina, Kind.DECLARED, TODAY, "")).hasMessage("entered-already");
        actAs(finch, "ASSESSOR");
        assertThatThrownBy(() -> enter(ina, Kind.QUESTIONS_PASSED, TODAY, "")).hasMessage("letter-missing");
        recognised(TODAY);
        actAs(finch, "ASSESSOR");
        enter(ina, Kind.QUESTIONS_PASSED, TODAY, "");
        enter(ina, Kind.PRACTICE_PASSED, TODAY, "");
        assertThat(state(TODAY)).isEqualTo(State.ASSESSED);
        assertThatThrownBy(() -> enter(ina, Kind.AUTHORISED, TODAY, "")).hasMessage("manager-only");
        actAs(hilde, "MANAGER");
        enter(ina, Kind.AUTHORISED, TODAY, "");
        assertThat(state(TODAY)).isEqualTo(State.HELD);
        assertThat(state(TODAY.plusMonths(12))).isEqualTo(State.DUE);
        assertThat(state(TODAY.plusMonths(12).plusDays(1))).isEqualTo(State.LAPSED);
        assertThat(journal).contains("competence.authorised HV3-DOWN");
        assertThat(holdings.holders(ROAD, TODAY)).containsOnlyKeys(ina, finch);
        assertThat(holdings.everybody(List.of(ROAD), List.of(TODAY)).get(0).get(ROAD))
                .containsOnlyKeys(ina, finch);
    }

    private void recognised(LocalDate until) {
        actAs(hilde, "MANAGER");
        knowledge.enter(new Knowledge.Entry(
                finch, Kind.RECOGNISED, ROAD, TODAY.minusDays(5), null, null, until, null, "letter of 20 November"));
    }

    /** A letter's last day is its last good one; it makes nobody hold anything. */
    @Test
    void letterIsGoodUntilItsLastDay() {
        approved();
        recognised(TODAY);
        assertThat(knowledge.isRecognised(finch, ROAD, TODAY)).isTrue();
        assertThat(knowledge.isRecognised(finch, ROAD, TODAY.plusDays(1))).isFalse();
        assertThat(knowledge.isRecognised(finch, ROAD, TODAY.minusDays(6))).isFalse();
        assertThat(knowledge.holding(finch, ROAD, TODAY, clock.instant()).state())
                .isEqualTo(State.NOT_HELD);
        assertThatThrownBy(() -> knowledge.enter(new Knowledge.Entry(
                        finch, Kind.RECOGNISED, ROAD, TODAY, null, null, TODAY.plusMonths(25), null, "letter")))
                .hasMessage("last-day-too-late");
        assertThatThrownBy(() -> enter(finch, Kind.RECOGNISED, TODAY, "letter of today"))
                .hasMessage("last-day");
    }

    @Test
    void roadNotApprovedIsNotSigned() {
        sections.enter(draft());
        actAs(ina, "DRIVER");
        assertThatThrownBy(() -> enter(ina, Kind.DECLARED, TODAY, "")).hasMessage("not-open");
    }

    @Test
    void entryIsStruckOnceAndTheCorrectionNever() {
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(20), "ledger, page 7");
        long worked = enter(ina, Kind.WORKED, TODAY.minusMonths(11), "2E07");
        assertThat(state(TODAY)).isIn(State.HELD, State.DUE);
        actAs(hilde, "MANAGER");
        long struck =
                knowledge.enter(new Knowledge.Entry(ina, Kind.STRUCK, ROAD, TODAY, null, worked, "had not driven it"));
        assertThat(state(TODAY)).isEqualTo(State.LAPSED);
        for (long again : new long[] {worked, struck, 99_999}) {
            assertThatThrownBy(() -> knowledge.enter(
                            new Knowledge.Entry(ina, Kind.STRUCK, ROAD, TODAY, null, again, "once more, please")))
                    .hasMessage("nothing-to-strike");
        }
        assertThat(knowledge.events(ina)).hasSize(3);
    }

    /** What is derived at each entry is what is derived from all events anew, and what they say themselves. */
    @Test
    void derivedAnewItIsTheSame() {
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(20), "ledger, page 7");
        long worked = enter(ina, Kind.WORKED, TODAY.minusMonths(11), "2E07");
        enter(ina, Kind.DAY_ONLY, TODAY.minusMonths(2), "eyesight at night");
        knowledge.enter(new Knowledge.Entry(
                ina,
                Kind.FIT,
                Subject.MEDICAL,
                TODAY.minusMonths(1),
                null,
                null,
                TODAY.plusMonths(30),
                LocalDate.of(1985, 4, 2),
                ""));
        for (int step = 0; step < 2; step++) {
            List<Holding> at = holdings.of(ina, TODAY);
            assertThat(at).hasSize(2);
            transaction.executeWithoutResult(status -> knowledge.derive(ina));
            assertThat(holdings.of(ina, TODAY)).isEqualTo(at);
            for (Holding holding : at) {
                Holding told = knowledge.holding(ina, holding.subject(), TODAY, clock.instant());
                assertThat(told.state()).isEqualTo(holding.state());
                assertThat(told.lastGoodDay()).isEqualTo(holding.lastGoodDay());
                assertThat(told.limits()).isEqualTo(holding.limits());
            }
            actAs(hilde, "MANAGER");
            if (step == 0) {
                knowledge.enter(new Knowledge.Entry(ina, Kind.STRUCK, ROAD, TODAY, null, worked, "had not driven it"));
            }
        }
        assertThat(holdings.holders(ROAD, TODAY).get(ina))
                .extracting(Holding::state)
                .isEqualTo(State.LAPSED);
        assertThat(holdings.holders(ROAD, TODAY.minusMonths(12)).get(ina))
                .as("a day before the last entry is read from the events")
                .extracting(Holding::state)
                .isEqualTo(State.HELD);
        assertThat(holdings.everybodyAsKnown(List.of(ROAD), TODAY.minusMonths(12), clock.instant())
                        .get(ROAD))
                .containsOnlyKeys(ina);
    }

    @Test
    void closedRoadCountsForNobody() {
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(2), "ledger, page 7");
        sections.close("HV3-DOWN", TODAY);
        assertThat(state(TODAY.minusDays(1))).isEqualTo(State.HELD);
        assertThat(state(TODAY)).isEqualTo(State.CLOSED);
        sections.reopen("HV3-DOWN", new Closure(TODAY, TODAY, false, null, null, "track relaid"));
        assertThat(state(TODAY)).isEqualTo(State.HELD);
    }

    private SectionReopening reopening() {
        return new SectionReopening(sections, knowledge, holdings, policies, people, clock, ZoneOffset.UTC);
    }

    private static SectionReopening.Opening opening(@Nullable LocalDate provedOn, String prover, String changes) {
        return new SectionReopening.Opening(TODAY, provedOn, prover, changes);
    }

    /** Synopsis of a network standard on proving trains, read: closed lines need them and briefings before normal working. */
    @Test
    void closedRoadIsProvedByARunBeforeItOpens() {
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(2), "ledger, page 7");
        sections.close("HV3-DOWN", TODAY.minusDays(20));
        assertThatThrownBy(() -> sections.close("HV3-DOWN", TODAY)).hasMessage("section-closed-already");
        SectionReopening reopening = reopening();
        for (SectionReopening.Opening wrong : List.of(
                opening(null, "", "track relaid"),
                opening(TODAY.minusDays(21), "D-1", "track relaid"),
                opening(TODAY.plusDays(1), "D-1", "track relaid"),
                opening(TODAY.minusDays(1), "M-1", "track relaid"))) {
            assertThatThrownBy(() -> reopening.open("HV3-DOWN", wrong)).hasMessage("proving-run");
        }
        assertThatThrownBy(() -> reopening.open("HV3-DOWN", opening(TODAY.minusDays(1), "D-1", " ")))
                .hasMessage("reopen-changes");
        assertThat(reopening.open("HV3-DOWN", opening(TODAY.minusDays(1), "D-1", "track relaid")))
                .isEqualTo(new SectionReopening.Opened(false, 1));
        assertThat(state(TODAY)).isEqualTo(State.HELD);
        assertThat(state(TODAY.minusDays(20))).as("as it was then").isEqualTo(State.CLOSED);
        assertThatThrownBy(() -> reopening.open("HV3-DOWN", opening(TODAY, "D-1", "track relaid")))
                .hasMessage("section-not-closed");
    }

    /** A road closed for longer than the policy's months counts again for who is taught anew; who proved it has been over it. */
    @Test
    void afterALongClosureItIsTaughtAnew() {
        policy("hard_months = 24, usual_months = 24, easy_months = 24");
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(14), "ledger, page 7");
        knowledge.enter(
                new Knowledge.Entry(ray, Kind.TAKEN_OVER, ROAD, TODAY.minusMonths(14), null, null, "ledger, page 8"));
        sections.close("HV3-DOWN", TODAY.minusMonths(12).minusDays(1));
        assertThat(reopening().open("HV3-DOWN", opening(TODAY.minusDays(1), "D-2", "new bridge")))
                .isEqualTo(new SectionReopening.Opened(true, 1));
        assertThat(state(TODAY)).isEqualTo(State.LEARN_ANEW);
        assertThat(knowledge.holding(ray, ROAD, TODAY, clock.instant()).counts())
                .isTrue();
        knowledge.enter(new Knowledge.Entry(ina, Kind.LEARNED, ROAD, TODAY, ray, null, "2E07"));
        assertThat(state(TODAY)).isEqualTo(State.HELD);
        assertThat(holdings.of(ina, TODAY).get(0).state()).isEqualTo(State.HELD);
    }

    /** Nobody held it any more when it opened: opening it certifies nobody. */
    @Test
    void roadClosedForLongerThanItLastsIsHeldByNobodyWhenItOpens() {
        approved();
        enter(ina, Kind.TAKEN_OVER, TODAY.minusMonths(14), "ledger, page 7");
        sections.close("HV3-DOWN", TODAY.minusMonths(13));
        assertThat(reopening()
                        .open("HV3-DOWN", opening(TODAY, "D-1", "new bridge"))
                        .holders())
                .isZero();
        assertThat(state(TODAY)).isEqualTo(State.LAPSED);
    }

    /** Two people sign at once: one wins, the other is told. */
    @Test
    void ofTwoWhoSignAtOnceOneWinsAndTheOtherIsTold() throws Exception {
        approved();
        actAsService();
        CountDownLatch begin = new CountDownLatch(1);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<String>> answers = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                answers.add(two.submit(() -> {
                    begin.await();
                    try {
                        transaction.executeWithoutResult(
                                status -> enter(ina, Kind.TAKEN_OVER, TODAY.minusDays(3), "ledger, page 7"));
                        return "entered";
                    } catch (ActRefusedException ex) {
                        return ex.code();
                    }
                }));
            }
            begin.countDown();
            List<String> said = List.of(answers.get(0).get(), answers.get(1).get());
            assertThat(said).containsExactlyInAnyOrder("entered", "entered-already");
        } finally {
            two.shutdown();
        }
        assertThat(knowledge.events(ina)).hasSize(1);
    }
}
