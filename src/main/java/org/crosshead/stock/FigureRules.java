package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.platform.Origin;
import org.crosshead.stock.figure.FigureSpec;
import org.crosshead.stock.figure.FigureUnit;
import org.jspecify.annotations.Nullable;

/** Checks figures one by one against their catalogue: known key and unit, sensible range, an origin that fits. */
final class FigureRules {

    private static final int NOTE_LENGTH_MAX = 400;

    private final List<StockProblem> problems = new ArrayList<>();
    private final Function<String, Optional<? extends FigureSpec>> catalogue;

    private FigureRules(Function<String, Optional<? extends FigureSpec>> catalogue) {
        this.catalogue = catalogue;
    }

    static List<StockProblem> problems(
            List<SourcedFigure> figures, Function<String, Optional<? extends FigureSpec>> catalogue) {
        FigureRules rules = new FigureRules(catalogue);
        Set<String> keys = new HashSet<>();
        for (SourcedFigure figure : figures) {
            if (!keys.add(figure.key())) {
                rules.add(figure, "figure-twice", figure.key());
            }
            rules.check(figure);
        }
        return rules.problems;
    }

    private void check(SourcedFigure figure) {
        Optional<? extends FigureSpec> spec = catalogue.apply(figure.key());
        if (spec.isEmpty()) {
            add(figure, "figure-unknown", figure.key());
            return;
        }
        origin(figure);
        Optional<FigureUnit> unit = FigureUnit.labelled(figure.unit())
                .filter(stated -> spec.get().units().contains(stated));
        if (unit.isEmpty()) {
            add(figure, "unit-unknown", figure.unit(), labels(spec.get()));
            return;
        }
        value(figure, figure.value(), spec.get(), unit.get());
    }

    private void origin(SourcedFigure figure) {
        if (figure.origin() == Origin.UNKNOWN && figure.value() != null) {
            add(figure, "origin-missing");
        }
        if (figure.origin() != Origin.UNKNOWN && figure.value() == null) {
            add(figure, "value-missing");
        }
        if (figure.origin() == Origin.ESTIMATED && figure.note().isBlank()) {
            add(figure, "rule-missing");
        }
        if (figure.note().length() > NOTE_LENGTH_MAX) {
            add(figure, "too-long", NOTE_LENGTH_MAX);
        }
    }

    private void value(SourcedFigure figure, @Nullable Double value, FigureSpec spec, FigureUnit unit) {
        if (value == null) {
            return;
        }
        FigureSpec.Range range = spec.range(unit);
        if (!range.holds(value)) {
            add(figure, "out-of-range", value, unit.label(), range.min(), range.max());
        } else if (spec.whole() && value != Math.rint(value)) {
            add(figure, "not-whole", value);
        }
    }

    private static String labels(FigureSpec spec) {
        return spec.units().stream()
                .map(unit -> unit == FigureUnit.COUNT ? "–" : unit.label())
                .collect(Collectors.joining(", "));
    }

    private void add(SourcedFigure figure, String code, Object... args) {
        problems.add(refused("figures." + figure.key(), code, args));
    }
}
