package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.crosshead.briefing.document.BrakingCurve;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.diagram.BrakingDrawing;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.MeasureUnit;

/** Draws how a train slows from each of its braking points. */
final class BrakingDrawings {

    private static final String DRY = "-dry";
    private static final String GREASY = "-greasy";
    /** Curves whose lengths differ by less than a hundredth are one. */
    private static final double ALIKE = 1.01;

    private BrakingDrawings() {}

    /** Returns an SVG element for each row that has curves, by the row's number. */
    static Map<Integer, String> of(List<BrakingRow> rows, BriefingWords words) {
        Map<Integer, String> drawn = new LinkedHashMap<>();
        for (BrakingRow row : rows) {
            List<BrakingCurve> curves = row.curves();
            if (curves != null && !curves.isEmpty()) {
                drawn.put(row.number(), svg(row, curves, words));
            }
        }
        return drawn;
    }

    private static String svg(BrakingRow row, List<BrakingCurve> curves, BriefingWords words) {
        boolean metric = row.brakeAt().measureUnit() == MeasureUnit.KILOMETRES;
        List<BrakingDrawing.Curve> lines = new ArrayList<>();
        curves.stream()
                .filter(curve -> !alike(curve, curves))
                .sorted(Comparator.comparingDouble(BrakingDrawings::lengthM).reversed())
                .forEach(curve -> lines.add(line(curve, name(curve, curves), metric, words)));
        double targetM = row.targetPlace().positionM() - row.brakeAt().positionM();
        String unit = metric ? "metric" : "imperial";
        return BrakingDrawing.svg(
                lines,
                distance(targetM, metric),
                new BrakingDrawing.Words(
                        words.say("braking.curve.distance." + unit),
                        words.say("braking.curve.speed." + unit),
                        words.say("braking.curve.spoken", String.valueOf(row.number()))));
    }

    /** Returns whether a greasy rail changes nothing: the blocks never ask for more than it holds. */
    private static boolean alike(BrakingCurve greasy, List<BrakingCurve> curves) {
        return greasy.kind().endsWith(GREASY)
                && curves.stream()
                        .filter(curve -> curve.kind().equals(greasy.kind().replace(GREASY, DRY)))
                        .anyMatch(dry -> lengthM(greasy) < lengthM(dry) * ALIKE);
    }

    private static String name(BrakingCurve dry, List<BrakingCurve> curves) {
        boolean any = curves.stream()
                .filter(curve -> curve.kind().equals(dry.kind().replace(DRY, GREASY)))
                .anyMatch(greasy -> dry.kind().endsWith(DRY) && alike(greasy, curves));
        return any ? dry.kind().replace(DRY, "-any") : dry.kind();
    }

    private static double lengthM(BrakingCurve curve) {
        return curve.metres().get(curve.metres().size() - 1);
    }

    private static BrakingDrawing.Curve line(BrakingCurve curve, String name, boolean metric, BriefingWords words) {
        List<BrakingDrawing.Point> points = new ArrayList<>();
        for (int i = 0; i < curve.metres().size(); i++) {
            double mps = curve.mps().get(i);
            points.add(new BrakingDrawing.Point(
                    distance(curve.metres().get(i), metric), metric ? Units.kmhFromMps(mps) : Units.mphFromMps(mps)));
        }
        return new BrakingDrawing.Curve(
                words.say("braking.curve." + name),
                BrakingDrawing.Line.valueOf(
                        curve.kind().toUpperCase(Locale.ROOT).replace('-', '_')),
                points);
    }

    private static double distance(double metres, boolean metric) {
        return metric ? metres : metres / Units.metresFromYards(1);
    }
}
