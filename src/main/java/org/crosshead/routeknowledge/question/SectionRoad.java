package org.crosshead.routeknowledge.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.crosshead.route.Direction;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.crosshead.route.TrainKind;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.RouteSection;

/** The road of a section in its direction: what is met in running order, limits and gradients. Of the route's measure throughout. */
public final class SectionRoad {

    private static final double ONE_IN_OF_PER_MILLE = 1_000;

    private final RouteDraft route;
    private final RouteSection section;
    private final List<Feature> met;
    private final List<Feature> things;
    private final List<Cue> cues;

    /** Takes from a route what lies on a section; things of the same name are left out, since nobody could tell which is meant. */
    public SectionRoad(RouteDraft route, RouteSection section, List<Cue> cues) {
        this.cues = List.copyOf(cues);
        this.route = route;
        this.section = section;
        Map<String, Integer> names = new HashMap<>();
        route.features().forEach(feature -> names.merge(feature.name(), 1, Integer::sum));
        Comparator<Feature> rising = Comparator.comparingDouble(this::at);
        met = route.features().stream()
                .filter(feature -> feature.scope().covers(section.direction()))
                .filter(feature -> within(at(feature)) && isOnLine(feature))
                .filter(feature -> !feature.name().isBlank() && feature.kind() != FeatureKind.WARNING_BOARD)
                .sorted(rises() ? rising : rising.reversed())
                .toList();
        things = met.stream()
                .filter(feature -> names.getOrDefault(feature.name(), 0) == 1)
                .toList();
    }

    /** Returns where a thing is met: of one with length its nearer end. */
    double at(Feature thing) {
        Double end = thing.toMeasure();
        return rises() || end == null ? thing.atMeasure() : end;
    }

    private boolean isOnLine(Feature feature) {
        String line = feature.line();
        return line == null || section.isOnLine(line);
    }

    private boolean within(double measure) {
        return measure >= section.fromMeasure() && measure <= section.toMeasure();
    }

    public boolean rises() {
        return section.direction() == Direction.RISING;
    }

    public RouteSection section() {
        return section;
    }

    public MeasureUnit unit() {
        return route.measureUnit();
    }

    /** Returns the cues of a thing. */
    List<Cue> cues(Feature thing) {
        return cues.stream()
                .filter(cue -> cue.featureName().equals(thing.name()))
                .toList();
    }

    /** Returns everything with a name that is met, in running order, whether or not its name is another's too. */
    List<Feature> met() {
        return met;
    }

    /** Says whether anything is met between two places, both left out. */
    boolean isAnythingBetween(double fromMeasure, double toMeasure) {
        return met.stream().anyMatch(thing -> ahead(fromMeasure, at(thing)) > 0 && ahead(at(thing), toMeasure) > 0);
    }

    /** Returns what is met and can be told from everything else by its name, in running order. */
    public List<Feature> things() {
        return things;
    }

    /** Returns those of one kind, in running order. */
    List<Feature> things(FeatureKind kind) {
        return things.stream().filter(thing -> thing.kind() == kind).toList();
    }

    /** Returns how far one place lies ahead of another in the direction of running; negative where it lies behind. */
    double ahead(double fromMeasure, double toMeasure) {
        return rises() ? toMeasure - fromMeasure : fromMeasure - toMeasure;
    }

    /** Returns the least limit for a kind of train at a place, in the unit in which the route prints it. */
    Optional<LimitLength> limit(double measure, TrainKind kind, boolean tenderFirst) {
        return route.limits().stream()
                .filter(limit -> limit.scope().covers(section.direction()))
                .filter(limit -> limit.trainKind() == null || limit.trainKind() == kind)
                .filter(limit -> !limit.tenderFirst() || tenderFirst)
                .filter(limit -> measure > limit.fromMeasure() && measure < limit.toMeasure())
                .min(Comparator.comparingDouble(limit -> limit.limitUnit().mps(limit.limit())));
    }

    /** Returns the speeds that the route prints anywhere, as they are said. */
    List<String> speeds() {
        TreeSet<String> speeds = new TreeSet<>();
        route.limits().forEach(limit -> speeds.add(said(limit)));
        return new ArrayList<>(speeds);
    }

    static String said(LimitLength limit) {
        return plain(limit.limit()) + (limit.limitUnit() == org.crosshead.route.SpeedUnit.MPH ? " mph" : " km/h");
    }

    /** Returns the gradient at a place, or nothing at a change of gradient. */
    Optional<GradientLength> gradient(double measure) {
        return route.gradients().stream()
                .filter(length -> measure > length.fromMeasure() && measure < length.toMeasure())
                .findFirst();
    }

    /** Returns rise over run in the direction of running. */
    double slope(GradientLength length) {
        double rising = switch (length.notation()) {
            case LEVEL -> 0;
            case ONE_IN -> 1 / length.value();
            case PER_MILLE -> length.value() / ONE_IN_OF_PER_MILLE;
        };
        return rises() ? rising : -rising;
    }

    /** Returns a gradient as the route prints it, without its sign. */
    static String steepness(GradientLength length) {
        if (length.notation() == GradientNotation.LEVEL) {
            return "";
        }
        return length.notation() == GradientNotation.ONE_IN
                ? "1 in " + plain(Math.abs(length.value()))
                : plain(Math.abs(length.value())) + " per mille";
    }

    List<GradientLength> gradients() {
        return route.gradients();
    }

    List<LimitLength> limits() {
        return route.limits();
    }

    static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
