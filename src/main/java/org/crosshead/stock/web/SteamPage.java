package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.stock.SteamTable;

/**
 * What an engine uses, ready to show.
 *
 * @param cutoffs heads of the columns
 * @param worst pull of a start in the worst position of the cranks, per cent of the mean
 * @param best the same in the best
 */
record SteamPage(List<String> cutoffs, List<Row> rows, String worst, String best) {

    /** One speed; cells in the order of the cutoffs. */
    record Row(String speedMph, List<Cell> cells) {}

    /** Steam in an hour, steam and coal for a horse-power hour; a dash where the boiler does not keep it up. */
    record Cell(String steam, String rate, String coal) {}

    static SteamPage of(SteamTable table) {
        return new SteamPage(
                table.cutoffs().stream()
                        .map(cutoff -> Numbers.rounded(100 * cutoff, 0) + " %")
                        .toList(),
                table.rows().stream()
                        .map(row -> new Row(
                                Numbers.rounded(row.speedMph(), 0),
                                row.cells().stream().map(SteamPage::cell).toList()))
                        .toList(),
                Numbers.rounded(100 * table.starting().leastOverMean(), 0),
                Numbers.rounded(100 * table.starting().peakOverMean(), 0));
    }

    private static Cell cell(SteamTable.Cell cell) {
        return new Cell(
                Numbers.rounded(cell.steamLbPerHour(), 0),
                Numbers.rounded(cell.steamLbPerHpHour(), 1),
                cell.keptUp() ? Numbers.rounded(cell.coalLbPerHpHour(), 1) : "\u2013");
    }
}
