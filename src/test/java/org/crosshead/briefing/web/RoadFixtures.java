package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;
import org.jspecify.annotations.Nullable;

/** An invented road of eight miles in two panels; nothing in it is computed. */
final class RoadFixtures {

    private RoadFixtures() {}

    static Road eightMiles() {
        return new Road(
                metres(8),
                List.of(0.0, metres(5), metres(8)),
                List.of(new Road.Measure(0, metres(8), "OX", MeasureUnit.CHAINS, 800, false)),
                List.of(
                        new Road.GradientLength(0, metres(2), 0, "LEVEL", 0),
                        new Road.GradientLength(metres(2), metres(6), 1 / 87.0, "ONE_IN", 87),
                        new Road.GradientLength(metres(6), metres(8), -0.0125, "PER_MILLE", 12.5)),
                List.of(new Road.CurveLength(metres(3), metres(3.5), 24, "CHAINS")),
                List.of(
                        limit(0, 4, 60, "MPH", "PERMANENT", ""),
                        limit(4, 4.5, 20, "MPH", "TEMPORARY", "T12"),
                        limit(4.5, 8, 80, "KMH", "PERMANENT", "")),
                things(),
                List.of(
                        new Road.Band(0, metres(3), "STARTS"),
                        new Road.Band(metres(3), metres(5.5), "STARTS_WITH_SAND"),
                        new Road.Band(metres(5.5), metres(8), "DOES_NOT_START")),
                forecast());
    }

    static double metres(double miles) {
        return Units.metresFromMiles(miles);
    }

    private static Road.LimitLength limit(
            double fromMiles, double toMiles, double limit, String unit, String cause, String number) {
        double limitMps = unit.equals("MPH") ? Units.mpsFromMph(limit) : Units.mpsFromKmh(limit);
        return new Road.LimitLength(metres(fromMiles), metres(toMiles), limit, unit, limitMps, cause, number);
    }

    private static List<Road.Thing> things() {
        return List.of(
                thing(FeatureKind.STATION, 0, null, "Oxen Quay"),
                thing(FeatureKind.LEVEL_CROSSING, 1.5, null, "Marsh Lane"),
                thing(FeatureKind.TUNNEL, 2.5, 2.9, "Hobb tunnel"),
                thing(FeatureKind.CATCH_POINTS, 3.8, null, "Hobb Bank"),
                thing(FeatureKind.STATION, 5, null, "Rushy Bridge"),
                thing(FeatureKind.WATER_COLUMN, 5.01, null, ""),
                thing(FeatureKind.SIGNAL, 7, null, "Little Wick home"),
                thing(FeatureKind.STATION, 8, null, "Little Wick"));
    }

    private static Road.Thing thing(FeatureKind kind, double miles, @Nullable Double toMiles, String name) {
        return new Road.Thing(
                kind, metres(miles), toMiles == null ? null : metres(toMiles), name, "", null, true, false);
    }

    private static Road.Forecast forecast() {
        List<Double> positionM = new ArrayList<>();
        List<Double> speedMps = new ArrayList<>();
        List<Double> cutoff = new ArrayList<>();
        List<Double> regulator = new ArrayList<>();
        List<Boolean> braking = new ArrayList<>();
        for (int i = 0; i <= 80; i++) {
            positionM.add(metres(i / 10.0));
            speedMps.add(Units.mpsFromMph(Math.min(50, Math.min(i * 5, (80 - i) * 5))));
            cutoff.add(i < 5 ? 0.75 : 0.25);
            regulator.add(i < 40 ? 0.5 : i < 60 ? 1.0 : 0.0);
            braking.add(i >= 70);
        }
        return new Road.Forecast(
                positionM,
                positionM,
                speedMps,
                java.util.Collections.nCopies(81, 200.0),
                java.util.Collections.nCopies(81, 66.0),
                cutoff,
                regulator,
                braking);
    }

    static List<HandlingRow> handling() {
        return List.of(
                row(1, 0, "start", false),
                row(2, 1, "fire", true),
                row(3, 2, "injector.on", true),
                row(4, 4, "injector.off", true),
                row(5, 6, "shut", false));
    }

    private static HandlingRow row(int number, double miles, String action, boolean forFireman) {
        Place place = new Place(metres(miles), "OX", 800 - 80 * miles, MeasureUnit.CHAINS, null, 0);
        Term none = Term.text("");
        return new HandlingRow(
                number,
                place,
                action,
                forFireman,
                null,
                null,
                Phrase.of("action." + action),
                Phrase.of("reason.none"),
                none,
                none,
                none,
                miles * 2,
                null);
    }
}
