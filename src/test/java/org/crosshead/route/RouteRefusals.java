package org.crosshead.route;

import java.util.List;

/** Refusals as the services give them, for tests of pages. */
public final class RouteRefusals {

    private RouteRefusals() {}

    public static RouteRefusedException of(String list, int index, String field, String code, Object... args) {
        return new RouteRefusedException(List.of(new RouteProblem(list, index, field, code, List.of(args))));
    }

    public static RouteChangedException changed(String routeCode) {
        return new RouteChangedException(routeCode);
    }
}
