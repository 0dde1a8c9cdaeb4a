package org.crosshead.route;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.crosshead.platform.Origin;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.jspecify.annotations.Nullable;

/** Invented routes: none of them lies anywhere. */
public final class RouteFixtures {

    public static final Instant MONDAY = Instant.parse("2030-05-06T08:00:00Z");

    private RouteFixtures() {}

    /** Ten miles in chains: 1 in 100 up for 4 miles, level for 2, 1 in 200 down for 4. */
    public static RouteDraft mainLine() {
        return route("MAIN", MeasureUnit.CHAINS, 0, 800, mainGradients());
    }

    public static List<GradientLength> mainGradients() {
        return List.of(
                gradient(0, 320, GradientNotation.ONE_IN, 100),
                gradient(320, 480, GradientNotation.LEVEL, 0),
                gradient(480, 800, GradientNotation.ONE_IN, -200));
    }

    /** Five kilometres from its own zero, rising 8 per mille throughout. */
    public static RouteDraft kilometreLine() {
        return new RouteDraft(
                "KILO",
                "Invented kilometre line",
                MeasureUnit.KILOMETRES,
                "Away",
                "Home",
                0,
                5,
                List.of("Single"),
                List.of(gradient(0, 5, GradientNotation.PER_MILLE, 8)),
                List.of(),
                List.of(limit(0, 5, 60, SpeedUnit.KMH, Scope.BOTH)),
                List.of(feature(FeatureKind.STATION, 5, null, "Ende", Scope.BOTH, null)),
                false);
    }

    public static RouteDraft route(
            String code, MeasureUnit unit, double from, double to, List<GradientLength> gradients) {
        return new RouteDraft(
                code,
                "Invented main line",
                unit,
                "Down",
                "Up",
                from,
                to,
                List.of("Down Main", "Up Main"),
                gradients,
                List.of(
                        new CurveLength(100, 120, 40, LengthUnit.CHAINS, Origin.SURVEYED, ""),
                        new CurveLength(120, 130, 800, LengthUnit.METRES, Origin.ESTIMATED, "from the map")),
                List.of(
                        limit(0, 800, 60, SpeedUnit.MPH, Scope.BOTH),
                        kindLimit(0, 800, 45, TrainKind.UNFITTED_GOODS, false),
                        limit(300, 340, 40, SpeedUnit.MPH, Scope.RISING),
                        kindLimit(400, 480, 30, null, true)),
                features(),
                true);
    }

    public static List<Feature> features() {
        return List.of(
                feature(FeatureKind.STATION, 0, null, "Anfang", Scope.BOTH, null),
                feature(FeatureKind.SIGNAL, 150, null, "Home", Scope.RISING, "Down Main"),
                feature(FeatureKind.SIGNAL, 160, null, "Starter", Scope.FALLING, "Up Main"),
                feature(FeatureKind.TUNNEL, 300, 330.0, "", Scope.BOTH, null),
                new Feature(
                        FeatureKind.STATION,
                        480,
                        null,
                        "Mitte",
                        Scope.BOTH,
                        null,
                        "two platforms",
                        300.0,
                        600.0,
                        LengthUnit.FEET,
                        true,
                        true,
                        Origin.SURVEYED,
                        "<script>alert(1)</script>"));
    }

    public static GradientLength gradient(double from, double to, GradientNotation notation, double value) {
        return new GradientLength(from, to, notation, value, Origin.SURVEYED, "");
    }

    public static LimitLength limit(double from, double to, double limit, SpeedUnit unit, Scope scope) {
        return new LimitLength(from, to, limit, unit, scope, null, false, Origin.PUBLISHED, "");
    }

    static LimitLength kindLimit(
            double from, double to, double limitMph, @Nullable TrainKind kind, boolean tenderFirst) {
        return new LimitLength(from, to, limitMph, SpeedUnit.MPH, Scope.BOTH, kind, tenderFirst, Origin.PUBLISHED, "");
    }

    public static Feature feature(
            FeatureKind kind, double at, @Nullable Double to, String name, Scope scope, @Nullable String line) {
        return new Feature(kind, at, to, name, scope, line, "", null, null, null, true, false, Origin.SURVEYED, "");
    }

    public static RestrictionDraft restriction(String routeCode, double from, double to, double limitMph) {
        return new RestrictionDraft(
                "T 12",
                routeCode,
                from,
                to,
                limitMph,
                SpeedUnit.MPH,
                Scope.BOTH,
                MONDAY,
                MONDAY.plusSeconds(86_400),
                "ballast wet");
    }

    /** The main line with estimates that nobody has accepted. */
    public static RouteDraft waiting() {
        RouteDraft main = mainLine();
        return new RouteDraft(
                main.code(),
                main.name(),
                main.measureUnit(),
                main.risingName(),
                main.fallingName(),
                main.fromMeasure(),
                main.toMeasure(),
                main.lines(),
                main.gradients(),
                main.curves(),
                main.limits(),
                main.features(),
                false);
    }

    static RouteDraft withGradients(List<GradientLength> gradients) {
        return route("MAIN", MeasureUnit.CHAINS, 0, 800, gradients);
    }

    static RouteDraft withLimits(LimitLength... limits) {
        return with(mainLine().curves(), List.of(limits), mainLine().features());
    }

    static RouteDraft withCurves(CurveLength... curves) {
        return with(List.of(curves), mainLine().limits(), mainLine().features());
    }

    static RouteDraft withFeatureMore(Feature feature) {
        List<Feature> features = new ArrayList<>(features());
        features.add(feature);
        return with(mainLine().curves(), mainLine().limits(), features);
    }

    private static RouteDraft with(List<CurveLength> curves, List<LimitLength> limits, List<Feature> features) {
        RouteDraft main = mainLine();
        return new RouteDraft(
                main.code(),
                main.name(),
                main.measureUnit(),
                main.risingName(),
                main.fallingName(),
                main.fromMeasure(),
                main.toMeasure(),
                main.lines(),
                main.gradients(),
                curves,
                limits,
                features,
                main.estimatesAccepted());
    }
}
