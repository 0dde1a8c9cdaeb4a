package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.competence.HoldingRulesTests.event;
import static org.crosshead.competence.HoldingRulesTests.policy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.LearningNeeds;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Who may enter what: separation of duties after the trade (from memory); that a risk assessment comes first was read in the scope of a network standard. */
class ActRulesTests {

    private static final Learned ENOUGH = new Learned(LearningNeeds.NONE, LearningNeeds.NONE, false);

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final long INA = 1;
    private static final long TEACHER = 9;

    private static CompetenceEvent act(Kind kind, String note) {
        return act(kind, TODAY, note, null);
    }

    private static CompetenceEvent act(Kind kind, LocalDate day, String note, @Nullable Long struck) {
        return new CompetenceEvent(
                99, INA, kind, HoldingRulesTests.ROAD, day, HoldingRulesTests.LATER, null, struck, note);
    }

    private static ActRules.Actor actor(long id, String... posts) {
        return new ActRules.Actor(false, id, Set.of(posts), true);
    }

    private static ActRules.Known known(State state, CompetenceEvent... events) {
        Holding holding = new Holding(HoldingRulesTests.ROAD, state, null, null, null, List.of());
        return new ActRules.Known(TODAY, false, true, false, holding, List.of(events), policy(24), ENOUGH, null);
    }

    private static ActRules.Known notOpen(State state) {
        ActRules.Known open = known(state);
        return new ActRules.Known(TODAY, false, false, false, open.holding(), List.of(), open.policy(), ENOUGH, null);
    }

