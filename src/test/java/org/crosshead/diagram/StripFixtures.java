package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.diagram.StripModel.Fill;
import org.crosshead.diagram.StripModel.Limit;
import org.crosshead.diagram.StripModel.Mark;
import org.crosshead.diagram.StripModel.MarkKind;
import org.crosshead.diagram.StripModel.Point;
import org.crosshead.diagram.StripModel.Setting;
import org.crosshead.diagram.StripModel.Slope;
import org.crosshead.diagram.StripModel.Stretch;
import org.crosshead.diagram.StripModel.Tick;
import org.crosshead.diagram.StripModel.Work;
import org.crosshead.diagram.StripModel.WorkKind;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** An invented road of 24 miles in two panels; no such places exist and nothing in it is computed. */
final class StripFixtures {

    static final double LENGTH_MILES = 24;

    private StripFixtures() {}

    static List<StripPanel> panels() {
        return List.of(
                new StripPanel(0, metres(12.4), "Strip, Oxen Quay to Tallow Heath"),
                new StripPanel(metres(12.4), metres(LENGTH_MILES), "Strip, Tallow Heath to Little <Wick> & \"Hope\""));
    }

    static StripModel twoPanels() {
        return new StripModel(
                metres(LENGTH_MILES),
                "mph",
                ticks(),
                marks(),
                limits(),
                slopes(),
                List.of(
                        stretch(4.1, 4.9, Fill.OPEN, "24 ch"),
                        stretch(8.0, 8.2, Fill.OPEN, "12 ch"),
                        stretch(15.0, 16.0, Fill.OPEN, "40 ch")),
                List.of(
                        stretch(0, 4.4, Fill.OPEN, "starts"),
                        stretch(4.4, 6.8, Fill.DOTTED, "with sand"),
                        stretch(6.8, 7.2, Fill.HATCHED, "needs assistance"),
                        stretch(7.2, 18, Fill.OPEN, "starts"),
                        stretch(18, 20.4, Fill.SOLID, "does not start"),
                        stretch(20.4, LENGTH_MILES, Fill.OPEN, "starts")),
                settings(),
                List.of(
                        stretch(9.2, 9.8, Fill.HATCHED, "brake"),
                        stretch(12.0, 12.4, Fill.HATCHED, "brake"),
                        stretch(23.2, LENGTH_MILES, Fill.HATCHED, "brake")),
                work(),
                points(),
                run(),
                captions());
    }

    /** A road of which nothing is known but its length. */
    static StripModel bareRoad() {
        return new StripModel(
                1000,
                "mph",
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new StripModel.Run(
                        List.of(0.0, 500.0, 1000.0),
                        List.of(0.0, 20.0, 10.0),
                        List.of(Double.NaN, Double.NaN, Double.NaN),
                        List.of(50.0, Double.NaN, 48.0)),
                captions());
    }

