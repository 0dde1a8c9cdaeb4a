package org.crosshead.working;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.Direction;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.Leg;

/** Calls for a path, with times by a mean speed: a beginning for a person to correct, never a timetable. */
final class FirstDraft {

    private static final long STANDING_S = 60;

    /** Mean speeds from start to stop for a first guess; own rule. */
    private static final Map<TrainKind, Double> MEAN_SPEED_MPH = Map.of(
            TrainKind.PASSENGER, 30.0,
            TrainKind.FITTED_GOODS, 22.0,
            TrainKind.UNFITTED_GOODS, 14.0,
            TrainKind.LIGHT_ENGINE, 25.0);

    private final Map<String, RouteDraft> routes;

    FirstDraft(Map<String, RouteDraft> routes) {
        this.routes = Map.copyOf(routes);
    }

    /**
     * Returns a call for every station and timing point on the legs, at whole minutes.
     *
     * @param everyStation whether it stops at every station; otherwise only at its two ends
     */
    List<Call> calls(List<Leg> legs, Instant departure, TrainKind kind, boolean everyStation) {
        double speedMps = Units.mpsFromMph(MEAN_SPEED_MPH.getOrDefault(kind, 20.0));
        List<Call> calls = new ArrayList<>();
        Instant clock = departure;
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            double fromMeasure = leg.fromMeasure();
            for (Feature feature : timedOn(leg)) {
                boolean first = calls.isEmpty();
                boolean last = i == legs.size() - 1 && feature.atMeasure() == leg.toMeasure();
                if (!first && sameSpot(calls, feature)) {
                    continue;
                }
                double runM = route(leg).measureUnit().metres(Math.abs(feature.atMeasure() - fromMeasure));
                clock = clock.plusSeconds(Math.round(runM / speedMps));
                fromMeasure = feature.atMeasure();
                Call call = call(i + 1, feature, clock, first, last, everyStation);
                calls.add(call);
                clock = call.departure() == null ? clock : call.departure();
            }
            double restM = route(leg).measureUnit().metres(Math.abs(leg.toMeasure() - fromMeasure));
            clock = clock.plusSeconds(Math.round(restM / speedMps));
        }
        return calls;
    }

    private static boolean sameSpot(List<Call> calls, Feature feature) {
        return calls.get(calls.size() - 1).place().equals(feature.name());
    }

    private static Call call(
            int leg, Feature feature, Instant clock, boolean first, boolean last, boolean everyStation) {
        Instant minute = clock.plusSeconds(59).truncatedTo(ChronoUnit.MINUTES);
        boolean stops = first || last || (everyStation && feature.kind() == org.crosshead.route.FeatureKind.STATION);
        if (first) {
            return new Call(leg, feature.atMeasure(), feature.name(), true, null, clock, false);
        }
        if (last) {
            return new Call(leg, feature.atMeasure(), feature.name(), true, minute, null, false);
        }
        if (stops) {
            return new Call(
                    leg, feature.atMeasure(), feature.name(), true, minute, minute.plusSeconds(STANDING_S), false);
        }
        return new Call(leg, feature.atMeasure(), feature.name(), false, null, minute, false);
    }

    private List<Feature> timedOn(Leg leg) {
        double low = Math.min(leg.fromMeasure(), leg.toMeasure());
        double high = Math.max(leg.fromMeasure(), leg.toMeasure());
        Comparator<Feature> rising = Comparator.comparingDouble(Feature::atMeasure);
        return route(leg).features().stream()
                .filter(PathFinder::isTimed)
                .filter(feature -> feature.atMeasure() >= low && feature.atMeasure() <= high)
                .sorted(leg.direction() == Direction.RISING ? rising : rising.reversed())
                .toList();
    }

    private RouteDraft route(Leg leg) {
        RouteDraft route = routes.get(leg.routeCode());
        if (route == null) {
            throw new IllegalArgumentException("route " + leg.routeCode() + " is not known here");
        }
        return route;
    }
}
