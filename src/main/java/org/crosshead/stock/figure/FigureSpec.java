package org.crosshead.stock.figure;

import java.util.List;
import java.util.Optional;

/** One figure of a catalogue. */
public sealed interface FigureSpec permits ClassFigure, VehicleFigure {

    /** Returns the key under which it is stored and exchanged. */
    String key();

    /** Returns the units that a source may print, the customary one first. */
    List<FigureUnit> units();

    /** Returns the sensible range, both ends included, in the customary unit. */
    Range range();

    Need need();

    /** Returns whether it is a count, with no fractions. */
    default boolean whole() {
        return customary() == FigureUnit.COUNT;
    }

    /** Returns the rule by which it may be estimated, if there is one. */
    Optional<EstimateRule> estimate();

    default FigureUnit customary() {
        return units().get(0);
    }

    /** Returns the sensible range in another of its units. */
    default Range range(FigureUnit unit) {
        return unit == customary()
                ? range()
                : new Range(
                        unit.fromSi(customary().toSi(range().min())),
                        unit.fromSi(customary().toSi(range().max())));
    }

    /** A range, both ends included. */
    record Range(double min, double max) {

        public boolean holds(double value) {
            return value >= min && value <= max;
        }
    }
}
