package org.crosshead.kernel.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Works a figure out again from the inputs that it shows. */
public final class Recompute {

    private static final double RELATIVE = 1e-9;
    private static final String STEP = "step:";

    private Recompute() {}

    /**
     * Asserts that each step's result follows from its inputs, that an input taken from an earlier step in the same unit is that step's
     * result, that every input is used, and that the value is the last step's result unless that is read from the run.
     */
    public static void check(Figure figure) {
        Map<String, Step> earlier = new HashMap<>();
        for (Step step : figure.steps()) {
            checkStep(step);
            checkChain(step, earlier);
            earlier.put(step.name(), step);
        }
        Step last = figure.steps().get(figure.steps().size() - 1);
        if (last.kind() != StepKind.RUN) {
            assertThat(figure.value()).as("value of the figure").isEqualTo(last.result());
            assertThat(figure.unit()).as("unit of the figure").isEqualTo(last.unit());
        }
    }

    /** Asserts that one step's result follows from its inputs. */
    public static void checkStep(Step step) {
        Map<String, Double> symbols = new HashMap<>();
        for (Input input : step.inputs()) {
            assertThat(symbols.put(input.symbol(), input.value()))
                    .as("symbol %s of step %s given twice", input.symbol(), step.name())
                    .isNull();
        }
        double value = Expression.value(step.expression(), symbols);
        assertThat(step.result())
                .as("step %s: %s with %s", step.name(), step.expression(), symbols)
                .isCloseTo(value, within(RELATIVE * Math.abs(value) + rounding(step)));
        List<String> used = Expression.symbols(step.expression(), symbols);
        assertThat(used).as("symbols of step %s", step.name()).containsExactlyInAnyOrderElementsOf(symbols.keySet());
    }

    /**
     * A balance read from the run may end near nothing, and over half a second a boiler's stored heat is the small difference of two
     * numbers of 10 GJ: there as much of the largest input is allowed for as otherwise of the result.
     */
    private static double rounding(Step step) {
        double largest = step.inputs().stream()
                .mapToDouble(input -> Math.abs(input.value()))
                .max()
                .orElse(0);
        return step.kind() == StepKind.RUN ? RELATIVE * largest : Double.MIN_VALUE;
    }

    private static void checkChain(Step step, Map<String, Step> earlier) {
        for (Input input : step.inputs()) {
            if (input.source().startsWith(STEP)) {
                String name = input.source().substring(STEP.length());
                Step from = earlier.get(name);
                assertThat(earlier).as("steps before %s", step.name()).containsKey(name);
                if (from != null && from.unit().equals(input.unit())) {
                    assertThat(input.value())
                            .as("%s in step %s", input.symbol(), step.name())
                            .isCloseTo(from.result(), within(RELATIVE * Math.abs(from.result())));
                }
            }
        }
    }
}
