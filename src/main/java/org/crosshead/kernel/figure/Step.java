package org.crosshead.kernel.figure;

import java.util.List;

/**
 * One step of how a figure came about.
 *
 * @param kind what the step does
 * @param name key of the step, worded on the page
 * @param expression arithmetic over the symbols of the inputs: numbers, {@code + - * / ^ ( )}, {@code sqrt min max ceil floor}
 * @param inputs every symbol of the expression, each once
 * @param result value of the expression
 * @param unit unit of the result
 * @param source key in docs/sources.md of the formula, or {@code policy:<key>} or {@code estimate:<rule>}
 */
public record Step(
        StepKind kind, String name, String expression, List<Input> inputs, double result, String unit, String source) {

    public Step {
        inputs = List.copyOf(inputs);
    }
}
