package org.crosshead.stock;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.crosshead.platform.Origin;
import org.crosshead.stock.figure.EstimateRule;
import org.crosshead.stock.figure.FigureSpec;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.KnownFigures;

/** Estimates of unknown figures: offered, and counting only once a person has accepted them. */
public final class Estimates {

    private static final int FIGURES_KEPT = 3;

    private Estimates() {}

    /**
     * Returns the estimate that may be offered for this figure, in its customary unit, not accepted; empty where the figure
     * is known, has no rule, or what the rule needs is itself unknown or not accepted.
     */
    public static Optional<SourcedFigure> offered(FigureSpec spec, List<SourcedFigure> figures) {
        boolean known = StoredFigures.keyed(figures, spec.key())
                .filter(figure -> figure.value() != null)
                .isPresent();
        return known ? Optional.empty() : spec.estimate().flatMap(rule -> byRule(spec, rule, figures));
    }

    /** Returns the estimate that waits for acceptance: one that stands in the figures unaccepted, or else the one offered. */
    public static Optional<SourcedFigure> waiting(FigureSpec spec, List<SourcedFigure> figures) {
        return StoredFigures.keyed(figures, spec.key())
                .filter(figure -> figure.origin() == Origin.ESTIMATED && !figure.accepted())
                .or(() -> offered(spec, figures));
    }

    /** Returns the accepted form of the estimate that waits. */
    static Optional<SourcedFigure> toAccept(
            List<SourcedFigure> figures, String key, Function<String, Optional<? extends FigureSpec>> catalogue) {
        return catalogue
                .apply(key)
                .flatMap(spec -> waiting(spec, figures))
                .map(figure -> new SourcedFigure(
                        figure.key(), figure.value(), figure.unit(), Origin.ESTIMATED, figure.note(), true));
    }

    static List<SourcedFigure> replaced(List<SourcedFigure> figures, SourcedFigure by) {
        List<SourcedFigure> replaced = new ArrayList<>(figures);
        replaced.removeIf(figure -> figure.key().equals(by.key()));
        replaced.add(by);
        return replaced;
    }

    private static Optional<SourcedFigure> byRule(FigureSpec spec, EstimateRule rule, List<SourcedFigure> figures) {
        KnownFigures usable = StoredFigures.usable(figures);
        FigureUnit unit = spec.customary();
        return rule.si()
                .apply(usable)
                .map(si -> rounded(unit.fromSi(si)))
                .filter(value -> spec.range().holds(value))
                .map(value ->
                        new SourcedFigure(spec.key(), value, unit.label(), Origin.ESTIMATED, rule.words(), false));
    }

    /** An estimate shows no more figures than it deserves. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(FIGURES_KEPT)).doubleValue();
    }
}
