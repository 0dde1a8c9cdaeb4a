package org.crosshead.kernel.figure;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Checks that {@link Recompute} passes a sound figure and fails each kind of unsound one. */
class RecomputeTests {

    private static Step first(double result) {
        return new Step(
                StepKind.FORMULA,
                "speed-head",
                "v^2 / (2 * a)",
                List.of(new Input("v", 20, "m/s", "run:speed"), new Input("a", 0.5, "m/s2", "data:brake")),
                result,
                "m",
                "test");
    }

    private static Step margin(double takenM) {
        return new Step(
                StepKind.MARGIN,
                "margin",
                "s * f",
                List.of(new Input("s", takenM, "m", "step:speed-head"), new Input("f", 1.1, "", "policy:margin")),
                takenM * 1.1,
                "m",
                "policy:margin");
    }

    private static Step withSource(String source) {
        return new Step(StepKind.GIVEN, "given", "s", List.of(new Input("s", 1, "m", source)), 1, "m", "test");
    }

    @Test
    void passesASoundFigure() {
        assertThatCode(() -> Recompute.check(Figure.of(List.of(first(400), margin(400)))))
                .doesNotThrowAnyException();
    }

    @Test
    void failsAWrongResult() {
        assertThatThrownBy(() -> Recompute.check(Figure.of(List.of(first(400.00001)))))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("speed-head");
    }

    @Test
    void failsABrokenChain() {
        assertThatThrownBy(() -> Recompute.check(Figure.of(List.of(first(400), margin(399)))))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("s in step margin");
    }

    @Test
    void failsAMissingEarlierStep() {
        assertThatThrownBy(() -> Recompute.check(Figure.of(List.of(withSource("step:nowhere")))))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void failsAValueThatIsNotTheLastStep() {
        assertThatThrownBy(() -> Recompute.check(new Figure(401, "m", List.of(first(400)))))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void failsAnUnusedInput() {
        Step idle = new Step(
                StepKind.FORMULA,
                "idle",
                "a",
                List.of(new Input("a", 1, "m", "data:a"), new Input("b", 2, "m", "data:b")),
                1,
                "m",
                "test");
        assertThatThrownBy(() -> Recompute.check(Figure.of(List.of(idle)))).isInstanceOf(AssertionError.class);
    }
}
