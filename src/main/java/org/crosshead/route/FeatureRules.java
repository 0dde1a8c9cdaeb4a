package org.crosshead.route;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.crosshead.route.RouteDraft.Feature;
import org.jspecify.annotations.Nullable;

/** Features lie on the route, on one of its lines, and have the name by which crews know them. */
final class FeatureRules {

    private static final String LIST = "features";
    private static final double SIGHTING_MAX_M = 10_000;
    private static final double PLATFORM_MAX_M = 2_000;
    private static final Set<FeatureKind> NAMED = EnumSet.of(
            FeatureKind.STATION,
            FeatureKind.TIMING_POINT,
            FeatureKind.SIGNAL,
            FeatureKind.LANDMARK,
            FeatureKind.HAZARD);

    private FeatureRules() {}

    static void check(RouteDraft draft, Extent extent, Problems problems) {
        for (int i = 0; i < draft.features().size(); i++) {
            Feature feature = draft.features().get(i);
            problems.at(LIST, i);
            place(feature, extent, problems);
            words(feature, draft.lines(), problems);
            lengths(feature, problems);
        }
    }

    private static void place(Feature feature, Extent extent, Problems problems) {
        Double to = feature.toMeasure();
        boolean outside = extent.checkPlace("atMeasure", feature.atMeasure(), problems);
        if (to == null) {
            return;
        }
        outside |= extent.checkPlace("toMeasure", to, problems);
        if (!outside) {
            problems.refuseIf(
                    !(to > feature.atMeasure()),
                    "toMeasure",
                    "backwards",
                    extent.text(feature.atMeasure()),
                    extent.text(to));
        }
    }

    private static void words(Feature feature, List<String> lines, Problems problems) {
        String line = feature.line();
        if (NAMED.contains(feature.kind())) {
            problems.name("name", feature.name(), Problems.NAME_LENGTH_MAX);
        } else {
            problems.optionalName("name", feature.name(), Problems.NAME_LENGTH_MAX);
        }
        problems.optionalName("detail", feature.detail(), Problems.DETAIL_LENGTH_MAX);
        problems.refuseIf(
                line != null && !lines.contains(line),
                "line",
                "line-unknown",
                line == null ? "" : line,
                String.join(", ", lines));
        problems.origin(feature.origin(), feature.note());
    }

    private static void lengths(Feature feature, Problems problems) {
        LengthUnit unit = feature.lengthUnit();
        Double sighting = feature.sighting();
        Double length = feature.length();
        if (unit == null) {
            problems.refuseIf(sighting != null || length != null, "lengthUnit", "unit-missing");
            return;
        }
        problems.refuseIf(
                sighting != null && !(sighting >= 0 && unit.metres(sighting) <= SIGHTING_MAX_M),
                "sighting",
                "sighting",
                max(SIGHTING_MAX_M, unit));
        problems.refuseIf(
                length != null && !(length > 0 && unit.metres(length) <= PLATFORM_MAX_M),
                "length",
                "platform",
                max(PLATFORM_MAX_M, unit));
    }

    private static double max(double metres, @Nullable LengthUnit unit) {
        return unit == null ? metres : Math.floor(metres / unit.metres(1));
    }
}