    private static String refused(CompetenceEvent act, ActRules.Actor actor, ActRules.Known known) {
        Optional<String> refusal = ActRules.refusal(act, actor, known);
        return refusal.orElse("may");
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void logInThatBelongsToNobodyEntersNothing(Kind kind) {
        ActRules.Actor nobody = new ActRules.Actor(false, null, Set.of("MANAGER", "ASSESSOR", "ADMINISTRATOR"), false);
        assertThat(refused(act(kind, "a good reason"), nobody, known(State.HELD)))
                .isEqualTo("nobody");
    }

    /** What is offered is what the rules of posts allow, in some state of the holding. */
    @ParameterizedTest
    @CsvSource({"DRIVER", "MANAGER", "ASSESSOR", "INSPECTOR", "ADMINISTRATOR"})
    void whatIsOfferedIsNotRefusedForThePost(String post) {
        for (boolean own : new boolean[] {true, false}) {
            for (Kind kind : ActRules.offered(own, Set.of(post))) {
                String refused = refused(act(kind, "a good reason"), actor(own ? INA : 2, post), known(State.HELD));
                assertThat(refused)
                        .as("%s by %s", kind, post)
                        .doesNotEndWith("-only")
                        .isNotIn("own-record", "only-they-themselves");
            }
        }
    }

    @Test
    void personDeclaresAndHandsBackTheirOwnAndNobodyElseDoes() {
        assertThat(refused(act(Kind.DECLARED, ""), actor(INA, "DRIVER"), known(State.LEARNING)))
                .isEqualTo("may");
        assertThat(refused(act(Kind.DECLARED, ""), actor(2, "MANAGER"), known(State.LEARNING)))
                .isEqualTo("only-they-themselves");
        assertThat(refused(act(Kind.HANDED_BACK, ""), actor(INA, "DRIVER"), known(State.HELD)))
                .isEqualTo("may");
        assertThat(refused(act(Kind.HANDED_BACK, ""), actor(2, "MANAGER"), known(State.HELD)))
                .isEqualTo("only-they-themselves");
    }

    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"DECLARED", "HANDED_BACK"},
            mode = EnumSource.Mode.EXCLUDE)
    void nobodySignsTheirOwnRecord(Kind kind) {
        ActRules.Actor everything = actor(INA, "DRIVER", "ASSESSOR", "MANAGER", "INSPECTOR");
        assertThat(refused(act(kind, "a good reason"), everything, known(State.DECLARED)))
                .isEqualTo("own-record");
    }

    @ParameterizedTest
    @CsvSource({
        "QUESTIONS_PASSED, ASSESSOR, DECLARED, may",
        "PRACTICE_PASSED, ASSESSOR, DECLARED, may",
        "PRACTICE_PASSED, ASSESSOR, HELD, may",
        "PRACTICE_PASSED, ASSESSOR, LEARNING, not-declared",
        "PRACTICE_PASSED, ASSESSOR, LAPSED, not-declared",
        "PRACTICE_PASSED, MANAGER, DECLARED, assessor-only",
        "AUTHORISED, MANAGER, ASSESSED, may",
        "AUTHORISED, MANAGER, DECLARED, not-assessed",
        "AUTHORISED, ASSESSOR, ASSESSED, manager-only",
        "SUSPENDED, MANAGER, HELD, may",
        "SUSPENDED, ASSESSOR, HELD, manager-only",
        "WITHDRAWN, MANAGER, HELD, may",
        "TAKEN_OVER, MANAGER, NOT_HELD, may",
        "TAKEN_OVER, DRIVER, NOT_HELD, manager-only",
        "REINSTATED, MANAGER, SUSPENDED, may",
        "WORKED, MANAGER, HELD, may",
        "WORKED, INSPECTOR, HELD, may",
        "WORKED, DRIVER, HELD, office-only",
        "LEARNED, ASSESSOR, LEARNING, office-only"
    })
    void eachActHasItsPostAndItsTurn(Kind kind, String post, State state, String answer) {
        assertThat(refused(act(kind, "a good reason"), actor(2, post), known(state)))
                .isEqualTo(answer);
    }

    @Test
    void sectionWithoutApprovedRiskAssessmentIsNotSigned() {
        assertThat(refused(act(Kind.DECLARED, ""), actor(INA, "DRIVER"), notOpen(State.LEARNING)))
                .isEqualTo("not-open");
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), actor(2, "ASSESSOR"), notOpen(State.DECLARED)))
                .isEqualTo("not-open");
        assertThat(refused(act(Kind.AUTHORISED, ""), actor(2, "MANAGER"), notOpen(State.ASSESSED)))
                .isEqualTo("not-open");
    }

    @Test
    void assessorIsCurrentOnItOrRecognisedByALetter() {
        ActRules.Actor lapsed = new ActRules.Actor(false, 2L, Set.of("ASSESSOR"), false);
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), lapsed, known(State.DECLARED)))
                .isEqualTo("assessor-not-current");
        ActRules.Known usual = known(State.DECLARED);
        ActRules.Known first =
                new ActRules.Known(TODAY, false, true, true, usual.holding(), List.of(), usual.policy(), ENOUGH, null);
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), lapsed, first)).isEqualTo("letter-missing");
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), actor(2, "ASSESSOR"), first))
                .as("holding it, or recognised by letter")
                .isEqualTo("may");
    }

    @Test
    void onlyTeacherDoesNotAssess() {
        ActRules.Known taught = known(State.DECLARED, event(1, Kind.LEARNED, "2026-10-01"));
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), actor(TEACHER, "ASSESSOR"), taught))
                .isEqualTo("assessor-taught");
        assertThat(refused(act(Kind.PRACTICE_PASSED, ""), actor(2, "ASSESSOR"), taught))
                .isEqualTo("may");
    }

    @Test
    void threeActsAreByThreePeople() {
        ActRules.Known assessed = known(State.ASSESSED, event(1, Kind.PRACTICE_PASSED, "2026-11-01"));
        assertThat(refused(act(Kind.AUTHORISED, ""), actor(TEACHER, "MANAGER", "ASSESSOR"), assessed))
                .isEqualTo("three-people");
    }

    @Test
    void assessmentByTheOnlyTeacherIsVerifiedByASecond() {
        CompetenceEvent lesson = event(1, Kind.LEARNED, "2026-10-01");
        CompetenceEvent practice = event(2, Kind.PRACTICE_PASSED, "2026-11-01");
        assertThat(refused(act(Kind.AUTHORISED, ""), actor(2, "MANAGER"), known(State.ASSESSED, lesson, practice)))
                .isEqualTo("not-verified");
        assertThat(refused(act(Kind.VERIFIED, ""), actor(TEACHER, "ASSESSOR"), known(State.ASSESSED, lesson, practice)))
                .isEqualTo("second-assessor");
        CompetenceEvent verified = event(3, Kind.VERIFIED, "2026-11-02");
        assertThat(refused(
                        act(Kind.AUTHORISED, ""),
                        actor(2, "MANAGER"),
                        known(State.ASSESSED, lesson, practice, verified)))
                .isEqualTo("may");
    }

    @Test
    void whatCannotBeIsRefusedByName() {
        ActRules.Actor manager = actor(2, "MANAGER");
        assertThat(refused(act(Kind.SUSPENDED, TODAY.plusDays(1), "a good reason", null), manager, known(State.HELD)))
                .isEqualTo("in-the-future");
        assertThat(refused(act(Kind.SUSPENDED, " x "), manager, known(State.HELD)))
                .isEqualTo("reason-missing");
        assertThat(refused(act(Kind.TAKEN_OVER, ""), manager, known(State.NOT_HELD)))
                .isEqualTo("reason-missing");
        ActRules.Known usual = known(State.LEARNING);
        ActRules.Known left =
                new ActRules.Known(TODAY, true, true, false, usual.holding(), List.of(), usual.policy(), ENOUGH, null);
        assertThat(refused(act(Kind.DECLARED, ""), actor(INA), left)).isEqualTo("person-left");
        ActRules.Known declared = known(State.DECLARED, event(1, Kind.DECLARED, TODAY.toString()));
        assertThat(refused(act(Kind.DECLARED, ""), actor(INA, "DRIVER"), declared))
                .isEqualTo("entered-already");
    }

    @Test
    void correctionStrikesWhatIsThereAndNoCorrection() {
        ActRules.Actor manager = actor(2, "MANAGER");
        ActRules.Known worked = known(State.HELD, event(7, Kind.WORKED, "2026-08-02"));
        assertThat(refused(act(Kind.STRUCK, TODAY, "had not driven", 7L), manager, worked))
                .isEqualTo("may");
        assertThat(refused(act(Kind.STRUCK, TODAY, "had not driven", 8L), manager, worked))
                .isEqualTo("nothing-to-strike");
        assertThat(refused(act(Kind.STRUCK, TODAY, "had not driven", 7L), actor(2, "DRIVER"), worked))
                .isEqualTo("manager-only");
    }

    /** A policy is never laxer than the law of its regime (TDLCR reg. 15(2), read; the periods from memory), nor approved by its author alone (from memory). */
    @ParameterizedTest
    @CsvSource({
        "MAIN_LINE, 12, 36, A, B, in force",
        "MAIN_LINE, 18, 36, A, B, longer-than-law",
        "MAIN_LINE, 12, 37, A, B, longer-than-law",
        "SEPARATE_LINE, 18, 60, A, B, in force",
        "GENERAL_SYSTEM, 18, 36, A, B, in force",
        "GENERAL_SYSTEM, 12, 37, A, B, longer-than-law",
        "SEPARATE_LINE, 0, 24, A, B, period-missing",
        "SEPARATE_LINE, 12, 24, A, A, approved-by-owner",
        "SEPARATE_LINE, 12, 24, A, '', not-approved"
    })
    void policyIsNoLaxerThanTheLaw(
            KnowledgePolicy.Regime regime, int lapse, int assessment, String owner, String approver, String answer) {
        KnowledgePolicy usual = policy(assessment);
        KnowledgePolicy policy = new KnowledgePolicy(
                2,
                TODAY,
                java.util.Map.of(
                        org.crosshead.routeknowledge.Band.HARD, Math.min(6, Math.max(1, lapse)),
                        org.crosshead.routeknowledge.Band.USUAL, lapse,
                        org.crosshead.routeknowledge.Band.EASY, Math.max(1, lapse)),
                12,
                assessment,
                60,
                usual.keepsAlive(),
                false,
                Set.of(Subject.LICENCE, Subject.MEDICAL, Subject.OBSERVED, Subject.TESTED),
                KnowledgePolicy.Hours.CUSTOMARY,
                KnowledgePolicy.Upkeep.USUAL,
                regime,
                owner,
                approver);
        assertThat(policy.refusal().orElse("in force")).isEqualTo(answer);
    }

    /** On the main line both a licence and a certificate are needed (TDLCR reg. 4(1), read); hours must be possible. */
    @ParameterizedTest
    @CsvSource({
        "MAIN_LINE, true, 12, 12, 4, 72, 13, in force",
        "MAIN_LINE, false, 12, 12, 4, 72, 13, licence-by-law",
        "SEPARATE_LINE, false, 12, 12, 4, 72, 13, in force",
        "GENERAL_SYSTEM, true, 12, 8, 4, 72, 13, licence-by-law",
        "SEPARATE_LINE, false, 25, 12, 4, 72, 13, hours",
        "SEPARATE_LINE, false, 12, 4, 4, 72, 13, hours",
        "SEPARATE_LINE, false, 12, 12, 4, 11, 13, hours",
        "SEPARATE_LINE, false, 12, 12, 4, 72, 15, hours"
    })
    void lawAndReasonBindHoursAndWhatADriverMustHave(
            KnowledgePolicy.Regime regime,
            boolean licence,
            double turn,
            double rest,
            double pause,
            double week,
            int turns,
            String answer) {
        KnowledgePolicy policy = new KnowledgePolicy(
                2,
                TODAY,
                java.util.Map.of(
                        org.crosshead.routeknowledge.Band.HARD, 6,
                        org.crosshead.routeknowledge.Band.USUAL, 12,
                        org.crosshead.routeknowledge.Band.EASY, 12),
                12,
                36,
                60,
                Set.of(),
                false,
                licence ? Set.of(Subject.LICENCE, Subject.MEDICAL) : Set.of(),
                new KnowledgePolicy.Hours(turn, rest, pause, week, turns, KnowledgePolicy.Accrued.NONE),
                KnowledgePolicy.Upkeep.USUAL,
                regime,
                "A",
                "B");
        assertThat(policy.refusal().orElse("in force")).isEqualTo(answer);
    }

    /**
     * The general system of the United States: a certificate, one observation and one unannounced test a calendar year (49 CFR 240.303(b)-(c),
     * read); twelve hours on duty, eight off (49 CFR 228.405(a), read). The exemption for easy grades is its own (240.231(c), from memory):
     * the law of the European main line has none.
     */
    @ParameterizedTest
    @CsvSource({
        "GENERAL_SYSTEM, true, 12, 8, true, in force",
        "GENERAL_SYSTEM, false, 12, 8, true, licence-by-law",
        "GENERAL_SYSTEM, true, 13, 8, false, hours-by-law",
        "GENERAL_SYSTEM, true, 12, 7, false, hours-by-law",
        "MAIN_LINE, true, 13, 7, false, in force",
        "MAIN_LINE, true, 12, 12, true, exemption-by-law",
        "SEPARATE_LINE, false, 12, 12, true, in force"
    })
    void lawOfTheGeneralSystemBindsToo(
            KnowledgePolicy.Regime regime, boolean all, double turn, double rest, boolean easyGrades, String answer) {
        KnowledgePolicy usual = policy(36);
        KnowledgePolicy policy = new KnowledgePolicy(
                2,
                TODAY,
                usual.lapseMonths(),
                12,
                36,
                60,
                Set.of(),
                false,
                all ? Set.of(Subject.LICENCE, Subject.MEDICAL, Subject.OBSERVED, Subject.TESTED) : Set.of(),
                new KnowledgePolicy.Hours(turn, rest, 4, 72, 13, KnowledgePolicy.Accrued.NONE),
                new KnowledgePolicy.Upkeep(12, true, 2, easyGrades, 14),
                regime,
                "A",
                "B");
        assertThat(policy.refusal().orElse("in force")).isEqualTo(answer);
    }

    /** Nobody serves more than 36 months on one determination: 49 CFR 240.217(c), read; a licence of Europe ten years: TDLCR reg. 12(1), read. */
    @ParameterizedTest
    @CsvSource({"GENERAL_SYSTEM, 36", "MAIN_LINE, 120", "SEPARATE_LINE, 120"})
    void licenceLastsAsLongAsItsLawSays(KnowledgePolicy.Regime regime, int months) {
        assertThat(regime.licenceMonthsMost()).isEqualTo(months);
    }

    private static CompetenceEvent personal(Kind kind, Subject subject, @Nullable String until) {
        return new CompetenceEvent(
                0,
                INA,
                kind,
                subject,
                TODAY,
                Instant.EPOCH,
                null,
                null,
                until == null ? null : LocalDate.parse(until),
                "by letter");
    }

    /** 49 CFR 240.303(b)-(c), read: by somebody who rode with them, and it has no last day of its own. */
    @ParameterizedTest
    @CsvSource({
        "OBSERVED, OBSERVED, INSPECTOR, , may",
        "TESTED, TESTED, ASSESSOR, , may",
        "OBSERVED, OBSERVED, MANAGER, , observer-only",
        "OBSERVED, MEDICAL, INSPECTOR, , other-subject",
        "TESTED, OBSERVED, INSPECTOR, , other-subject",
        "OBSERVED, OBSERVED, INSPECTOR, 2027-01-01, no-last-day"
    })
    void yearlyObservationIsEnteredByWhoRodeWithThem(
            Kind kind, String subject, String post, @Nullable String until, String answer) {
        CompetenceEvent act = personal(kind, new Subject(Subject.Kind.PERSON, subject), until);
        assertThat(refused(act, actor(2, post), known(State.NOT_HELD))).isEqualTo(answer);
    }

    /** Licence ten years (TDLCR reg. 12(1), read), medical three years up to 55 and one after (TDLCR(NI) schedule 1, read). */
    @ParameterizedTest
    @CsvSource({
        "LICENSED, LICENCE, 2036-11-25, , in order",
        "LICENSED, LICENCE, 2036-11-26, , last-day-too-late",
        "LICENSED, LICENCE, , , last-day",
        "LICENSED, LICENCE, 2026-11-25, , last-day",
        "LICENSED, MEDICAL, 2036-11-25, , other-subject",
        "FIT, MEDICAL, 2029-11-25, , in order",
        "FIT, MEDICAL, 2029-11-26, , last-day-too-late",
        "FIT, MEDICAL, 2029-11-25, 1985-04-02, in order",
        "FIT, MEDICAL, 2029-11-25, 1960-04-02, last-day-too-late",
        "FIT, MEDICAL, 2027-11-25, 1960-04-02, in order",
        "FIT_RESTRICTED, LICENCE, 2027-11-25, , other-subject",
        "UNFIT, MEDICAL, , , in order",
        "UNFIT, MEDICAL, 2027-11-25, , no-last-day",
        "AUTHORISED, MEDICAL, , , other-subject",
        "SUSPENDED, LICENCE, , , in order"
    })
    void licenceAndMedicalHaveTheirOwnSubjectAndLastDay(
            Kind kind, String code, String until, LocalDate born, String answer) {
        ActRules.Known usual = known(State.HELD);
        ActRules.Known known =
                new ActRules.Known(TODAY, false, true, false, usual.holding(), List.of(), usual.policy(), ENOUGH, born);
        CompetenceEvent act = personal(kind, new Subject(Subject.Kind.PERSON, code), until);
        assertThat(ActRules.refusal(act, actor(TEACHER, "MANAGER"), known).orElse("in order"))
                .isEqualTo(answer);
    }

    /** What is not held is not limited; a limit needs its reason. */
    @ParameterizedTest
    @CsvSource({"HELD, in order", "DUE, in order", "LAPSED, not-held", "LEARNING, not-held"})
    void onlyWhatIsHeldIsLimited(State state, String answer) {
        CompetenceEvent act = personal(Kind.DAY_ONLY, HoldingRulesTests.ROAD, null);
        assertThat(ActRules.refusal(act, actor(TEACHER, "MANAGER"), known(state))
                        .orElse("in order"))
                .isEqualTo(answer);
        assertThat(ActRules.refusal(act, actor(TEACHER, "ASSESSOR"), known(state)))
                .contains("manager-only");
    }
}
