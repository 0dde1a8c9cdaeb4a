package org.crosshead.stock.web;

import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.LoadSummary;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.figure.FigureUnit;

/** A formation's totals and vehicles, front first, ready to show. */
record FormationPage(
        String loadTons,
        String tareTons,
        String axles,
        String lengthFt,
        String brakedPerCent,
        int vehicles,
        List<Line> lines) {

    /** One vehicle; a dash where it has no power brake or its axles are unknown. */
    record Line(
            int place,
            String kindCode,
            String number,
            String tareTons,
            String grossTons,
            String lengthFt,
            String axles,
            String brake,
            String blockForceTons,
            boolean braked) {}

    static FormationPage of(FormationFigures.Resolved known) {
        LoadSummary totals = StockModel.summary(known);
        return new FormationPage(
                Numbers.rounded(totals.loadTons(), 1),
                Numbers.rounded(totals.tareTons(), 1),
                totals.axles().isPresent() ? Integer.toString(totals.axles().getAsInt()) : "–",
                Numbers.rounded(totals.lengthFt(), 0),
                Numbers.rounded(100 * totals.brakedShare(), 0),
                totals.vehicles(),
                IntStream.range(0, known.vehicles().size())
                        .mapToObj(i -> line(i + 1, known.vehicles().get(i)))
                        .toList());
    }

    private static Line line(int place, FormationFigures.Vehicle vehicle) {
        return new Line(
                place,
                vehicle.kindCode(),
                vehicle.number(),
                Numbers.rounded(Units.longTonsFromKg(vehicle.tareKg()), 1),
                Numbers.rounded(Units.longTonsFromKg(vehicle.massKg()), 1),
                Numbers.rounded(Units.feetFromMetres(vehicle.lengthM()), 0),
                vehicle.axles().isPresent() ? Integer.toString(vehicle.axles().getAsInt()) : "–",
                vehicle.brake().name(),
                vehicle.blockForceN() > 0
                        ? Numbers.rounded(FigureUnit.TON_FORCE.fromSi(vehicle.blockForceN()), 1)
                        : "–",
                vehicle.braked());
    }
}
