package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.crosshead.briefing.document.Place;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.Spot;

/** Tells a spot of the path by what a crew can recognise: the last thing passed if it is near enough, else the next thing ahead. */
final class Places {

    private static final Set<FeatureKind> NOT_SEEN = EnumSet.of(
            FeatureKind.POOR_ADHESION,
            FeatureKind.HAZARD,
            FeatureKind.CATCH_POINTS,
            FeatureKind.SIGNAL,
            FeatureKind.TIMING_POINT);
    private static final double AHEAD_SHARE = 0.5;
    private static final double AT_M = 15;
    /** A stretch without anything to recognise longer than this is filled with places no farther apart than the next figure. */
    private static final double BARE_M = 1_500;

    private static final double FILLED_M = 800;

    private final PathGeometry path;
    private final List<PathFeature> seen;
    private final Map<String, MeasureUnit> units;
    private final double reachM;

    Places(PathGeometry path, Map<String, MeasureUnit> units, boolean dark, double reachM) {
        this.path = path;
        this.units = Map.copyOf(units);
        this.reachM = reachM;
        this.seen = path.features().stream()
                .filter(feature -> !NOT_SEEN.contains(feature.feature().kind()))
                .filter(feature -> dark
                        ? feature.feature().seenByNight()
                        : feature.feature().seenByDay())
                .sorted(Comparator.comparingDouble(PathFeature::fromM))
                .toList();
    }

    Place at(double positionM) {
        double atM = Math.max(0, Math.min(path.lengthM(), positionM));
        Spot spot = path.at(atM);
        MeasureUnit unit = units.getOrDefault(spot.routeCode(), MeasureUnit.CHAINS);
        PathFeature behind = null;
        PathFeature ahead = null;
        for (PathFeature feature : seen) {
            if (feature.fromM() <= atM + AT_M) {
                behind = feature;
            } else {
                ahead = feature;
                break;
            }
        }
        PathFeature landmark = null;
        if (behind != null && atM - behind.fromM() <= reachM) {
            landmark = behind;
        } else if (ahead != null && ahead.fromM() - atM <= AHEAD_SHARE * reachM) {
            landmark = ahead;
        }
        double pastM = landmark == null ? 0 : atM - landmark.fromM();
        return new Place(
                atM,
                spot.routeCode(),
                spot.measure(),
                unit,
                landmark == null ? null : landmark.feature().name(),
                Math.abs(pastM) <= AT_M ? 0 : unit.fromMetres(pastM));
    }

    /**
     * Returns the places at which a crew can be told to change something, rising: what they can recognise, and between things far apart
     * places told by the distance past the last.
     */
    List<Double> marksM() {
        List<Double> marks = new ArrayList<>();
        double lastM = 0;
        for (double nextM : Stream.concat(seen.stream().map(PathFeature::fromM), Stream.of(path.lengthM()))
                .toList()) {
            int parts = nextM - lastM > BARE_M ? (int) Math.ceil((nextM - lastM) / FILLED_M) : 1;
            for (int i = 1; i < parts; i++) {
                marks.add(lastM + (nextM - lastM) * i / parts);
            }
            marks.add(nextM);
            lastM = nextM;
        }
        return marks;
    }

    /** Returns the unit in which speeds are told here: miles an hour where the route is measured in miles. */
    boolean isMetric(double positionM) {
        Spot spot = path.at(Math.max(0, Math.min(path.lengthM(), positionM)));
        return units.get(spot.routeCode()) == MeasureUnit.KILOMETRES;
    }
}
