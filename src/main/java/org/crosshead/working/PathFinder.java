package org.crosshead.working;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.crosshead.route.Direction;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.working.TrainDraft.Leg;

/**
 * The shortest way from one station to another over the stored routes and their junctions, as a first draft for a person to
 * correct: it does not know which way the points of a junction lie.
 */
final class PathFinder {

    private final Map<String, RouteDraft> routes = new HashMap<>();
    private final List<JunctionDraft> junctions;

    PathFinder(List<RouteDraft> routes, List<JunctionDraft> junctions) {
        routes.forEach(route -> this.routes.put(route.code(), route));
        this.junctions = List.copyOf(junctions);
    }

    /** A spot on a route. */
    record Spot(String routeCode, double measure) {}

    private record Reached(Spot spot, double distanceM) {}

    /** Returns where a station or timing point of this name lies; the first by the code of its route where there are several. */
    Optional<Spot> spotOf(String place) {
        return routes.values().stream()
                .sorted(Comparator.comparing(RouteDraft::code))
                .flatMap(route -> route.features().stream()
                        .filter(feature -> isTimed(feature) && feature.name().equals(place))
                        .map(feature -> new Spot(route.code(), feature.atMeasure())))
                .findFirst();
    }

    static boolean isTimed(Feature feature) {
        return feature.kind() == FeatureKind.STATION || feature.kind() == FeatureKind.TIMING_POINT;
    }

    /** Returns the legs of the shortest way, or nothing if there is none. */
    Optional<List<Leg>> find(Spot from, Spot to) {
        Map<Spot, Double> distances = new HashMap<>();
        Map<Spot, Spot> cameFrom = new HashMap<>();
        Set<Spot> done = new HashSet<>();
        PriorityQueue<Reached> open = new PriorityQueue<>(Comparator.comparingDouble(Reached::distanceM)
                .thenComparing(reached -> reached.spot().routeCode())
                .thenComparingDouble(reached -> reached.spot().measure()));
        distances.put(from, 0.0);
        open.add(new Reached(from, 0));
        while (!open.isEmpty()) {
            Reached here = open.remove();
            if (!done.add(here.spot())) {
                continue;
            }
            if (here.spot().equals(to)) {
                return Optional.of(legs(from, to, cameFrom));
            }
            for (Reached next : neighbours(here.spot(), to)) {
                double distanceM = here.distanceM() + next.distanceM();
                if (distanceM < distances.getOrDefault(next.spot(), Double.POSITIVE_INFINITY)) {
                    distances.put(next.spot(), distanceM);
                    cameFrom.put(next.spot(), here.spot());
                    open.add(new Reached(next.spot(), distanceM));
                }
            }
        }
        return Optional.empty();
    }

    private List<Reached> neighbours(Spot here, Spot to) {
        List<Reached> next = new ArrayList<>();
        if (here.routeCode().equals(to.routeCode())) {
            next.add(along(here, to.measure()));
        }
        for (JunctionDraft junction : junctions) {
            Spot one = new Spot(junction.routeCode(), junction.atMeasure());
            Spot other = new Spot(junction.otherRouteCode(), junction.otherMeasure());
            if (one.equals(here)) {
                next.add(new Reached(other, 0));
            } else if (other.equals(here)) {
                next.add(new Reached(one, 0));
            }
            if (one.routeCode().equals(here.routeCode())) {
                next.add(along(here, one.measure()));
            }
            if (other.routeCode().equals(here.routeCode())) {
                next.add(along(here, other.measure()));
            }
        }
        return next;
    }

    private Reached along(Spot here, double measure) {
        RouteDraft route = route(here.routeCode());
        double lengthM = route.measureUnit().metres(Math.abs(measure - here.measure()));
        return new Reached(new Spot(here.routeCode(), measure), lengthM);
    }

    private RouteDraft route(String code) {
        RouteDraft route = routes.get(code);
        if (route == null) {
            throw new IllegalArgumentException("route " + code + " is not known here");
        }
        return route;
    }

    private List<Leg> legs(Spot from, Spot to, Map<Spot, Spot> cameFrom) {
        Deque<Spot> way = new ArrayDeque<>();
        Spot spot = to;
        way.push(spot);
        while (!spot.equals(from)) {
            spot = cameFrom.get(spot);
            if (spot == null) {
                throw new IllegalStateException("the way back is broken at " + way.peek());
            }
            way.push(spot);
        }
        List<Leg> legs = new ArrayList<>();
        Spot before = way.pop();
        while (!way.isEmpty()) {
            Spot next = way.pop();
            if (next.routeCode().equals(before.routeCode()) && next.measure() != before.measure()) {
                append(legs, before, next);
            }
            before = next;
        }
        return legs;
    }

    private void append(List<Leg> legs, Spot from, Spot to) {
        Direction direction = to.measure() > from.measure() ? Direction.RISING : Direction.FALLING;
        List<String> lines = route(from.routeCode()).lines();
        String line = lines.get(direction == Direction.RISING ? 0 : lines.size() - 1);
        int last = legs.size() - 1;
        if (last >= 0
                && legs.get(last).routeCode().equals(from.routeCode())
                && legs.get(last).direction() == direction) {
            Leg start = legs.remove(last);
            legs.add(new Leg(from.routeCode(), start.fromMeasure(), to.measure(), line, direction, false));
            return;
        }
        legs.add(new Leg(from.routeCode(), from.measure(), to.measure(), line, direction, false));
    }
}
