package org.crosshead.routeknowledge.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.crosshead.crew.People;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.ServiceJob;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.Cues;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.transaction.annotation.Transactional;

/** What comes when, by what somebody has answered. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:self-tests;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@Transactional
@WithMockUser(roles = "DRIVER")
class SelfTestsTests {

    private static final String SECTION = "GC-DN";

    @Autowired
    private RouteSections sections;

    @Autowired
    private Routes routes;

    @Autowired
    private Cues cues;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private People people;

    @Autowired
    private QuestionBank bank;

    private Instant now = Instant.parse("2030-05-06T08:00:00Z");
    private SelfTests tests;

    @BeforeEach
    void driver() {
        tests = of("D-01");
    }

    private SelfTests of(String staffNumber) {
        long personId = people.byStaffNumber(staffNumber).orElseThrow().id();
        CurrentActor.Actor actor = new CurrentActor.Actor(1L, personId, "D", Set.of("DRIVER"));
        return new SelfTests(sections, routes, cues, new AnswerStore(jdbc), bank, () -> actor, new Clock() {
            @Override
            public java.time.ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(java.time.ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                return now;
            }
        });
    }

    private Question next() {
        return tests.next(SECTION).orElseThrow();
    }

    private void answer(Question question, boolean rightly) {
        int chosen = rightly
                ? question.right()
                : (question.right() + 1) % question.options().size();
        assertThat(tests.answer(SECTION, question.key(), chosen).right()).isEqualTo(rightly);
    }

    @ParameterizedTest
    @CsvSource({
        "1, false, 1",
        "2, false, 3",
        "3, false, 7",
        "6, false, 60",
        "9, false, 60",
        "4, true, 14",
        "6, true, 14"
    })
    void restsLongerTheOftenerItIsKnown(int right, boolean safety, int days) {
        assertThat(Spacing.due(now, right, safety)).isEqualTo(now.plus(Duration.ofDays(days)));
    }

    @Test
    void wrongAnswerComesBackSoonAndARightOneNextDay() {
        Question first = next();
        answer(first, false);
        assertThat(next().key()).isNotEqualTo(first.key());
        now = now.plus(Spacing.SOON);
        assertThat(next().key()).isEqualTo(first.key());
        answer(first, true);
        assertThat(next().key()).isNotEqualTo(first.key());
        now = now.plus(Duration.ofHours(23));
        assertThat(next().key()).isNotEqualTo(first.key());
        now = now.plus(Duration.ofHours(1));
        assertThat(next().key()).isEqualTo(first.key());
    }

    @Test
    void newQuestionsAreNotTheSameAgainAndSafetyCriticalOnesComeFirst() {
        Set<String> keys = new HashSet<>();
        int safety = 0;
        for (int i = 0; i < 60; i++) {
            Question question = next();
            assertThat(keys.add(question.key())).isTrue();
            safety += question.sort().isSafetyCritical() ? 1 : 0;
            answer(question, true);
        }
        assertThat(safety).isGreaterThanOrEqualTo(40);
        SelfTests.Progress progress = tests.progress(SECTION);
        assertThat(progress.asked()).isEqualTo(60);
        assertThat(progress.due()).isZero();
        assertThat(progress.inAll()).isGreaterThan(150);
    }

    @Test
    void eachPersonHasAnOrderAndAnswersOfTheirOwn() {
        Question mine = next();
        answer(mine, false);
        SelfTests others = of("D-02");
        assertThat(others.progress(SECTION).asked()).isZero();
        assertThat(others.next(SECTION).orElseThrow().key()).isNotEqualTo(mine.key());
    }

    @Test
    void placesThatAreBadlyKnownAreToldTheInspector() {
        Question hard = next();
        answer(hard, false);
        answer(hard, false);
        answer(hard, true);
        assertThat(tests.hardPlaces(SECTION)).first().satisfies(place -> {
            assertThat(place.atMeasure()).isEqualTo(hard.atMeasure());
            assertThat(place.wrong()).isEqualTo(2);
            assertThat(place.asked()).isEqualTo(3);
        });
    }

    @Test
    void whatIsNotAskedIsNotAnswered() {
        assertThatThrownBy(() -> tests.answer(SECTION, "LIMIT:Nowhere", 0))
                .isInstanceOf(SectionRefusedException.class)
                .hasMessage("test-stale");
        Question question = next();
        assertThatThrownBy(() -> tests.answer(SECTION, question.key(), 7)).hasMessage("test-choose");
        assertThatThrownBy(() -> tests.answer(SECTION, question.key(), -1)).hasMessage("test-choose");
    }

    /** A cue points to a thing of the route; nothing else is taken, and by an inspector alone. */
    @Test
    @WithMockUser(roles = "INSPECTOR")
    void cuePointsToOneThingOnItsSection() {
        Cue good = new Cue(SECTION, "Telegraph hut", Cue.Tells.NOTCH_UP, "Half way up the bank.", "Steam is wasted.");
        cues.enter(good);
        assertThat(cues.of(SECTION)).contains(good);
        assertThat(tests.questions(SECTION)).anyMatch(question -> question.key().equals("CUE:Telegraph hut"));
        String[][] wrong = {
            {SECTION, "Red barn", "what", "cue-feature"},
            {SECTION, "No such thing", "what", "cue-feature"},
            {"NONE", "Telegraph hut", "what", "cue-section"},
            {SECTION, "Telegraph hut", "", "cue-words"}
        };
        for (String[] one : wrong) {
            assertThatThrownBy(() -> cues.enter(new Cue(one[0], one[1], Cue.Tells.BRAKE, one[2], "why")))
                    .hasMessage(one[3]);
        }
    }

    @Test
    void driverEntersNoCues() {
        assertThatThrownBy(() -> cues.enter(cues.of(SECTION).get(0))).isInstanceOf(AccessDeniedException.class);
    }

    private static QuestionBank.Draft hand(int number, String right, String... wrong) {
        return new QuestionBank.Draft(
                SECTION,
                number,
                2_000,
                "Who opens the {gates} here?",
                right,
                List.of(wrong),
                "By the box's rules.",
                true);
    }

    private static void inspector(Runnable work) {
        ServiceJob.run(Set.of("INSPECTOR"), work);
    }

    private List<Question> byHand() {
        return tests.questions(SECTION).stream()
                .filter(question -> question.sort() == Sort.BY_HAND_CRITICAL)
                .toList();
    }

    /** Written, asked, answered; changed it is asked as a new one; withdrawn it is asked no more, and every version stays. */
    @Test
    void questionByHandIsAskedInItsLatestVersion() {
        inspector(() -> bank.write(hand(0, "The fireman", "The guard", "Nobody")));
        assertThat(byHand()).hasSize(1);
        Question first = byHand().get(0);
        assertThat(first.answer().text()).isEqualTo("The fireman");
        assertThat(first.options()).hasSize(3);
        answer(first, false);
        assertThat(next()).isNotEqualTo(first);
        now = now.plus(Duration.ofMinutes(10));
        assertThat(next()).as("what was not known comes back").isEqualTo(first);
        inspector(() -> bank.write(hand(1, "The guard", "The fireman")));
        assertThat(byHand()).hasSize(1);
        assertThat(byHand().get(0).answer().text()).isEqualTo("The guard");
        assertThat(byHand().get(0).key()).isNotEqualTo(first.key());
        inspector(() -> bank.withdraw(SECTION, 1));
        assertThat(byHand()).isEmpty();
        assertThat(bank.latest(SECTION)).singleElement().matches(HandQuestion::withdrawn);
        assertThat(bank.latest(SECTION).get(0).version()).isEqualTo(3);
        inspector(() -> assertThatThrownBy(() -> bank.write(hand(1, "The guard", "Nobody")))
                .hasMessage("question-gone"));
    }

    @Test
    void questionByHandThatCannotBeAnsweredIsRefused() {
        inspector(() -> {
            for (QuestionBank.Draft wrong :
                    List.of(hand(0, " ", "The guard"), hand(0, "The guard"), hand(0, "x".repeat(201), "y"))) {
                assertThatThrownBy(() -> bank.write(wrong)).hasMessage("question-words");
            }
            assertThatThrownBy(() -> bank.write(hand(0, "The guard", "The guard")))
                    .hasMessage("question-twice");
            assertThatThrownBy(() -> bank.write(new QuestionBank.Draft(
                            SECTION, 0, 1, "Where?", "Here", List.of("There"), "Because.", false)))
                    .hasMessage("question-place");
        });
    }
}
