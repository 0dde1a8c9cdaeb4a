package org.crosshead.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.route.Direction;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainRefusedException.Problem;
import org.springframework.stereotype.Component;

/** Whether the legs of a path lie on stored routes and join end to end. */
@Component
final class PathRules {

    private static final double SAME_PLACE_M = 1;

    private final Routes routes;

    PathRules(Routes routes) {
        this.routes = routes;
    }

    List<Problem> problemsOf(TrainDraft draft) {
        List<Problem> problems = new ArrayList<>();
        List<JunctionDraft> junctions = routes.junctions();
        for (int i = 0; i < draft.legs().size(); i++) {
            Leg leg = draft.legs().get(i);
            Optional<RouteDraft> route = routes.current(leg.routeCode()).map(RouteRevision::content);
            if (route.isEmpty()) {
                problems.add(problem(i, "routeCode", "route-unknown", leg.routeCode()));
                continue;
            }
            onRoute(problems, i, leg, route.get());
            if (i > 0 && !joins(draft.legs().get(i - 1), leg, route.get(), junctions)) {
                problems.add(problem(i, "fromMeasure", "path-broken", i + 1, i));
            }
        }
        return problems;
    }

    private static void onRoute(List<Problem> problems, int index, Leg leg, RouteDraft route) {
        if (!route.lines().contains(leg.line())) {
            problems.add(problem(
                    index, "line", "line-unknown", leg.routeCode(), leg.line(), String.join(", ", route.lines())));
        }
        MeasureUnit unit = route.measureUnit();
        String from = Measures.exact(leg.fromMeasure(), unit);
        if (Math.min(leg.fromMeasure(), leg.toMeasure()) < route.fromMeasure()
                || Math.max(leg.fromMeasure(), leg.toMeasure()) > route.toMeasure()) {
            problems.add(problem(
                    index,
                    isOff(leg.fromMeasure(), route) ? "fromMeasure" : "toMeasure",
                    "leg-off-route",
                    leg.routeCode(),
                    Measures.exact(route.fromMeasure(), unit),
                    Measures.exact(route.toMeasure(), unit)));
        }
        if (leg.toMeasure() == leg.fromMeasure()) {
            problems.add(problem(index, "toMeasure", "leg-empty", from));
        } else if (leg.toMeasure() > leg.fromMeasure() != (leg.direction() == Direction.RISING)) {
            problems.add(problem(index, "direction", "leg-backwards", from, Measures.exact(leg.toMeasure(), unit)));
        }
    }

    private static boolean isOff(double measure, RouteDraft route) {
        return measure < route.fromMeasure() || measure > route.toMeasure();
    }

    private static boolean joins(Leg before, Leg leg, RouteDraft route, List<JunctionDraft> junctions) {
        if (before.routeCode().equals(leg.routeCode())) {
            return route.measureUnit().metres(Math.abs(before.toMeasure() - leg.fromMeasure())) < SAME_PLACE_M;
        }
        return junctions.stream()
                .anyMatch(junction -> joins(
                                junction.routeCode(),
                                junction.atMeasure(),
                                junction.otherRouteCode(),
                                junction.otherMeasure(),
                                before,
                                leg)
                        || joins(
                                junction.otherRouteCode(),
                                junction.otherMeasure(),
                                junction.routeCode(),
                                junction.atMeasure(),
                                before,
                                leg));
    }

    private static boolean joins(
            String route, double measure, String otherRoute, double otherMeasure, Leg before, Leg leg) {
        return before.routeCode().equals(route)
                && before.toMeasure() == measure
                && leg.routeCode().equals(otherRoute)
                && leg.fromMeasure() == otherMeasure;
    }

    private static Problem problem(int index, String field, String code, Object... args) {
        return new Problem("legs", index, field, code, List.of(args));
    }
}
