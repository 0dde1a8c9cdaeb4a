package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.crosshead.diagram.StripModel.Limit;

/** The lowest of the limits at each place, as steps. */
final class Ceiling {

    private Ceiling() {}

    /** A stretch over which one limit binds. */
    record Step(double fromM, double toM, Limit limit) {}

    static List<Step> over(List<Limit> limits, double fromM, double toM) {
        TreeSet<Double> edges = new TreeSet<>(List.of(fromM, toM));
        for (Limit limit : limits) {
            edges.add(Math.min(Math.max(limit.fromM(), fromM), toM));
            edges.add(Math.min(Math.max(limit.toM(), fromM), toM));
        }
        List<Double> cuts = List.copyOf(edges);
        List<Step> steps = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = cuts.get(i);
            lowest(limits, from, to).ifPresent(limit -> add(steps, new Step(from, to, limit)));
        }
        return steps;
    }

    private static Optional<Limit> lowest(List<Limit> limits, double fromM, double toM) {
        Limit lowest = null;
        for (Limit limit : limits) {
            boolean covers = limit.fromM() < toM && limit.toM() > fromM;
            if (covers && (lowest == null || limit.speed() < lowest.speed())) {
                lowest = limit;
            }
        }
        return Optional.ofNullable(lowest);
    }

    private static void add(List<Step> steps, Step step) {
        Step last = steps.isEmpty() ? null : steps.get(steps.size() - 1);
        boolean goesOn = last != null
                && last.toM() == step.fromM()
                && last.limit().speed() == step.limit().speed()
                && last.limit().temporary() == step.limit().temporary();
        if (last != null && goesOn) {
            steps.set(steps.size() - 1, new Step(last.fromM(), step.toM(), last.limit()));
        } else {
            steps.add(step);
        }
    }
}
