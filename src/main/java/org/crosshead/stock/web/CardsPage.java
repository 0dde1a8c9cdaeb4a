package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.diagram.IndicatorDrawing;
import org.crosshead.stock.IndicatorCards;
import org.crosshead.stock.IndicatorCards.Card;

/**
 * The indicator diagrams of a class, drawn and in figures.
 *
 * @param svg the drawing, made by this service from figures alone
 */
record CardsPage(String svg, List<Row> rows) {

    private static final double PER_CENT = 100;

    /** One diagram in figures ready to show. */
    record Row(
            String name,
            String meanPsi,
            String chestPercent,
            String terminalPsi,
            String backPsi,
            String steamLb,
            String condensedPercent) {}

    static CardsPage of(IndicatorCards cards, String className, Words words) {
        IndicatorDrawing.Words axes = new IndicatorDrawing.Words(
                words.of("stock.cards.stroke"),
                words.of("stock.cards.pressure"),
                words.of("stock.cards.spoken", className));
        return new CardsPage(
                IndicatorDrawing.svg(
                        cards.cards().stream()
                                .map(card -> new IndicatorDrawing.Loop(
                                        name(card, words),
                                        card.points().stream()
                                                .map(point ->
                                                        new IndicatorDrawing.Point(point.strokeShare(), point.psi()))
                                                .toList()))
                                .toList(),
                        axes),
                cards.cards().stream().map(card -> row(card, words)).toList());
    }

    private static String name(Card card, Words words) {
        return words.of(
                "stock.cards.name", Numbers.rounded(PER_CENT * card.cutoff(), 0), Numbers.rounded(card.speedMph(), 0));
    }

    private static Row row(Card card, Words words) {
        return new Row(
                name(card, words),
                Numbers.rounded(card.meanPsi(), 0),
                Numbers.rounded(PER_CENT * card.chestShare(), 0),
                Numbers.rounded(card.terminalPsi(), 0),
                Numbers.rounded(card.backPsi(), 1),
                Numbers.rounded(card.steamLb(), 2),
                Numbers.rounded(PER_CENT * card.condensedShare(), 0));
    }
}
