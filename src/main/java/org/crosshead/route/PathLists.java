package org.crosshead.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.crosshead.platform.Origin;
import org.crosshead.route.PathEstimate.Kind;
import org.crosshead.route.PathLimit.Source;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.jspecify.annotations.Nullable;

/** The lists of a route as a train runs them over one leg: cut to the leg, in running order, signed as run. */
final class PathLists {

    private PathLists() {}

    static Stream<PathGradient> gradients(PathSpan span) {
        return asRun(span, content(span).gradients())
                .flatMap(length -> span
                        .clip(length.fromMeasure(), length.toMeasure())
                        .map(stretch -> gradient(span, length, stretch))
                        .stream());
    }

    private static PathGradient gradient(PathSpan span, GradientLength length, PathSpan.Stretch stretch) {
        double value = span.isRising() || length.value() == 0 ? length.value() : -length.value();
        return new PathGradient(
                stretch.fromM(),
                stretch.toM(),
                length.notation().gradient(value),
                length.notation(),
                value,
                length.origin());
    }

    static Stream<PathCurve> curves(PathSpan span) {
        return asRun(span, content(span).curves())
                .flatMap(length -> span
                        .clip(length.fromMeasure(), length.toMeasure())
                        .map(stretch -> new PathCurve(
                                stretch.fromM(),
                                stretch.toM(),
                                length.radiusUnit().metres(length.radius()),
                                length.radius(),
                                length.radiusUnit(),
                                length.origin()))
                        .stream());
    }

    static Stream<PathLimit> permanent(PathSpan span, TrainKind kind) {
        return content(span).limits().stream()
                .filter(length -> holds(length, span.leg(), kind))
                .flatMap(length -> span
                        .clip(length.fromMeasure(), length.toMeasure())
                        .map(stretch -> new PathLimit(
                                stretch.fromM(),
                                stretch.toM(),
                                length.limit(),
                                length.limitUnit(),
                                length.tenderFirst() ? Source.TENDER_FIRST : Source.PERMANENT,
                                "",
                                length.note()))
                        .stream());
    }

    private static boolean holds(LimitLength length, PathLeg leg, TrainKind kind) {
        return length.scope().covers(leg.direction())
                && (length.trainKind() == null || length.trainKind() == kind)
                && (!length.tenderFirst() || leg.tenderFirst());
    }

    /** What of the leg is estimated or of unknown origin; neighbours of one kind are one. */
    static List<PathEstimate> estimates(PathSpan span, TrainKind kind) {
        RouteDraft content = content(span);
        List<PathEstimate> estimates = new ArrayList<>();
        for (GradientLength length : asRun(span, content.gradients()).toList()) {
            estimate(span, Kind.GRADIENT, length.origin(), length.fromMeasure(), length.toMeasure(), estimates);
        }
        for (CurveLength length : asRun(span, content.curves()).toList()) {
            estimate(span, Kind.CURVE, length.origin(), length.fromMeasure(), length.toMeasure(), estimates);
        }
        for (LimitLength length : asRun(span, content.limits()).toList()) {
            if (holds(length, span.leg(), kind)) {
                estimate(span, Kind.LIMIT, length.origin(), length.fromMeasure(), length.toMeasure(), estimates);
            }
        }
        features(span)
                .filter(feature -> feature.feature().origin().isGuess())
                .map(feature -> new PathEstimate(
                        Kind.FEATURE,
                        feature.fromM(),
                        feature.toM(),
                        content.code(),
                        feature.feature().name(),
                        content.estimatesAccepted()))
                .forEach(estimates::add);
        return estimates;
    }

    private static void estimate(
            PathSpan span,
            Kind kind,
            Origin origin,
            double fromMeasure,
            double toMeasure,
            List<PathEstimate> estimates) {
        if (!origin.isGuess()) {
            return;
        }
        span.clip(fromMeasure, toMeasure).ifPresent(stretch -> {
            double fromM = stretch.fromM();
            PathEstimate before = estimates.isEmpty() ? null : estimates.get(estimates.size() - 1);
            if (before != null && before.kind() == kind && Objects.equals(before.toM(), fromM)) {
                estimates.remove(estimates.size() - 1);
                fromM = before.fromM();
            }
            RouteDraft content = content(span);
            estimates.add(
                    new PathEstimate(kind, fromM, stretch.toM(), content.code(), "", content.estimatesAccepted()));
        });
    }

    static Stream<PathLimit> temporary(PathSpan span, List<Restriction> restrictions) {
        return restrictions.stream()
                .map(Restriction::draft)
                .filter(draft -> draft.routeCode().equals(content(span).code())
                        && draft.scope().covers(span.leg().direction()))
                .flatMap(draft -> span
                        .clip(draft.fromMeasure(), draft.toMeasure())
                        .map(stretch -> new PathLimit(
                                stretch.fromM(),
                                stretch.toM(),
                                draft.limit(),
                                draft.limitUnit(),
                                Source.TEMPORARY,
                                draft.number(),
                                draft.reason()))
                        .stream());
    }

    static Stream<PathFeature> features(PathSpan span) {
        return asRun(span, content(span).features())
                .filter(feature -> concerns(feature, span.leg()))
                .flatMap(feature -> feature(span, feature).stream());
    }

    private static boolean concerns(Feature feature, PathLeg leg) {
        return feature.scope().covers(leg.direction())
                && (feature.line() == null || feature.line().equals(leg.line()));
    }

    private static Optional<PathFeature> feature(PathSpan span, Feature feature) {
        Double to = feature.toMeasure();
        if (to != null) {
            return span.clip(feature.atMeasure(), to).map(stretch -> met(span, feature, stretch.fromM(), stretch));
        }
        return span.holds(feature.atMeasure())
                ? Optional.of(met(span, feature, span.pathM(feature.atMeasure()), null))
                : Optional.empty();
    }

    private static PathFeature met(PathSpan span, Feature feature, double fromM, PathSpan.@Nullable Stretch stretch) {
        return new PathFeature(
                fromM,
                stretch == null ? null : stretch.toM(),
                span.number(),
                content(span).code(),
                Measures.format(Math.max(0, span.measureAt(fromM)), span.unit()),
                feature);
    }

    /**
     * A thing at the very place of a reversal, or where a route is left and entered, is met once.
     *
     * @param features in running order
     */
    static List<PathFeature> withoutTwins(List<PathFeature> features) {
        List<PathFeature> kept = new ArrayList<>();
        for (PathFeature feature : features) {
            if (!hasTwin(kept, feature)) {
                kept.add(feature);
            }
        }
        return List.copyOf(kept);
    }

    private static boolean hasTwin(List<PathFeature> kept, PathFeature feature) {
        for (int i = kept.size() - 1; i >= 0 && kept.get(i).fromM() == feature.fromM(); i--) {
            PathFeature one = kept.get(i);
            if (one.feature().equals(feature.feature()) && one.routeCode().equals(feature.routeCode())) {
                return true;
            }
        }
        return false;
    }

    private static <T> Stream<T> asRun(PathSpan span, List<T> byRisingMeasure) {
        List<T> list = new ArrayList<>(byRisingMeasure);
        if (!span.isRising()) {
            Collections.reverse(list);
        }
        return list.stream();
    }

    private static RouteDraft content(PathSpan span) {
        return span.leg().route().content();
    }
}
