package org.crosshead.route;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.route.RouteDraft.GradientLength;

/** Gradients are possible ones and join up: each begins where the one before ends, from one end of the route to the other. */
final class GradientRules {

    static final String LIST = "gradients";

    /** Steeper than this no engine climbs by adhesion: 1 in 8, which is 125 per mille. */
    private static final double ONE_IN_MIN = 8;

    private static final double ONE_IN_MAX = 100_000;
    private static final double PER_MILLE_MAX = 125;

    private GradientRules() {}

    /** Returns whether every length by itself was in order. */
    static boolean check(List<GradientLength> lengths, Extent extent, Problems problems) {
        boolean inOrder = true;
        for (int i = 0; i < lengths.size(); i++) {
            GradientLength length = lengths.get(i);
            problems.at(LIST, i);
            inOrder &= extent.checkLength(length.fromMeasure(), length.toMeasure(), problems);
            value(length, problems);
            problems.origin(length.origin(), length.note());
        }
        return inOrder;
    }

    private static void value(GradientLength length, Problems problems) {
        double size = Math.abs(length.value());
        switch (length.notation()) {
            case ONE_IN -> {
                if (!problems.refuseIf(size == 0, "value", "one-in-zero")) {
                    problems.refuseIf(
                            !(size >= ONE_IN_MIN && size <= ONE_IN_MAX), "value", "one-in", ONE_IN_MIN, ONE_IN_MAX);
                }
            }
            case PER_MILLE -> problems.refuseIf(!(size <= PER_MILLE_MAX), "value", "per-mille", PER_MILLE_MAX);
            case LEVEL -> {
                // its value is not looked at
            }
        }
    }

    static void checkCover(List<GradientLength> lengths, Extent extent, Problems problems) {
        if (problems.at(LIST, -1).refuseIf(lengths.isEmpty(), "", "no-gradients")) {
            return;
        }
        List<Integer> order = IntStream.range(0, lengths.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> lengths.get(i).fromMeasure()))
                .toList();
        double reached = extent.fromMeasure();
        for (int index : order) {
            GradientLength length = lengths.get(index);
            problems.at(LIST, index);
            join(reached, length.fromMeasure(), extent, problems);
            reached = Math.max(reached, length.toMeasure());
        }
        problems.refuseIf(
                !Extent.same(reached, extent.toMeasure()),
                "toMeasure",
                "gap",
                extent.text(reached),
                extent.text(extent.toMeasure()));
    }

    private static void join(double reached, double from, Extent extent, Problems problems) {
        if (!Extent.same(reached, from)) {
            problems.refuse("fromMeasure", from > reached ? "gap" : "overlap", ends(reached, from, extent));
        }
    }

    private static Object[] ends(double one, double other, Extent extent) {
        return new Object[] {extent.text(Math.min(one, other)), extent.text(Math.max(one, other))};
    }
}
