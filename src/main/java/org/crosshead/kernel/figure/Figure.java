package org.crosshead.kernel.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A value that can say how it came about. Unless its last step is of kind RUN, that step's result is the value.
 *
 * @param value the value in {@code unit}, never NaN
 * @param unit unit as shown
 * @param steps in the order of working, at least one
 */
public record Figure(double value, String unit, List<Step> steps) {

    public Figure {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a figure must have at least one step");
        }
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("a figure must have a value, but was NaN");
        }
    }

    /** Returns a figure that is the result of its last step. */
    public static Figure of(List<Step> steps) {
        Step last = steps.get(steps.size() - 1);
        return new Figure(last.result(), last.unit(), steps);
    }

    /** Returns this figure taken one step further. */
    public Figure then(Step step) {
        List<Step> more = new ArrayList<>(steps);
        more.add(step);
        return of(more);
    }
}
