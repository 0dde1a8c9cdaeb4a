package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Subject.Kind;
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
        return PermitRules.decide(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, List.of(HV1, HV3, WYVERN))),
                List.of(companions),
                List.of(),
                holdings);
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
        Permit conducted = permit(new PermitRules.Companion(ARKWELL, List.of("HV3-DOWN")));
        assertThat(conducted.answer()).isEqualTo(Answer.CONDUCTED);
        assertThat(conducted.lines().get(1).conductors()).containsExactly(ARKWELL);
        assertThat(permit(new PermitRules.Companion(ARKWELL, List.of("HV1-DOWN")))
                        .answer())
                .isEqualTo(Answer.REFUSED);
        assertThat(permit(new PermitRules.Companion(DUNMORE, List.of("HV3-DOWN")))
                        .answer())
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
        assertThat(permit(new PermitRules.Companion(ARKWELL, List.of("WYVERN"))).answer())
                .isEqualTo(Answer.REFUSED);
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
        assertThat(permit(new PermitRules.Companion(ARKWELL, List.of("HV3-DOWN")))
                        .answer())
                .isEqualTo(answer);
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
        Permit permit = PermitRules.decide(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, List.of(HV1, HV3, WYVERN), List.of(4L, ARKWELL, DUNMORE))),
                List.of(),
                List.of(),
                holdings);
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
        assertThat(permit(new PermitRules.Companion(ARKWELL, List.of("HV3-DOWN")))
                        .answer())
                .isEqualTo(Answer.REFERRED);
    }

    /** What is not laid down is not allowed: nothing can be said of it. */
    @Test
    void pathWithAGapIsReferredThoughAllElseIsHeld() {
        holds(INA, HV1, State.HELD);
        Permit permit = PermitRules.decide(
                DAY,
                1,
                List.of(new PermitRules.Needs(INA, List.of(HV1))),
                List.of(),
                List.of(new Permit.Gap("MX", 0, 18)),
                holdings);
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
}