    /** The same road with 40 points and 60 gradients on 15 miles. */
    static StripModel crowdedRoad() {
        StripModel plain = twoPanels();
        List<Point> points = new ArrayList<>();
        List<Slope> slopes = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            slopes.add(slope(i / 4.0, (i + 1) / 4.0, i % 2 == 0 ? 100 + i : -200, "1 in " + i, "" + i));
        }
        for (int number = 1; number <= 40; number++) {
            points.add(new Point(number, metres(number * 0.37), "#h" + number, "Point " + number, number % 3 == 0));
        }
        return new StripModel(
                metres(15),
                plain.speedUnit(),
                plain.ticks(),
                plain.marks(),
                plain.limits(),
                slopes,
                plain.curves(),
                plain.standing(),
                plain.settings(),
                plain.braking(),
                plain.work(),
                points,
                plain.run(),
                plain.captions());
    }

    private static double metres(double miles) {
        return Units.metresFromMiles(miles);
    }

    private static Stretch stretch(double fromMiles, double toMiles, Fill fill, String label) {
        return new Stretch(metres(fromMiles), metres(toMiles), fill, label);
    }

    private static List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        for (int mile = 0; mile <= LENGTH_MILES; mile++) {
            ticks.add(new Tick(metres(mile), mile + "m"));
        }
        return ticks;
    }

    private static Mark mark(MarkKind kind, double fromMiles, @Nullable Double toMiles, String name, String note) {
        return new Mark(kind, metres(fromMiles), toMiles == null ? null : metres(toMiles), name, note);
    }

    private static List<Mark> marks() {
        return List.of(
                mark(MarkKind.PLACE, 0, null, "Oxen Quay", "10.05"),
                mark(MarkKind.PLACE, 4.9, null, "Rushy Bridge", "10.16"),
                mark(MarkKind.PLACE, 7.4, null, "Knapp Summit", "10.22"),
                mark(MarkKind.PLACE, 12.4, null, "Tallow Heath", "10.33"),
                mark(MarkKind.PLACE, 17.0, null, "Dunnock Road", ""),
                mark(MarkKind.PLACE, 24, null, "Little Wick", "10.58"),
                mark(MarkKind.TUNNEL, 8.6, 9.15, "Hobb tunnel", ""),
                mark(MarkKind.LANDMARK, 2.3, null, "mill stack", ""),
                mark(MarkKind.LANDMARK, 6.5, null, "quarry bridge", ""),
                mark(MarkKind.LANDMARK, 6.9, null, "white cottage", ""),
                mark(MarkKind.LANDMARK, 19.2, null, "three poplars", ""),
                mark(MarkKind.SIGNAL, 1.1, null, "Oxen Quay starter", ""),
                mark(MarkKind.SIGNAL, 4.5, null, "Rushy Bridge home", ""),
                mark(MarkKind.SIGNAL, 11.9, null, "Tallow Heath distant", ""),
                mark(MarkKind.SIGNAL, 23, null, "Little Wick distant", ""),
                mark(MarkKind.WATER, 0, null, "column", ""),
                mark(MarkKind.WATER, 10.6, 11.0, "troughs", ""),
                mark(MarkKind.WATER, 17.0, null, "column, up end", ""),
                mark(MarkKind.CROSSING, 3.2, null, "Marsh Lane", ""),
                mark(MarkKind.CROSSING, 3.6, null, "Far Lane", ""),
                mark(MarkKind.HAZARD, 5.4, 7.0, "poor rail", ""),
                mark(MarkKind.HAZARD, 7.1, null, "catch points", ""),
                mark(MarkKind.HAZARD, 20.5, 24.0, "overhead wires", ""));
    }

    private static List<Limit> limits() {
        return List.of(
                limit(0, 0.6, 20, false),
                limit(0.6, 4.2, 60, false),
                limit(4.2, 5.2, 45, false),
                limit(5.2, 24, 60, false),
                limit(9.8, 10.3, 20, true),
                limit(10.3, 12.4, 50, false),
                limit(23.4, 24, 15, false));
    }

    private static Limit limit(double fromMiles, double toMiles, double mph, boolean temporary) {
        return new Limit(metres(fromMiles), metres(toMiles), mph, String.valueOf(Math.round(mph)), temporary);
    }

    private static List<Slope> slopes() {
        return List.of(
                slope(0, 1.1, 0, "level", "level"),
                slope(1.1, 2.4, 150, "1 in 150", "150"),
                slope(2.4, 6.8, 87, "1 in 87", "87"),
                slope(6.8, 7.1, 300, "1 in 300", "300"),
                slope(7.1, 7.7, 0, "level", "level"),
                slope(7.7, 10.6, -120, "1 in 120", "120"),
                slope(10.6, 17.5, -400, "1 in 400", "400"),
                slope(17.5, 20.6, 82, "1 in 82", "82"),
                slope(20.6, 22.0, -95, "1 in 95", "95"),
                slope(22.0, 24, 0, "level", "level"));
    }

    private static Slope slope(double fromMiles, double toMiles, double oneIn, String label, String shortLabel) {
        return new Slope(metres(fromMiles), metres(toMiles), oneIn == 0 ? 0 : 1 / oneIn, label, shortLabel);
    }

    private static Setting setting(double fromMiles, double toMiles, int cutoffPercent, double regulator) {
        String words = regulator > 0.9 ? "wide open" : regulator > 0.4 ? "half open" : "first valve";
        return new Setting(
                metres(fromMiles),
                metres(toMiles),
                cutoffPercent / 100.0,
                regulator,
                regulator == 0 ? "shut" : String.valueOf(cutoffPercent),
                regulator == 0 ? "" : words);
    }

    private static List<Setting> settings() {
        return List.of(
                setting(0, 0.12, 75, 0.3),
                setting(0.12, 0.45, 50, 0.3),
                setting(0.45, 1.1, 35, 0.3),
                setting(1.1, 2.3, 25, 0.5),
                setting(2.3, 4.5, 25, 1),
                setting(4.5, 6.5, 32, 1),
                setting(6.5, 7.5, 25, 0.5),
                setting(7.5, 10.3, 0, 0),
                setting(10.3, 11.7, 25, 0.3),
                setting(11.7, 12.5, 0, 0),
                setting(12.5, 17.5, 25, 0.5),
                setting(17.5, 20.6, 40, 1),
                setting(20.6, 24, 0, 0));
    }

    private static List<Work> work() {
        List<Work> work = new ArrayList<>();
        for (double mile : new double[] {0.9, 1.5, 2.1, 2.8, 3.5, 4.3, 5.1, 5.8, 13, 14.2, 15.4, 17, 18.1, 19}) {
            work.add(new Work(WorkKind.FIRE, metres(mile), metres(mile), ""));
        }
        work.add(new Work(WorkKind.INJECTOR, metres(1.6), metres(2.6), ""));
        work.add(new Work(WorkKind.INJECTOR, metres(7.6), metres(10), ""));
        work.add(new Work(WorkKind.BLOWER, metres(7.5), metres(10.3), ""));
        work.add(new Work(WorkKind.BLOWER, metres(20.6), metres(24), ""));
        return work;
    }

    private static List<Point> points() {
        double[] miles = {0, 0.02, 0.12, 0.45, 1.1, 2.3, 4.5, 6.5, 7.5, 9.2, 10.3, 11.7, 12.0, 12.4, 17.5, 20.6, 23.2};
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < miles.length; i++) {
            int number = i + 1;
            boolean forFireman = number == 6 || number == 12;
            points.add(new Point(number, metres(miles[i]), "#h" + number, "Point " + number, forFireman));
        }
        return points;
    }

    private static StripModel.Run run() {
        List<Double> positionM = new ArrayList<>();
        List<Double> speed = new ArrayList<>();
        List<Double> pressurePsi = new ArrayList<>();
        List<Double> glassPercent = new ArrayList<>();
        for (double mile = 0; mile <= LENGTH_MILES + 1e-9; mile += 0.02) {
            positionM.add(metres(Math.min(mile, LENGTH_MILES)));
            speed.add(speedMph(mile));
            pressurePsi.add(205 - 22 * Math.exp(-Math.pow((mile - 6.8) / 2.5, 2)));
            glassPercent.add(62 + 14 * Math.sin(mile / 2.4) - 20 * Math.exp(-Math.pow((mile - 20) / 1.5, 2)));
        }
        return new StripModel.Run(positionM, speed, pressurePsi, glassPercent);
    }

    private static double speedMph(double mile) {
        double free = 42 + 14 * Math.sin(mile / 1.9) - 0.4 * Math.max(0, mile - 15);
        double fromStart = 60 * Math.sqrt(mile / 1.5);
        double limited =
                Math.min(slowed(mile, 9.8, 10.3, 20), Math.min(slowed(mile, 4.2, 5.2, 45), slowed(mile, 0, 0.6, 20)));
        double toStop = Math.min(limited, 60 * Math.sqrt(Math.max(0, 24 - mile)));
        double last = Math.min(toStop, slowed(mile, 23.4, 24, 15));
        return Math.min(free, Math.min(fromStart, last));
    }

    private static double slowed(double mile, double fromMile, double toMile, double mph) {
        double away = Math.max(0, Math.max(fromMile - mile, mile - toMile));
        return mph + 55 * Math.sqrt(away / 1.2);
    }

    static StripModel.Captions captions() {
        return new StripModel.Captions(
                "Speed",
                "Gradient",
                "Curves",
                "Water",
                "Take care",
                "If stopped",
                "Points",
                "Cutoff",
                "Regulator",
                "Fireman",
                "Boiler",
                "Glass",
                "lowest",
                "brake",
                "fire",
                "injector",
                "blower");
    }
}
