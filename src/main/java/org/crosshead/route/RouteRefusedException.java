package org.crosshead.route;

import java.util.List;
import java.util.stream.Collectors;

/** A route, junction or restriction can't be stored as entered. Nothing was stored. */
public final class RouteRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<RouteProblem> problems;

    RouteRefusedException(List<RouteProblem> problems) {
        super(problems.stream().map(RouteProblem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<RouteProblem> problems() {
        return problems;
    }

    static void throwIfAny(List<RouteProblem> problems) {
        if (!problems.isEmpty()) {
            throw new RouteRefusedException(problems);
        }
    }
}
