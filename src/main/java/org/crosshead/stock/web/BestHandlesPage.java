package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.stock.BestHandles;

/** The handles that use least, in words ready to show. */
record BestHandlesPage(List<String> pulls, List<Row> rows) {

    /** One speed; cells in the order of the pulls. */
    record Row(String speedMph, List<Cell> cells) {}

    /** The handles and the steam they use; a dash and nothing where there are none. */
    record Cell(String handles, String steam) {}

    static BestHandlesPage of(BestHandles best, Words words) {
        return new BestHandlesPage(
                best.pullsTons().stream()
                        .map(tons -> words.of("stock.best.pull", Numbers.rounded(tons, 1)))
                        .toList(),
                best.rows().stream()
                        .map(row -> new Row(
                                Numbers.rounded(row.speedMph(), 0),
                                row.cells().stream()
                                        .map(cell -> cell.map(found -> cell(found, words))
                                                .orElse(new Cell("–", "")))
                                        .toList()))
                        .toList());
    }

    private static Cell cell(BestHandles.Cell cell, Words words) {
        double regulator = cell.controls().regulator();
        String code;
        if (regulator >= 1) {
            code = "stock.best.wide";
        } else if (regulator > Controls.FIRST_VALVE) {
            code = "stock.best.eased";
        } else {
            code = regulator == Controls.FIRST_VALVE ? "stock.best.first" : "stock.best.part";
        }
        return new Cell(
                words.of(code, Numbers.rounded(100 * cell.controls().cutoff(), 0)),
                Numbers.rounded(cell.steamLbPerHpHour(), 1));
    }
}
