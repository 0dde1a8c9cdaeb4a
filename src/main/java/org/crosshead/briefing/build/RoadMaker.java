package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.crosshead.briefing.document.Road;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.standing.Restart;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGeometry;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Makes what the strip shows. */
final class RoadMaker {

    private static final double PANEL_M = 20_000;
    private static final double PANEL_SLACK_M = 4_000;
    private static final double BAND_STEP_M = 20;
    private static final double FORECAST_STEP_M = 150;

    private final TrainInputs inputs;
    private final PathGeometry path;
    private final Map<String, MeasureUnit> units;

    RoadMaker(TrainInputs inputs, Map<String, MeasureUnit> units) {
        this.inputs = inputs;
        this.path = inputs.path();
        this.units = units;
    }

    Road make(@Nullable TrainModel model, @Nullable Run run) {
        return new Road(
                path.lengthM(),
                panels(),
                measures(),
                path.gradients().stream()
                        .map(length -> new Road.GradientLength(
                                length.fromM(),
                                length.toM(),
                                length.gradient(),
                                length.notation().name(),
                                Math.abs(length.value())))
                        .toList(),
                path.curves().stream()
                        .map(curve -> new Road.CurveLength(
                                curve.fromM(),
                                curve.toM(),
                                curve.radius(),
                                curve.radiusUnit().name()))
                        .toList(),
                path.limits().stream()
                        .map(limit -> new Road.LimitLength(
                                limit.fromM(),
                                limit.toM(),
                                limit.limit(),
                                limit.limitUnit().name(),
                                limit.limitMps(),
                                limit.source().name(),
                                limit.number()))
                        .toList(),
                path.features().stream().map(RoadMaker::thing).toList(),
                model == null ? List.of() : bands(model),
                run == null || model == null ? empty() : forecast(model, run));
    }

    private static Road.Thing thing(PathFeature feature) {
        return new Road.Thing(
                feature.feature().kind(),
                feature.fromM(),
                feature.toM(),
                feature.feature().name(),
                feature.feature().detail(),
                feature.sightingM().isPresent() ? feature.sightingM().getAsDouble() : null,
                feature.feature().seenByDay(),
                feature.feature().seenByNight());
    }

    private List<Double> panels() {
        List<Double> ends = new ArrayList<>(List.of(0.0));
        List<Double> stations = path.features().stream()
                .filter(feature -> feature.feature().kind() == FeatureKind.STATION)
                .map(PathFeature::fromM)
                .toList();
        double atM = 0;
        while (path.lengthM() - atM > PANEL_M + PANEL_SLACK_M) {
            double wanted = atM + PANEL_M;
            double from = atM;
            double end = stations.stream()
                    .filter(station -> Math.abs(station - wanted) < PANEL_SLACK_M && station > from)
                    .min((one, other) -> Double.compare(Math.abs(one - wanted), Math.abs(other - wanted)))
                    .orElse(wanted);
            ends.add(end);
            atM = end;
        }
        ends.add(path.lengthM());
        return ends;
    }

    private List<Road.Measure> measures() {
        List<Road.Measure> measures = new ArrayList<>();
        double fromM = 0;
        for (TrainDraft.Leg leg : inputs.content().legs()) {
            MeasureUnit unit = units.getOrDefault(leg.routeCode(), MeasureUnit.CHAINS);
            double toM = fromM + unit.metres(Math.abs(leg.toMeasure() - leg.fromMeasure()));
            measures.add(new Road.Measure(
                    fromM, toM, leg.routeCode(), unit, leg.fromMeasure(), leg.toMeasure() > leg.fromMeasure()));
            fromM = toM;
        }
        return measures;
    }

    private List<Road.Band> bands(TrainModel model) {
        StandingPlaces places = new StandingPlaces(model, inputs.content().kind());
        List<Road.Band> bands = new ArrayList<>();
        for (double atM = 0; atM < path.lengthM(); atM += BAND_STEP_M) {
            String kind = kind(places.at(atM).way());
            double toM = Math.min(path.lengthM(), atM + BAND_STEP_M);
            int last = bands.size() - 1;
            if (last >= 0 && bands.get(last).kind().equals(kind)) {
                bands.set(last, new Road.Band(bands.get(last).fromM(), toM, kind));
            } else {
                bands.add(new Road.Band(atM, toM, kind));
            }
        }
        return bands;
    }

    static String kind(Restart.Way way) {
        return switch (way) {
            case STARTS -> "STARTS";
            case SETS_BACK -> "STARTS_SET_BACK";
            case WITH_SAND -> "STARTS_WITH_SAND";
            case DOES_NOT_START -> "DOES_NOT_START";
        };
    }

    private static Road.Forecast empty() {
        return new Road.Forecast(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static Road.Forecast forecast(TrainModel model, Run run) {
        Boiler boiler = model.engine(0).parameters().boiler();
        List<Integer> samples = samples(run);
        return new Road.Forecast(
                samples.stream().map(i -> rounded(run.positionM(i), 1)).toList(),
                samples.stream().map(i -> rounded(run.timeS(i), 1)).toList(),
                samples.stream().map(i -> rounded(run.speedMps(i), 100)).toList(),
                samples.stream()
                        .map(i -> rounded(Units.psiFromPa(run.pressurePa(i)), 10))
                        .toList(),
                samples.stream()
                        .map(i -> rounded(100 * boiler.glassShare(run.waterKg(i)), 10))
                        .toList(),
                samples.stream().map(i -> rounded(run.cutoff(i), 100)).toList(),
                samples.stream().map(i -> rounded(run.regulator(i), 100)).toList(),
                samples.stream().map(i -> run.brakeN(i) > 0).toList());
    }

    private static List<Integer> samples(Run run) {
        List<Integer> kept = new ArrayList<>();
        double lastM = Double.NEGATIVE_INFINITY;
        int lowestWater = run.lowestWater(0);
        int lowestPressure = run.lowestPressure(0);
        for (int i = 0; i < run.size(); i++) {
            boolean turns = run.speedMps(i) <= 0 && (i == 0 || run.speedMps(i - 1) > 0);
            boolean least = i == lowestWater || i == lowestPressure;
            boolean leaves = i > 0 && run.speedMps(i) > 0 && run.speedMps(i - 1) <= 0;
            if (run.positionM(i) - lastM >= FORECAST_STEP_M || turns || leaves || least || i == run.size() - 1) {
                kept.add(i);
                lastM = run.positionM(i);
            }
        }
        return kept;
    }

    private static double rounded(double value, double perUnit) {
        return Math.round(value * perUnit) / perUnit;
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
