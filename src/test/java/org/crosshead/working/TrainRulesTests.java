package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.working.WorkingFixtures.call;
import static org.crosshead.working.WorkingFixtures.engine;
import static org.crosshead.working.WorkingFixtures.leg;
import static org.crosshead.working.WorkingFixtures.slot;
import static org.crosshead.working.WorkingFixtures.train;
import static org.crosshead.working.WorkingFixtures.with;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks that whatever can't be in a train is found, and named where it stands. */
class TrainRulesTests {

    private static final TrainRules.Known KNOWN = new TrainRules.Known(
            Set.of("SET")::contains,
            Set.of("612", "613")::contains,
            number -> number.equals("613") ? OptionalDouble.of(225) : OptionalDouble.empty(),
            Set.of("T-1", "T-2")::contains,
            (slot, day) -> !(slot.staffNumber().equals("T-1") && slot.role() == Post.FIREMAN));

    private static final List<Leg> LEGS = List.of(leg("MAIN", 0, 480));

    @Test
    void findsNothingInASoundTrain() {
        assertThat(problems(train())).isEmpty();
    }

    @Test
    void findsEveryProblemAtOnce() {
        assertThat(problems(head("", " ", "x".repeat(201), "NONE")))
                .containsExactly(
                        ".code code", ".title title", ".weather text-too-long", ".formationCode formation-unknown");
        assertThat(problems(head("x".repeat(41), "x".repeat(121), "", "SET")))
                .containsExactly(".code code", ".title title");
    }

    @Test
    void boundsTheLengthOfEveryList() {
        TrainDraft empty = new TrainDraft(
                "W1",
                "Title",
                WorkingFixtures.DAY,
                TrainKind.PASSENGER,
                null,
                RailState.DRY,
                "",
                false,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of());

        assertThat(problems(empty)).containsExactly("legs.legs count", "calls.calls count", "engines.engines count");
        assertThat(problems(train(Collections.nCopies(21, leg("MAIN", 0, 480)), WorkingFixtures.calls())))
                .contains("legs.legs count");
        assertThat(problems(train(LEGS, Collections.nCopies(201, call(0, "Anfang", "10:00", "10:00")))))
                .contains("calls.calls count");
    }

    @ParameterizedTest
    @CsvSource({
        "0,   480, 10:00, 10:20, ''",
        "0,   480, 10:00, 10:00, ''",
        "0,   480, 10:00, 09:59, calls[1].arrival time-backwards",
        "0,   480,      , 10:20, calls[0].departure departure-needed",
        "0,   480, 10:00,      , calls[1].arrival arrival-needed",
        "1,   480, 10:00, 10:20, calls[0].atMeasure first-call-at-start",
        "0,   479, 10:00, 10:20, calls[1].atMeasure last-call-at-end",
        "0,   481, 10:00, 10:20, calls[1].atMeasure call-off-leg;calls[1].atMeasure last-call-at-end",
        "0,   NaN, 10:00, 10:20, calls[1].atMeasure call-off-leg;calls[1].atMeasure last-call-at-end"
    })
    void looksAtPlaceAndTimeOfTheEnds(double first, double last, String departs, String arrives, String expected) {
        List<Call> calls = List.of(call(first, "Anfang", null, departs), call(last, "Mitte", arrives, null));

        assertThat(String.join(";", problems(train(LEGS, calls)))).isEqualTo(expected);
    }

    @Test
    void wantsCallsInRunningOrder() {
        List<Call> calls = List.of(
                call(0, "Anfang", null, "10:00"),
                call(200, "Two", "10:05", "10:05"),
                call(100, "One", "10:06", "10:06"),
                call(480, "Mitte", "10:20", null));
        assertThat(problems(train(LEGS, calls))).containsExactly("calls[2].atMeasure calls-out-of-order");

        List<Call> fallingCalls = List.of(
                call(480, "Mitte", null, "10:00"),
                call(200, "Two", "10:05", "10:05"),
                call(0, "Anfang", "10:20", null));
        assertThat(problems(train(List.of(leg("MAIN", 480, 0)), fallingCalls))).isEmpty();
    }

    @Test
    void wantsAStopAtTheEndsAndForWater() {
        List<Call> calls = List.of(
                new Call(1, 0, "Anfang", false, null, WorkingFixtures.utc("10:00"), false),
                new Call(1, 200, "Two", false, null, WorkingFixtures.utc("10:05"), true),
                new Call(2, 480, "x".repeat(81), true, WorkingFixtures.utc("10:20"), null, false));

        assertThat(problems(train(LEGS, calls)))
                .containsExactly(
                        "calls[0].stops ends-must-stop",
                        "calls[1].takesWater water-needs-stop",
                        "calls[2].place text-too-long",
                        "calls[2].legNumber leg-unknown",
                        "calls[2].atMeasure last-call-at-end");
    }

