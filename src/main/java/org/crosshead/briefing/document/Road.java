package org.crosshead.briefing.document;

import java.util.List;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;
import org.jspecify.annotations.Nullable;

/**
 * What the strip shows, along the path in metres from its start.
 *
 * @param panels where the strip is broken, rising, first 0, last the length of the path
 */
public record Road(
        double lengthM,
        List<Double> panels,
        List<Measure> measures,
        List<GradientLength> gradients,
        List<CurveLength> curves,
        List<LimitLength> limits,
        List<Thing> things,
        List<Band> standing,
        Forecast forecast) {

    public Road {
        panels = List.copyOf(panels);
        measures = List.copyOf(measures);
        gradients = List.copyOf(gradients);
        curves = List.copyOf(curves);
        limits = List.copyOf(limits);
        things = List.copyOf(things);
        standing = List.copyOf(standing);
    }

    /** How the path's metres map to a route's measure: on from fromM, measure = measureAtFrom +- (positionM - fromM). */
    public record Measure(
            double fromM, double toM, String routeCode, MeasureUnit unit, double measureAtFrom, boolean rising) {}

    /** A gradient in the direction of travel. The label is what stands at it: 1 in n, or per mille, unsigned. */
    public record GradientLength(double fromM, double toM, double gradient, String notation, double value) {}

    public record CurveLength(double fromM, double toM, double radius, String radiusUnit) {}

    /** A limit as printed; cause PERMANENT, TEMPORARY (with its number) or TENDER_FIRST. */
    public record LimitLength(
            double fromM, double toM, double limit, String unit, double limitMps, String cause, String number) {}

    /** Anything at or along the road. */
    public record Thing(
            FeatureKind kind,
            double fromM,
            @Nullable Double toM,
            String name,
            String detail,
            @Nullable Double sightingM,
            boolean day,
            boolean night) {}

    /** If stopped here: STARTS, STARTS_SET_BACK, STARTS_WITH_SAND, NEEDS_ASSISTANCE or DOES_NOT_START. */
    public record Band(double fromM, double toM, String kind) {}

    /** The run, sampled; all lists of one length. */
    public record Forecast(
            List<Double> positionM,
            List<Double> timeS,
            List<Double> speedMps,
            List<Double> pressurePsi,
            List<Double> glassPercent,
            List<Double> cutoff,
            List<Double> regulator,
            List<Boolean> braking) {}
}
