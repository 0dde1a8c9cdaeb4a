package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.diagram.PullCurves;
import org.crosshead.diagram.PullCurves.Curve;
import org.crosshead.diagram.PullCurves.Line;
import org.crosshead.diagram.PullCurves.Point;
import org.crosshead.stock.PullTable;

/**
 * The curves of a class, drawn and as a table.
 *
 * @param svg the drawing, made by this service from figures alone
 * @param cutoffs heads of the columns
 */
record CurvesPage(String svg, List<String> cutoffs, List<Row> rows) {

    /** A row of the table, in words ready to show; the boiler sets no limit at rest. */
    record Row(String speedMph, List<String> cylinderLbf, String boilerLbf, String railLbf, String drawbarLbf) {}

    static CurvesPage of(PullTable table, String className, Words words) {
        List<String> cutoffs = table.cutoffs().stream()
                .map(cutoff -> Numbers.rounded(100 * cutoff, 0) + " %")
                .toList();
        PullCurves.Words axes = new PullCurves.Words(
                words.of("stock.curves.speed"),
                words.of("stock.curves.pull"),
                words.of("stock.curves.spoken", className));
        return new CurvesPage(
                PullCurves.svg(curves(table, cutoffs, words), axes),
                cutoffs,
                table.rows().stream().map(CurvesPage::row).toList());
    }

    private static List<Curve> curves(PullTable table, List<String> labels, Words words) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            int column = i;
            curves.add(new Curve(
                    labels.get(i),
                    Line.CUTOFF,
                    table.rows().stream()
                            .map(row ->
                                    new Point(row.speedMph(), row.cylinderLbf().get(column)))
                            .toList()));
        }
        List<Point> boiler = table.rows().stream()
                .filter(row -> Double.isFinite(row.boilerLbf()))
                .map(row -> new Point(row.speedMph(), row.boilerLbf()))
                .toList();
        if (!boiler.isEmpty()) {
            curves.add(new Curve(words.of("stock.curves.boiler"), Line.BOILER, boiler));
        }
        curves.add(new Curve(
                words.of("stock.curves.rail"),
                Line.RAIL,
                table.rows().stream()
                        .map(row -> new Point(row.speedMph(), row.railLbf()))
                        .toList()));
        curves.add(new Curve(
                words.of("stock.curves.drawbar"),
                Line.DRAWBAR,
                table.rows().stream()
                        .map(row -> new Point(row.speedMph(), row.drawbarLbf()))
                        .toList()));
        return curves;
    }

    private static Row row(PullTable.Row row) {
        return new Row(
                Numbers.rounded(row.speedMph(), 0),
                row.cylinderLbf().stream().map(pull -> Numbers.rounded(pull, 0)).toList(),
                Double.isFinite(row.boilerLbf()) ? Numbers.rounded(row.boilerLbf(), 0) : "–",
                Numbers.rounded(row.railLbf(), 0),
                Numbers.rounded(row.drawbarLbf(), 0));
    }
}
