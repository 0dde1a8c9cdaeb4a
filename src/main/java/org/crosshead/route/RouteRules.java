package org.crosshead.route;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a route must be like to be stored. */
final class RouteRules {

    static final int ENTRIES_MAX = 5000;
    static final int LINES_MAX = 20;

    /** Longest measure that a route can reach: 1000 miles or 1600 km. */
    private static final double CHAINS_MAX = 80_000;

    private static final double KILOMETRES_MAX = 1_600;

    private final RouteDraft draft;
    private final Extent extent;
    private final Problems problems = new Problems();

    private RouteRules(RouteDraft draft) {
        this.draft = draft;
        this.extent = Extent.of(draft);
    }

    static List<RouteProblem> problems(RouteDraft draft, String reason) {
        RouteRules rules = new RouteRules(draft);
        rules.problems.reason(reason);
        rules.head();
        rules.lines();
        if (rules.extent()) {
            rules.lists();
        }
        return rules.problems.found();
    }

    private void head() {
        problems.code("code", draft.code())
                .name("name", draft.name(), Problems.NAME_LENGTH_MAX)
                .name("risingName", draft.risingName(), Problems.SHORT_NAME_LENGTH_MAX)
                .name("fallingName", draft.fallingName(), Problems.SHORT_NAME_LENGTH_MAX);
        problems.refuseIf(
                !draft.risingName().isBlank() && draft.risingName().equalsIgnoreCase(draft.fallingName()),
                "fallingName",
                "directions-alike",
                draft.fallingName());
    }

    private boolean extent() {
        double max = draft.measureUnit() == MeasureUnit.CHAINS ? CHAINS_MAX : KILOMETRES_MAX;
        double from = draft.fromMeasure();
        double to = draft.toMeasure();
        boolean wrong = problems.refuseIf(!(from >= 0 && from <= max), "fromMeasure", "measure", extent.text(max));
        wrong |= problems.refuseIf(!(to >= 0 && to <= max), "toMeasure", "measure", extent.text(max));
        return !wrong
                && !problems.refuseIf(
                        !(to > from) || Extent.same(from, to),
                        "toMeasure",
                        "backwards",
                        extent.text(from),
                        extent.text(to));
    }

    private void lines() {
        problems.refuseIf(draft.lines().isEmpty(), "lines", "no-lines");
        problems.refuseIf(draft.lines().size() > LINES_MAX, "lines", "too-many", LINES_MAX);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < draft.lines().size(); i++) {
            String line = draft.lines().get(i);
            problems.at("lines", i).name("", line, Problems.SHORT_NAME_LENGTH_MAX);
            problems.refuseIf(!names.add(line), "", "line-twice", line);
        }
        problems.at("", -1);
    }

    private void lists() {
        if (!tooMany("gradients", draft.gradients()) && GradientRules.check(draft.gradients(), extent, problems)) {
            GradientRules.checkCover(draft.gradients(), extent, problems);
        }
        if (!tooMany("curves", draft.curves())) {
            CurveRules.check(draft.curves(), extent, problems);
        }
        if (!tooMany("limits", draft.limits())) {
            limits();
        }
        if (!tooMany("features", draft.features())) {
            FeatureRules.check(draft, extent, problems);
        }
    }

    private void limits() {
        for (int i = 0; i < draft.limits().size(); i++) {
            RouteDraft.LimitLength length = draft.limits().get(i);
            problems.at("limits", i);
            extent.checkLength(length.fromMeasure(), length.toMeasure(), problems);
            problems.limit(length.limit(), length.limitUnit()).origin(length.origin(), length.note());
        }
    }

    private boolean tooMany(String list, List<?> entries) {
        return problems.at(list, -1).refuseIf(entries.size() > ENTRIES_MAX, "", "too-many", ENTRIES_MAX);
    }
}
