package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.stock.MissingFigure;
import org.crosshead.stock.figure.FigureSpec;

/**
 * A figure that a forecast still lacks.
 *
 * @param subject code of the class or kind of vehicle that lacks it
 * @param offers whether an estimate waits to be accepted
 */
record LackingFigure(String subject, FigureSpec spec, boolean offers) {

    static List<LackingFigure> of(List<MissingFigure> missing) {
        return missing.stream()
                .map(figure -> new LackingFigure(figure.subject(), figure.spec(), figure.estimate() != null))
                .toList();
    }

    static List<LackingFigure> of(String subject, List<FigureLine> lines) {
        return lines.stream()
                .filter(FigureLine::lacking)
                .map(line -> new LackingFigure(subject, line.spec(), line.offer() != null))
                .toList();
    }
}
