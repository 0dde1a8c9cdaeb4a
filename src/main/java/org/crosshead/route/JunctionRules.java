package org.crosshead.route;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A junction lies on two different routes, and is not known already. */
final class JunctionRules {

    private JunctionRules() {}

    static List<RouteProblem> problems(
            JunctionDraft draft, Function<String, Optional<Extent>> extents, List<JunctionDraft> known) {
        Problems problems = new Problems().name("name", draft.name(), Problems.NAME_LENGTH_MAX);
        problems.refuseIf(draft.routeCode().equals(draft.otherRouteCode()), "otherRouteCode", "junction-of-one-route");
        place("routeCode", draft.routeCode(), "atMeasure", draft.atMeasure(), extents, problems);
        place("otherRouteCode", draft.otherRouteCode(), "otherMeasure", draft.otherMeasure(), extents, problems);
        problems.refuseIf(known.stream().anyMatch(one -> alike(one, draft)), "atMeasure", "junction-twice");
        return problems.found();
    }

    /** Returns what a new extent of a route leaves outside. */
    static List<RouteProblem> left(RouteDraft draft, List<JunctionDraft> known) {
        Problems problems = new Problems();
        Extent extent = Extent.of(draft);
        for (JunctionDraft junction : known) {
            boolean outside = isLeft(draft, extent, junction.routeCode(), junction.atMeasure())
                    || isLeft(draft, extent, junction.otherRouteCode(), junction.otherMeasure());
            problems.refuseIf(outside, "toMeasure", "junction-left", junction.name());
        }
        return problems.found();
    }

    private static void place(
            String routeField,
            String code,
            String field,
            double measure,
            Function<String, Optional<Extent>> extents,
            Problems problems) {
        extents.apply(code)
                .ifPresentOrElse(
                        extent -> extent.checkPlace(field, measure, problems),
                        () -> problems.refuse(routeField, "route-unknown", code));
    }

    private static boolean isLeft(RouteDraft draft, Extent extent, String code, double measure) {
        return draft.code().equals(code) && !extent.holds(measure);
    }

    private static boolean alike(JunctionDraft known, JunctionDraft draft) {
        return same(known, draft) || same(turned(known), draft);
    }

    private static JunctionDraft turned(JunctionDraft junction) {
        return new JunctionDraft(
                junction.name(),
                junction.otherRouteCode(),
                junction.otherMeasure(),
                junction.routeCode(),
                junction.atMeasure());
    }

    private static boolean same(JunctionDraft known, JunctionDraft draft) {
        return isAt(known.routeCode(), known.atMeasure(), draft.routeCode(), draft.atMeasure())
                && isAt(known.otherRouteCode(), known.otherMeasure(), draft.otherRouteCode(), draft.otherMeasure());
    }

    private static boolean isAt(String code, double measure, String otherCode, double otherMeasure) {
        return code.equals(otherCode) && Extent.same(measure, otherMeasure);
    }
}
