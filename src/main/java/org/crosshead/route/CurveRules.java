package org.crosshead.route;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.route.RouteDraft.CurveLength;

/** Curves have a radius that rails can be laid to, and do not overlap. */
final class CurveRules {

    private static final String LIST = "curves";
    private static final double RADIUS_MIN_M = 40;
    private static final double RADIUS_MAX_M = 50_000;

    private CurveRules() {}

    static void check(List<CurveLength> lengths, Extent extent, Problems problems) {
        boolean inOrder = true;
        for (int i = 0; i < lengths.size(); i++) {
            CurveLength length = lengths.get(i);
            problems.at(LIST, i);
            inOrder &= extent.checkLength(length.fromMeasure(), length.toMeasure(), problems);
            double radiusM = length.radiusUnit().metres(length.radius());
            problems.refuseIf(
                    !(radiusM >= RADIUS_MIN_M && radiusM <= RADIUS_MAX_M),
                    "radius",
                    "radius",
                    RADIUS_MIN_M,
                    RADIUS_MAX_M);
            problems.origin(length.origin(), length.note());
        }
        if (inOrder) {
            checkApart(lengths, extent, problems);
        }
    }

    private static void checkApart(List<CurveLength> lengths, Extent extent, Problems problems) {
        List<Integer> order = IntStream.range(0, lengths.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> lengths.get(i).fromMeasure()))
                .toList();
        double reached = extent.fromMeasure();
        for (int index : order) {
            CurveLength length = lengths.get(index);
            boolean apart = length.fromMeasure() > reached || Extent.same(length.fromMeasure(), reached);
            problems.at(LIST, index)
                    .refuseIf(
                            !apart, "fromMeasure", "overlap", extent.text(length.fromMeasure()), extent.text(reached));
            reached = Math.max(reached, length.toMeasure());
        }
    }
}