    @ParameterizedTest
    @CsvSource({
        "225,  0.75, 4000, 90, ''",
        "1,    0,    0,    0,  ''",
        "320,  1,    ,     ,   ''",
        "0.9,  0.75, ,     ,   engines[0].pressurePsi out-of-range",
        "321,  0.75, ,     ,   engines[0].pressurePsi out-of-range",
        "NaN,  0.75, ,     ,   engines[0].pressurePsi out-of-range",
        "225,  1.01, ,     ,   engines[0].glassShare out-of-range",
        "225, -0.01, ,     ,   engines[0].glassShare out-of-range",
        "225,  0.75, -1,   ,   engines[0].waterGallons out-of-range",
        "225,  0.75, ,   501,  engines[0].coalCwt out-of-range"
    })
    void boundsTheFiguresOfAnEngine(double psi, double glass, Double water, Double coal, String expected) {
        EngineTurn engine = new EngineTurn("612", EnginePosition.FRONT, null, null, psi, glass, water, coal);

        assertThat(String.join(";", problems(with(train(), List.of(engine), List.of()))))
                .isEqualTo(expected);
    }

    @Test
    void knowsTheEnginesAndWhereTheyAssist() {
        assertThat(engines(engine("9999", null, null))).containsExactly("engines[0].engineNumber engine-unknown");
        assertThat(engines(engine("612", null, null), engine("612", null, null)))
                .containsExactly("engines[1].engineNumber engine-twice");
        assertThat(engines(engine("612", null, null), engine("613", "Anfang", "Mitte")))
                .isEmpty();
        assertThat(engines(engine("612", null, null), engine("613", "Elsewhere", null)))
                .containsExactly("engines[1].fromPlace place-not-called");
        assertThat(engines(engine("612", null, null), engine("613", "Mitte", "Anfang")))
                .containsExactly("engines[1].toPlace places-out-of-order");
        assertThat(engines(engine("612", "Anfang", null)))
                .containsExactly("engines[0].fromPlace train-engine-whole-path");
    }

    /** A boiler is not worked above its certificate; half a pound is how a gauge is read. */
    @ParameterizedTest
    @CsvSource({"225, ''", "225.5, ''", "226, engines[1].pressurePsi pressure-above"})
    void keepsABoilerToItsWorkingPressure(double psi, String expected) {
        EngineTurn second = new EngineTurn("613", EnginePosition.FRONT, "Anfang", "Mitte", psi, 0.7, null, null);

        assertThat(String.join(";", engines(engine("612", null, null), second))).isEqualTo(expected);
    }

    @Test
    void knowsThePeopleAndTheirEngine() {
        assertThat(crew(slot("T-9", Post.DRIVER, null, null))).containsExactly("crew[0].staffNumber person-unknown");
        assertThat(crew(slot("T-1", Post.FIREMAN, null, null))).containsExactly("crew[0].role post-not-held");
        assertThat(crew(slot("T-1", Post.DRIVER, "09:00", "09:00")))
                .containsExactly("crew[0].bookOff book-off-before-on");
        assertThat(crew(new CrewSlot("T-1", Post.DRIVER, "613", null, null, null, null)))
                .containsExactly("crew[0].engineNumber slot-engine-unknown");
        assertThat(crew(new CrewSlot("T-1", Post.DRIVER, "612", "Mitte", "Nowhere", null, null)))
                .containsExactly("crew[0].toPlace place-not-called");
    }

    /** On the way a person may change from one engine or role to another, but is never in two places. */
    @Test
    void givesAPersonOneThingToDoAtATime() {
        List<Call> calls = List.of(
                call(0, "Anfang", null, "10:00"),
                call(200, "Two", "10:05", "10:05"),
                call(480, "Mitte", "10:20", null));
        CrewSlot first = new CrewSlot("T-1", Post.DRIVER, "612", null, "Two", null, null);
        CrewSlot after = new CrewSlot("T-1", Post.DRIVER, "612", "Two", null, null, null);
        CrewSlot whole = new CrewSlot("T-1", Post.DRIVER, "612", null, null, null, null);
        TrainDraft train = train(LEGS, calls);

        assertThat(problems(with(train, train.engines(), List.of(first, after))))
                .isEmpty();
        assertThat(problems(with(train, train.engines(), List.of(after, first))))
                .isEmpty();
        assertThat(problems(with(train, train.engines(), List.of(whole, after))))
                .containsExactly("crew[1].staffNumber person-twice");
        assertThat(problems(with(train, train.engines(), List.of(first, after, whole))))
                .containsExactly("crew[2].staffNumber person-twice");
    }

    @Test
    void wantsAReasonOfAFewWords() {
        assertThat(TrainRules.problemsOfReason(" ")).extracting("code").containsExactly("reason-needed");
        assertThat(TrainRules.problemsOfReason("x".repeat(401)))
                .extracting("code")
                .containsExactly("text-too-long");
        assertThat(TrainRules.problemsOfReason("x".repeat(400))).isEmpty();
    }

    private static List<String> engines(EngineTurn... engines) {
        return problems(with(train(), List.of(engines), List.of()));
    }

    private static List<String> crew(CrewSlot slot) {
        return problems(with(train(), train().engines(), List.of(slot)));
    }

    private static TrainDraft head(String code, String title, String weather, String formation) {
        TrainDraft train = train();
        return new TrainDraft(
                code,
                title,
                train.day(),
                train.kind(),
                formation,
                train.rail(),
                weather,
                true,
                false,
                train.legs(),
                train.calls(),
                train.engines(),
                train.crew());
    }

    private static List<String> problems(TrainDraft draft) {
        return TrainRules.problemsOf(draft, KNOWN).stream()
                .map(problem -> problem.list() + (problem.index() < 0 ? "" : "[" + problem.index() + "]") + "."
                        + problem.field() + " " + problem.code())
                .toList();
    }
}
