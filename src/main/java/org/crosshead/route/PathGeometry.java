package org.crosshead.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.crosshead.kernel.track.Curves;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.units.Check;

/**
 * A path over one or several routes as one line in metres from its start. A leg in the falling direction is turned round, and
 * its gradients change sign.
 *
 * <p>At a reversal the path goes on from the same place over the rails it came by; {@link #reversalsM()} says where, so that a
 * run can stop there and begin anew with what was the tail as its head.
 */
public final class PathGeometry {

    private static final double END_TOLERANCE_M = 1e-3;

    private final List<PathSpan> spans;
    private final List<PathGradient> gradients;
    private final List<PathCurve> curves;
    private final List<PathLimit> limits;
    private final List<PathFeature> features;
    private final List<PathEstimate> estimates;

    private PathGeometry(List<PathSpan> spans, TrainKind kind, List<Restriction> restrictions) {
        this.spans = List.copyOf(spans);
        this.gradients = spans.stream().flatMap(PathLists::gradients).toList();
        this.curves = spans.stream().flatMap(PathLists::curves).toList();
        this.limits = spans.stream()
                .flatMap(
                        span -> Stream.concat(PathLists.permanent(span, kind), PathLists.temporary(span, restrictions)))
                .sorted(Comparator.comparingDouble(PathLimit::fromM))
                .toList();
        this.features = PathLists.withoutTwins(spans.stream()
                .flatMap(PathLists::features)
                .sorted(Comparator.comparingDouble(PathFeature::fromM))
                .toList());
        this.estimates = spans.stream()
                .flatMap(span -> PathLists.estimates(span, kind).stream())
                .toList();
    }

    /**
     * Returns the path of a train.
     *
     * @param legs in running order, at least one; each begins where the one before ends
     * @param restrictions those that may hold while the train runs, on any route
     */
    public static PathGeometry of(List<PathLeg> legs, TrainKind kind, List<Restriction> restrictions) {
        Check.that(!legs.isEmpty(), "legs must be at least one");
        List<PathSpan> spans = new ArrayList<>();
        double startM = 0;
        for (PathLeg leg : legs) {
            PathSpan span = new PathSpan(leg, spans.size() + 1, startM);
            spans.add(span);
            startM = span.endM();
        }
        return new PathGeometry(spans, kind, restrictions);
    }

    public double lengthM() {
        return spans.get(spans.size() - 1).endM();
    }

    /**
     * Returns the rails as the kernel takes them.
     *
     * @param greatestMps speed where no limit is laid down, for example the greatest of the train's vehicles
     */
    public Track track(double greatestMps) {
        List<SpeedLimits.Length> lengths = limits.stream()
                .map(limit -> new SpeedLimits.Length(limit.fromM(), limit.toM(), limit.limitMps()))
                .toList();
        return new Track(profile(), curveRadii(), SpeedLimits.of(lengthM(), greatestMps, lengths));
    }

    /**
     * Returns where a place of a leg lies in the path.
     *
     * @param legNumber from 1
     * @throws IllegalArgumentException if there is no such leg, or the place is not on it
     */
    public double pathM(int legNumber, double measure) {
        Check.within("legNumber", legNumber, 1, spans.size());
        PathSpan span = spans.get(legNumber - 1);
        Check.that(span.holds(measure), "measure " + measure + " must lie on leg " + legNumber);
        return span.pathM(measure);
    }

    /**
     * Returns where a measure of a route lies on the path; of several the one nearest to a place.
     *
     * @return empty where the path does not pass it
     */
    public OptionalDouble pathM(String routeCode, double measure, double nearM) {
        return spans.stream()
                .filter(span -> code(span).equals(routeCode) && span.holds(measure))
                .mapToDouble(span -> span.pathM(measure))
                .boxed()
                .min(Comparator.comparingDouble(atM -> Math.abs(atM - nearM)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    /** Returns the place in the measure of its route. Where one leg ends and the next begins, that of the next. */
    public Spot at(double pathM) {
        Check.within("pathM", pathM, -END_TOLERANCE_M, lengthM() + END_TOLERANCE_M);
        PathSpan span = spans.get(0);
        for (PathSpan next : spans) {
            span = next.startM() <= pathM ? next : span;
        }
        double measure = Math.max(0, span.measureAt(pathM));
        return new Spot(span.number(), code(span), measure, Measures.format(measure, span.unit()));
    }

    /** Returns what the crew meets in its direction and on its line, in running order. */
    public List<PathFeature> features() {
        return features;
    }

    /** Returns the gradients as run; they cover the path. */
    public List<PathGradient> gradients() {
        return gradients;
    }

    /** Returns the curves in running order; between them the path is straight. */
    public List<PathCurve> curves() {
        return curves;
    }

    /** Returns the limits that hold for the train's kind and direction, by their beginning. */
    public List<PathLimit> limits() {
        return limits;
    }

    /** Returns what on the path is estimated or of unknown origin, leg by leg. */
    public List<PathEstimate> estimates() {
        return estimates;
    }

    /** Returns where the train reverses: the route goes on in the other direction, or the engine the other way round. */
    public List<Double> reversalsM() {
        List<Double> reversals = new ArrayList<>();
        for (int i = 1; i < spans.size(); i++) {
            PathLeg before = spans.get(i - 1).leg();
            PathLeg after = spans.get(i).leg();
            boolean turned =
                    code(spans.get(i - 1)).equals(code(spans.get(i))) && before.direction() != after.direction();
            if (turned || before.tenderFirst() != after.tenderFirst()) {
                reversals.add(spans.get(i).startM());
            }
        }
        return List.copyOf(reversals);
    }

    /** Returns the gradients as the kernel takes them. */
    public GradientProfile profile() {
        double[] boundariesM = new double[gradients.size() + 1];
        double[] values = new double[gradients.size()];
        for (int i = 0; i < values.length; i++) {
            boundariesM[i + 1] = gradients.get(i).toM();
            values[i] = gradients.get(i).gradient();
        }
        boundariesM[values.length] = lengthM();
        return GradientProfile.of(boundariesM, values);
    }

    private Curves curveRadii() {
        List<Double> boundariesM = new ArrayList<>(List.of(0.0));
        List<Double> radiiM = new ArrayList<>();
        for (PathCurve curve : curves) {
            extend(boundariesM, radiiM, curve.fromM(), Double.POSITIVE_INFINITY);
            extend(boundariesM, radiiM, curve.toM(), curve.radiusM());
        }
        extend(boundariesM, radiiM, lengthM(), Double.POSITIVE_INFINITY);
        return Curves.of(
                boundariesM.stream().mapToDouble(Double::doubleValue).toArray(),
                radiiM.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void extend(List<Double> boundariesM, List<Double> radiiM, double toM, double radiusM) {
        if (toM - boundariesM.get(boundariesM.size() - 1) > END_TOLERANCE_M / 2) {
            boundariesM.add(toM);
            radiiM.add(radiusM);
        }
    }

    private static String code(PathSpan span) {
        return span.leg().route().content().code();
    }
}
