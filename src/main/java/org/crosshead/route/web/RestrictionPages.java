package org.crosshead.route.web;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.crosshead.route.Measures;
import org.crosshead.route.Restriction;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.route.Scope;
import org.springframework.stereotype.Component;

/** Puts temporary restrictions into words. */
@Component
class RestrictionPages {

    private final Restrictions restrictions;
    private final Routes routes;
    private final RouteWords words;
    private final Clock clock;

    RestrictionPages(Restrictions restrictions, Routes routes, RouteWords words, Clock clock) {
        this.restrictions = restrictions;
        this.routes = routes;
        this.words = words;
        this.clock = clock;
    }

    /** How a restriction stands at this moment. */
    enum State {
        IN_FORCE,
        TO_COME,
        PAST,
        WITHDRAWN
    }

    /** A restriction in a list. */
    record Row(
            long id,
            String number,
            String routeCode,
            String place,
            String limit,
            String direction,
            String span,
            State state,
            String stateText,
            String reason) {

        public boolean mayBeWithdrawn() {
            return state == State.IN_FORCE || state == State.TO_COME;
        }
    }

    /** Returns all of them: those that hold, those to come, then the rest. */
    List<Row> all() {
        Map<String, RouteSummary> byCode =
                routes.all().stream().collect(Collectors.toMap(RouteSummary::code, one -> one));
        return restrictions.all().stream()
                .map(one -> row(one, byCode))
                .sorted(Comparator.comparing(Row::state))
                .toList();
    }

    /** Returns those that hold on a route now or later. */
    List<Row> heldOn(String routeCode) {
        return all().stream()
                .filter(one -> one.routeCode().equals(routeCode) && one.mayBeWithdrawn())
                .toList();
    }

    private Row row(Restriction restriction, Map<String, RouteSummary> routesByCode) {
        RestrictionDraft draft = restriction.draft();
        State state = state(restriction, clock.instant());
        return new Row(
                restriction.id(),
                draft.number(),
                draft.routeCode(),
                place(draft, routesByCode),
                words.of("route.speed." + draft.limitUnit(), Numbers.typed(draft.limit())),
                direction(draft),
                words.of("route.from-to", words.moment(draft.firstMoment()), words.moment(draft.lastMoment())),
                state,
                words.of(state),
                draft.reason());
    }

    private String place(RestrictionDraft draft, Map<String, RouteSummary> routesByCode) {
        RouteSummary route = routesByCode.get(draft.routeCode());
        return route == null
                ? ""
                : words.of(
                        "route.from-to",
                        Measures.exact(draft.fromMeasure(), route.measureUnit()),
                        Measures.exact(draft.toMeasure(), route.measureUnit()));
    }

    private String direction(RestrictionDraft draft) {
        if (draft.scope() == Scope.BOTH) {
            return words.of("route.both-directions");
        }
        return routes.current(draft.routeCode())
                .map(RouteRevision::content)
                .map(route -> draft.scope() == Scope.RISING ? route.risingName() : route.fallingName())
                .orElse("");
    }

    private static State state(Restriction restriction, Instant now) {
        if (restriction.withdrawnAt() != null) {
            return State.WITHDRAWN;
        }
        if (restriction.draft().lastMoment().isBefore(now)) {
            return State.PAST;
        }
        return restriction.draft().firstMoment().isAfter(now) ? State.TO_COME : State.IN_FORCE;
    }
}
