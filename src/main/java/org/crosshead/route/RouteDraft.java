package org.crosshead.route;

import java.util.List;
import java.util.stream.Stream;
import org.crosshead.platform.Origin;
import org.jspecify.annotations.Nullable;

/**
 * A route as somebody enters it: the content of one revision. Positions are in the route's measure (chains or kilometres from
 * the zero post), rising.
 *
 * @param code short name by which other records call it
 * @param risingName name of the direction in which the measure rises, for example "Down"
 * @param fallingName name of the other direction
 * @param lines names of the running lines
 * @param estimatesAccepted whether a person has accepted what is estimated, or of unknown origin, in its lists: without it no
 *     figure is worked out from them
 */
public record RouteDraft(
        String code,
        String name,
        MeasureUnit measureUnit,
        String risingName,
        String fallingName,
        double fromMeasure,
        double toMeasure,
        List<String> lines,
        List<GradientLength> gradients,
        List<CurveLength> curves,
        List<LimitLength> limits,
        List<Feature> features,
        boolean estimatesAccepted) {

    public RouteDraft {
        lines = List.copyOf(lines);
        gradients = List.copyOf(gradients);
        curves = List.copyOf(curves);
        limits = List.copyOf(limits);
        features = List.copyOf(features);
    }

    /** Returns whether anything in its lists is an estimate or of unknown origin. */
    public boolean hasEstimates() {
        return Stream.of(
                        gradients.stream().map(GradientLength::origin),
                        curves.stream().map(CurveLength::origin),
                        limits.stream().map(LimitLength::origin),
                        features.stream().map(Feature::origin))
                .flatMap(origins -> origins)
                .anyMatch(Origin::isGuess);
    }

    /** Returns the same route with its estimates accepted. */
    public RouteDraft accepted() {
        return new RouteDraft(
                code,
                name,
                measureUnit,
                risingName,
                fallingName,
                fromMeasure,
                toMeasure,
                lines,
                gradients,
                curves,
                limits,
                features,
                true);
    }

    /** A length of one gradient; together they cover the route without gap or overlap. */
    public record GradientLength(
            double fromMeasure, double toMeasure, GradientNotation notation, double value, Origin origin, String note) {

        /** Returns the gradient (rise over run), positive when climbing as the measure rises. */
        public double gradient() {
            return notation.gradient(value);
        }
    }

    /** A length of one radius; what is not covered is straight. */
    public record CurveLength(
            double fromMeasure, double toMeasure, double radius, LengthUnit radiusUnit, Origin origin, String note) {}

    /**
     * A permanent limit over a length.
     *
     * @param trainKind the kind it holds for, or null for all
     * @param tenderFirst true where it holds only for an engine running tender or bunker first
     */
    public record LimitLength(
            double fromMeasure,
            double toMeasure,
            double limit,
            SpeedUnit limitUnit,
            Scope scope,
            @Nullable TrainKind trainKind,
            boolean tenderFirst,
            Origin origin,
            String note) {}

    /**
     * Something a crew meets.
     *
     * @param toMeasure end of a thing with length (tunnel, platform, poor rail), or null
     * @param line running line it belongs to, or null for all
     * @param detail kind of signal, number of the post and the like; may be empty
     * @param sighting distance from which it is seen, or null if unknown
     * @param length length of the platform, or null
     * @param seenByDay whether a crew can know the place by day
     * @param seenByNight whether by night
     */
    public record Feature(
            FeatureKind kind,
            double atMeasure,
            @Nullable Double toMeasure,
            String name,
            Scope scope,
            @Nullable String line,
            String detail,
            @Nullable Double sighting,
            @Nullable Double length,
            @Nullable LengthUnit lengthUnit,
            boolean seenByDay,
            boolean seenByNight,
            Origin origin,
            String note) {}
}
