package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Subject.Kind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** May this crew take this train, by stories of an invented line. */
class PermitRulesTests {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 5);
    private static final Subject HV1 = new Subject(Kind.SECTION, "HV1-DOWN");
    private static final Subject HV3 = new Subject(Kind.SECTION, "HV3-DOWN");
    private static final Subject WYVERN = new Subject(Kind.CLASS, "WYVERN");
    private static final long INA = 1;
    private static final long ARKWELL = 2;
    private static final long DUNMORE = 3;

    private final Map<Subject, Map<Long, Holding>> holdings = new HashMap<>();

    private void holds(long person, Subject subject, State state) {
        holdings.computeIfAbsent(subject, key -> new HashMap<>())
                .put(person, new Holding(subject, state, null, null, null, List.of()));
    }

    private Permit permit(PermitRules.Companion... companions) {
        return PermitRules.decide(asked(List.of(), List.of(), companions));
    }

    private PermitRules.Asked asked(
            List<Permit.Bar> bars, List<PermitRules.Declined> declined, PermitRules.Companion... companions) {
        return new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, duties(HV1, HV3, WYVERN), List.of())),
                List.of(companions),
                List.of(),
                declined,
                bars,
                held(),
                List.of());
    }

    private static List<PermitRules.Duty> duties(Subject... subjects) {
        return Stream.of(subjects)
                .map(subject -> new PermitRules.Duty(subject, Set.of()))
                .toList();
    }

    private List<PermitRules.Held> held() {
        return holdings.entrySet().stream()
                .map(of -> new PermitRules.Held(
                        of.getKey(),
                        of.getValue(),
                        of.getValue().entrySet().stream()
                                .filter(one -> one.getValue().counts())
                                .map(Map.Entry::getKey)
                                .sorted()
                                .toList()))
                .toList();
    }

    private static PermitRules.Companion along(long person, String... sections) {
        return new PermitRules.Companion(person, List.of(sections), List.of(), Set.of(INA), List.of());
    }

    /** First story: lapsed on the last section; one of two could conduct, the other has lapsed himself. */
    @Test
    void lapsedRoadIsRefusedAndWhoCouldConductIsNamed() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.LAPSED);
        holds(INA, WYVERN, State.HELD);
        holds(ARKWELL, HV3, State.DUE);
        holds(DUNMORE, HV3, State.LAPSED);
        Permit alone = permit();
        assertThat(alone.answer()).isEqualTo(Answer.REFUSED);
        assertThat(alone.lines())
                .extracting(Permit.Line::answer)
                .containsExactly(Answer.ALLOWED, Answer.REFUSED, Answer.ALLOWED);
        assertThat(alone.lines().get(1).conductors()).containsExactly(ARKWELL);
        Permit conducted = permit(along(ARKWELL, "HV3-DOWN"));
        assertThat(conducted.answer()).isEqualTo(Answer.CONDUCTED);
        assertThat(conducted.lines().get(1).conductors()).containsExactly(ARKWELL);
        assertThat(permit(along(ARKWELL, "HV1-DOWN")).answer()).isEqualTo(Answer.REFUSED);
        assertThat(permit(along(DUNMORE, "HV3-DOWN")).answer())
                .as("the conductor must be valid himself (Directive 2007/59/EC Art. 4(2), from memory)")
                .isEqualTo(Answer.REFUSED);
    }

    /** A line that nobody holds is referred, never certified by itself (practice of the trade, from memory). */
    @Test
    void roadThatNobodyHoldsIsReferred() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.LAPSED);
        holds(INA, WYVERN, State.HELD);
        assertThat(permit().answer()).isEqualTo(Answer.REFERRED);
    }

    /** A class is not conducted, for drivers are passed by class (read second hand): a visiting engine that nobody signs is referred. */
    @Test
    void classIsNotConducted() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.HELD);
        assertThat(permit().answer()).isEqualTo(Answer.REFERRED);
        holds(ARKWELL, WYVERN, State.HELD);
        assertThat(permit(along(ARKWELL, "WYVERN")).answer()).isEqualTo(Answer.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({
        "HELD, ALLOWED",
        "DUE, ALLOWED",
        "LAPSED, CONDUCTED",
        "NOT_HELD, CONDUCTED",
        "LEARNING, CONDUCTED",
        "HANDED_BACK, CONDUCTED",
        "SUSPENDED, REFUSED",
        "WITHDRAWN, REFUSED"
    })
    void eachStateHasItsAnswerWithAConductorAlong(State state, Answer answer) {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, state);
        holds(INA, WYVERN, State.HELD);
        holds(ARKWELL, HV3, State.HELD);
        assertThat(permit(along(ARKWELL, "HV3-DOWN")).answer()).isEqualTo(answer);
    }

    /** Those who could go instead stand in the order of what they lack; who lacks more than two things is not named. */
    @Test
    void thoseWhoLackLeastAreNamedFirst() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.LAPSED);
        holds(INA, WYVERN, State.HELD);
        holds(DUNMORE, HV1, State.HELD);
        holds(DUNMORE, HV3, State.HELD);
        holds(DUNMORE, WYVERN, State.DUE);
        holds(ARKWELL, HV1, State.HELD);
        holds(ARKWELL, WYVERN, State.HELD);
        Permit permit = PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, duties(HV1, HV3, WYVERN), List.of(4L, ARKWELL, DUNMORE))),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                held(),
                List.of()));
        assertThat(permit.instead())
                .containsExactly(
                        new Permit.Candidate(INA, DUNMORE, List.of()),
                        new Permit.Candidate(INA, ARKWELL, List.of(HV3)));
        holds(INA, HV3, State.HELD);
        assertThat(permit().instead()).isEmpty();
    }

    @Test
    void closedSectionIsReferredForEverybody() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.CLOSED);
        holds(ARKWELL, HV3, State.CLOSED);
        holds(INA, WYVERN, State.HELD);
        assertThat(permit(along(ARKWELL, "HV3-DOWN")).answer()).isEqualTo(Answer.REFERRED);
    }

    /** What is not laid down is not allowed: nothing can be said of it. */
    @Test
    void pathWithAGapIsReferredThoughAllElseIsHeld() {
        holds(INA, HV1, State.HELD);
        Permit permit = PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, duties(HV1), List.of())),
                List.of(),
                List.of(new Permit.Gap("MX", 0, 18)),
                List.of(),
                List.of(),
                held(),
                List.of()));
        assertThat(permit.answer()).isEqualTo(Answer.REFERRED);
        assertThat(permit.lines()).extracting(Permit.Line::answer).containsExactly(Answer.ALLOWED);
    }

    @Test
    void equalInputsGiveEqualAnswersAndNoPlainAllowedStandsBesideARefusal() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.LAPSED);
        holds(INA, WYVERN, State.HELD);
        holds(ARKWELL, HV3, State.HELD);
        assertThat(permit()).isEqualTo(permit());
        assertThat(permit().lines()).anyMatch(line -> line.answer() == Answer.REFUSED);
        assertThat(permit().answer()).isNotEqualTo(Answer.ALLOWED);
    }

    private void holds(long person, Subject subject, Holding.Limit limit) {
        holdings.computeIfAbsent(subject, key -> new HashMap<>())
                .put(person, new Holding(subject, State.HELD, null, null, null, Set.of(limit), List.of()));
    }

    private Permit on(Set<Circumstance> circumstances, PermitRules.Companion... companions) {
        return PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(
                        INA, List.of(new PermitRules.Duty(HV1, circumstances)), List.of(ARKWELL))),
                List.of(companions),
                List.of(),
                List.of(),
                List.of(),
                held(),
                List.of()));
    }

    /** Conditions of a holding (practice of the trade, from memory): day only, not tender first, with an instructor. */
    @ParameterizedTest
    @CsvSource({
        "DAY_ONLY, , ALLOWED, held",
        "DAY_ONLY, DARK, REFUSED, limit-day",
        "DAY_ONLY, TENDER_FIRST, ALLOWED, held",
        "CHIMNEY_FIRST_ONLY, TENDER_FIRST, REFUSED, limit-chimney",
        "CHIMNEY_FIRST_ONLY, DARK, ALLOWED, held",
        "WITH_TEACHER_ONLY, , REFUSED, limit-teacher"
    })
    void limitsOfAHoldingCountWhereTheTrainMeetsThem(Holding.Limit limit, Circumstance met, Answer answer, String why) {
        holds(INA, HV1, limit);
        holds(ARKWELL, HV1, State.HELD);
        Permit permit = on(met == null ? Set.of() : Set.of(met));
        assertThat(permit.lines().get(0).answer()).isEqualTo(answer);
        assertThat(permit.lines().get(0).why()).isEqualTo(why);
    }

    /** Who may hold it by day only is conducted in the dark, but not by one who holds it by day only too. */
    @Test
    void conductorDriverIsHeldToTheirOwnLimits() {
        holds(INA, HV1, Holding.Limit.DAY_ONLY);
        holds(ARKWELL, HV1, State.HELD);
        Set<Circumstance> dark = Set.of(Circumstance.DARK);
        assertThat(on(dark, along(ARKWELL, "HV1-DOWN")).answer()).isEqualTo(Answer.CONDUCTED);
        holds(ARKWELL, HV1, Holding.Limit.DAY_ONLY);
        assertThat(on(dark, along(ARKWELL, "HV1-DOWN")).answer()).isEqualTo(Answer.REFUSED);
    }

    /** New class: a learner drives it under the named teacher in charge, who passes every rule himself. */
    @Test
    void classNotHeldIsDrivenUnderItsTeacherAlone() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.HELD);
        holds(INA, WYVERN, State.LEARNING);
        holds(ARKWELL, WYVERN, State.HELD);
        PermitRules.Companion teacher =
                new PermitRules.Companion(ARKWELL, List.of(), List.of(WYVERN), Set.of(INA), List.of());
        Permit taught = permit(teacher);
        assertThat(taught.answer()).isEqualTo(Answer.INSTRUCTED);
        assertThat(taught.lines().get(2).conductors()).containsExactly(ARKWELL);
        Permit.Bar tired = new Permit.Bar(ARKWELL, "rest-before", List.of(6.0, 12.0));
        assertThat(PermitRules.decide(asked(List.of(tired), List.of(), teacher))
                        .lines()
                        .get(2)
                        .answer())
                .isEqualTo(Answer.REFUSED);
        holds(ARKWELL, Subject.LICENCE, State.LAPSED);
        assertThat(permit(teacher).lines().get(2).answer()).isEqualTo(Answer.REFUSED);
        holds(ARKWELL, Subject.LICENCE, State.HELD);
        assertThat(permit(teacher).lines().get(2).answer()).isEqualTo(Answer.INSTRUCTED);
        holds(ARKWELL, WYVERN, State.LAPSED);
        assertThat(permit(teacher).answer()).isEqualTo(Answer.REFERRED);
    }

    @Test
    void teacherOnlyIsNotConducted() {
        holds(INA, HV1, Holding.Limit.WITH_TEACHER_ONLY);
        holds(ARKWELL, HV1, State.HELD);
        assertThat(on(Set.of(), along(ARKWELL, "HV1-DOWN")).answer()).isEqualTo(Answer.REFUSED);
        assertThat(on(
                                Set.of(),
                                new PermitRules.Companion(
                                        ARKWELL, List.of("HV1-DOWN"), List.of(HV1), Set.of(INA), List.of()))
                        .answer())
                .isEqualTo(Answer.INSTRUCTED);
    }

    /** Who says that they do not sign a stretch does not drive it alone, whatever the records say (49 CFR 242.301 (b), read). */
    @Test
    void whoDeclinesIsConductedOrNotSent() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.HELD);
        holds(INA, WYVERN, State.HELD);
        holds(ARKWELL, HV3, State.HELD);
        List<PermitRules.Declined> declined = List.of(new PermitRules.Declined(INA, HV3));
        Permit alone = PermitRules.decide(asked(List.of(), declined));
        assertThat(alone.answer()).isEqualTo(Answer.REFUSED);
        assertThat(alone.lines().get(1).why()).isEqualTo("declined");
        assertThat(PermitRules.decide(asked(List.of(), declined, along(ARKWELL, "HV3-DOWN")))
                        .answer())
                .isEqualTo(Answer.CONDUCTED);
    }

    @Test
    void hoursThatAreTooLongAreABar() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.HELD);
        holds(INA, WYVERN, State.HELD);
        Permit permit =
                PermitRules.decide(asked(List.of(new Permit.Bar(INA, "turn-hours", List.of(13.25, 12.0))), List.of()));
        assertThat(permit.answer()).isEqualTo(Answer.REFUSED);
        assertThat(permit.lines()).allMatch(line -> line.answer() == Answer.ALLOWED);
        assertThat(permit.bars()).hasSize(1);
    }

    /** Licence expired, medical overdue, unfit: nobody helps with that. */
    @ParameterizedTest
    @CsvSource({
        "HELD, ALLOWED",
        "DUE, ALLOWED",
        "LAPSED, REFUSED",
        "NOT_HELD, REFUSED",
        "SUSPENDED, REFUSED",
        "UNFIT, REFUSED"
    })
    void whatThePersonMustHaveIsNeverLent(State state, Answer answer) {
        holds(INA, Subject.LICENCE, state);
        holds(ARKWELL, Subject.LICENCE, State.HELD);
        Permit permit = PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, duties(Subject.LICENCE), List.of())),
                List.of(along(ARKWELL, "LICENCE")),
                List.of(),
                List.of(),
                List.of(),
                held(),
                List.of()));
        assertThat(permit.answer()).isEqualTo(answer);
    }

    /** A guest instructor recognised by letter is the first who teaches a class that nobody holds; without the letter it is referred. */
    @Test
    void guestInstructorByLetterIsTheFirstWhoTeaches() {
        holds(INA, HV1, State.NOT_HELD);
        PermitRules.Companion guest =
                new PermitRules.Companion(ARKWELL, List.of(), List.of(HV1), Set.of(), List.of(HV1));
        PermitRules.Companion stranger =
                new PermitRules.Companion(ARKWELL, List.of(), List.of(HV1), Set.of(), List.of());
        assertThat(on(Set.of(), guest).answer()).isEqualTo(Answer.INSTRUCTED);
        assertThat(on(Set.of(), stranger).answer()).isEqualTo(Answer.REFERRED);
    }

    /** Directive 2007/59/EC Article 4(2), from memory: somebody who knows the road sits beside the driver; nobody does who has not said so. */
    @Test
    void conductorDriverWhoHasNotAcceptedDoesNotConduct() {
        holds(INA, HV1, State.LAPSED);
        holds(ARKWELL, HV1, State.HELD);
        Permit permit =
                on(Set.of(), new PermitRules.Companion(ARKWELL, List.of("HV1-DOWN"), List.of(), Set.of(), List.of()));
        assertThat(permit.answer()).isEqualTo(Answer.REFUSED);
        assertThat(permit.lines().get(0).isToBeAccepted()).isTrue();
        assertThat(permit.lines().get(0).conductors()).containsExactly(ARKWELL);
        assertThat(on(Set.of(), along(ARKWELL, "HV1-DOWN")).answer()).isEqualTo(Answer.CONDUCTED);
    }

    /**
     * 49 CFR 240.231(b), from memory: with whom has never held it goes a certified engineer who is not of the assigned crew; with whom held it
     * before, anybody who holds it and is not of the crew.
     */
    @ParameterizedTest
    @CsvSource({
        "NOT_HELD, true, CONDUCTED",
        "NOT_HELD, false, REFUSED",
        "LEARNING, false, REFUSED",
        "LAPSED, true, CONDUCTED",
        "LAPSED, false, CONDUCTED",
        "HANDED_BACK, false, CONDUCTED",
        "WITHDRAWN, true, REFUSED"
    })
    void pilotOfTheGeneralSystem(State state, boolean certified, Answer answer) {
        holds(INA, HV1, state);
        holds(INA, Subject.LICENCE, State.HELD);
        holds(ARKWELL, HV1, State.HELD);
        holds(ARKWELL, Subject.LICENCE, certified ? State.HELD : State.NOT_HELD);
        assertThat(general(null, List.of(along(ARKWELL, "HV1-DOWN"))).answer()).isEqualTo(answer);
    }

    /** The exemption lifts what is not held and nothing else: no suspension, no closure, no word of their own that they do not sign it. */
    @ParameterizedTest
    @CsvSource({
        "NOT_HELD, false, EXEMPT",
        "LAPSED, false, EXEMPT",
        "LAPSED, true, REFUSED",
        "SUSPENDED, false, REFUSED",
        "WITHDRAWN, false, REFUSED",
        "CLOSED, false, REFUSED",
        "HELD, false, ALLOWED"
    })
    void easyGradesAskNoPilot(State state, boolean declines, Answer answer) {
        holds(INA, HV1, state);
        holds(INA, Subject.LICENCE, State.HELD);
        holds(ARKWELL, HV1, State.HELD);
        Permit permit = general(
                Exemption.EASY_GRADES, List.of(), declines ? List.of(new PermitRules.Declined(INA, HV1)) : List.of());
        assertThat(permit.answer()).isEqualTo(answer);
        if (answer == Answer.EXEMPT) {
            assertThat(permit.lines().get(1).why()).as("named").isEqualTo("exempt-easy-grades");
        }
    }

    /** Two stretches of a mile are one of two miles to whoever holds neither. */
    @Test
    void exemptionLiftsOneSectionAtMost() {
        holds(ARKWELL, HV1, State.HELD);
        holds(ARKWELL, HV3, State.HELD);
        List<PermitRules.Duty> both = Stream.of(HV1, HV3)
                .map(road -> new PermitRules.Duty(road, Set.of(), null, Exemption.EASY_GRADES))
                .toList();
        assertThat(exempted(both)).containsExactly(Answer.REFUSED, Answer.REFUSED);
        holds(INA, HV3, State.HELD);
        assertThat(exempted(both)).containsExactly(Answer.EXEMPT, Answer.ALLOWED);
    }

    private List<Answer> exempted(List<PermitRules.Duty> duties) {
        return PermitRules.decide(new PermitRules.Asked(
                        DAY,
                        1,
                        List.of(new PermitRules.Needs(INA, duties, List.of())),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        held(),
                        List.of(),
                        Piloting.NOT_OF_THE_CREW))
                .lines()
                .stream()
                .map(Permit.Line::answer)
                .toList();
    }

    @Test
    void whoIsConductedIsSaidToBeThoughTheExemptionWouldDo() {
        holds(INA, HV1, State.LAPSED);
        holds(INA, Subject.LICENCE, State.HELD);
        holds(ARKWELL, HV1, State.HELD);
        holds(ARKWELL, Subject.LICENCE, State.HELD);
        assertThat(general(Exemption.EASY_GRADES, List.of(along(ARKWELL, "HV1-DOWN")))
                        .answer())
                .isEqualTo(Answer.CONDUCTED);
    }

    private Permit general(@Nullable Exemption exempt, List<PermitRules.Companion> companions) {
        return general(exempt, companions, List.of());
    }

    private Permit general(
            @Nullable Exemption exempt, List<PermitRules.Companion> companions, List<PermitRules.Declined> declined) {
        return PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(
                        INA,
                        List.of(
                                new PermitRules.Duty(Subject.LICENCE, Set.of()),
                                new PermitRules.Duty(HV1, Set.of(), null, exempt)),
                        List.of())),
                companions,
                List.of(),
                declined,
                List.of(),
                held(),
                List.of(),
                Piloting.NOT_OF_THE_CREW));
    }

    /** What was kept before acceptance was asked is decided as it was then. */
    @Test
    void conductorDriverOfAnOldDecisionConductsStill() {
        holds(INA, HV1, State.LAPSED);
        holds(ARKWELL, HV1, State.HELD);
        assertThat(on(Set.of(), new PermitRules.Companion(ARKWELL, List.of("HV1-DOWN"), List.of(), null, List.of()))
                        .answer())
                .isEqualTo(Answer.CONDUCTED);
    }

    /** TDLCR(NI) schedule 4, read: knowledge of agreed alternative routes too; told beforehand, barring nothing until it is used. */
    @Test
    void plannedDiversionIsToldAndBarsNothing() {
        holds(INA, HV1, State.HELD);
        Permit permit = PermitRules.decide(new PermitRules.Asked(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, duties(HV1), List.of())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                held(),
                List.of(new PermitRules.Needs(INA, duties(HV3), List.of()))));
        assertThat(permit.answer()).isEqualTo(Answer.ALLOWED);
        assertThat(permit.detours()).extracting(Permit.Line::answer).containsExactly(Answer.REFERRED);
    }

    /** Asked again from what is kept, the same is decided; only who could go instead is not kept. */
    @Test
    void keptQuestionIsDecidedTheSameAgain() {
        holds(INA, HV1, State.HELD);
        holds(INA, HV3, State.LAPSED);
        holds(INA, WYVERN, State.HELD);
        holds(ARKWELL, HV3, State.HELD);
        PermitRules.Asked asked = asked(List.of(), List.of(), along(ARKWELL, "HV3-DOWN"));
        Permit again = new KeptQuestion(asked.kept()).again();
        assertThat(again.lines()).isEqualTo(PermitRules.decide(asked).lines());
        assertThat(again.answer()).isEqualTo(Answer.CONDUCTED);
    }
}
