package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.ShortMoves;

/**
 * Short movements in words ready to show.
 *
 * @param stop the distance in which the engine's own brake stops it, or that it has none
 * @param cold what condenses in cold cylinders
 * @param lag how far the pull follows the regulator under way
 */
record ShortMovesPage(List<Row> rows, String stop, String cold, String lag) {

    /** One burst of steam. */
    record Row(String open, String cocks, String moved, String ranOn, String top) {}

    static ShortMovesPage of(ShortMoves moves, Words words) {
        return new ShortMovesPage(
                moves.bursts().stream()
                        .map(row -> new Row(
                                words.of("stock.short.seconds", Numbers.rounded(row.openS(), 0)),
                                words.of(row.cocksOpen() ? "stock.short.cocks-open" : "stock.short.cocks-shut"),
                                words.of("stock.short.yards", yards(row.move().movedM())),
                                words.of("stock.short.yards", yards(row.move().ranOnM())),
                                words.of(
                                        "stock.short.mph",
                                        Numbers.rounded(
                                                Units.mphFromMps(row.move().topMps()), 1))))
                        .toList(),
                moves.stopM().isPresent()
                        ? words.of(
                                "stock.short.stop",
                                Numbers.rounded(ShortMoves.WALKING_MPH, 0),
                                yards(moves.stopM().getAsDouble()))
                        : words.of("stock.short.no-brake"),
                words.of(
                        "stock.short.cold",
                        pounds(moves.cold().firstKg()),
                        pounds(moves.cold().throughKg()),
                        pounds(moves.cold().clearanceKg())),
                words.of("stock.short.lag", Numbers.rounded(100 * ShortMoves.LAG_CUTOFF, 0), yards(moves.lagM())));
    }

    private static String pounds(double kg) {
        return Numbers.rounded(Units.lbFromKg(kg), 0);
    }

    /** Up to the next whole yard: the longer is the safer. */
    private static String yards(double metres) {
        return Numbers.rounded(Math.ceil(Units.yardsFromMetres(metres)), 0);
    }
}
