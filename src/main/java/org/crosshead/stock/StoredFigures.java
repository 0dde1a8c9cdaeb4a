package org.crosshead.stock;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.crosshead.platform.Origin;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.KnownFigures;

/** Turns stored figures into figures that may be used, in the kernel's units. */
final class StoredFigures {

    private StoredFigures() {}

    /** Returns the figures that may be used: those known, and of the estimates those that a person has accepted. */
    static KnownFigures usable(List<SourcedFigure> figures) {
        return known(figures, StoredFigures::isUsable);
    }

    /** Returns every figure with a value, estimates not yet accepted included: for checks only. */
    static KnownFigures stated(List<SourcedFigure> figures) {
        return known(figures, figure -> true);
    }

    static boolean isUsable(SourcedFigure figure) {
        return figure.value() != null && (figure.origin() != Origin.ESTIMATED || figure.accepted());
    }

    static Optional<SourcedFigure> keyed(List<SourcedFigure> figures, String key) {
        return figures.stream().filter(figure -> figure.key().equals(key)).findFirst();
    }

    /** Returns the class's figures with those of one of its engines in their place where it has its own. */
    static List<SourcedFigure> merged(List<SourcedFigure> ofClass, List<SourcedFigure> ofEngine) {
        Map<String, SourcedFigure> byKey = new LinkedHashMap<>();
        ofClass.forEach(figure -> byKey.put(figure.key(), figure));
        ofEngine.stream().filter(StoredFigures::isUsable).forEach(figure -> byKey.put(figure.key(), figure));
        return List.copyOf(byKey.values());
    }

    private static KnownFigures known(List<SourcedFigure> figures, Predicate<SourcedFigure> wanted) {
        Map<String, Double> si = new HashMap<>();
        for (SourcedFigure figure : figures) {
            Double value = figure.value();
            if (value != null && wanted.test(figure)) {
                FigureUnit.labelled(figure.unit()).ifPresent(unit -> si.put(figure.key(), unit.toSi(value)));
            }
        }
        return new KnownFigures(si);
    }
}
