package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.platform.Origin;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockProblem;
import org.crosshead.stock.figure.FigureSpec;
import org.jspecify.annotations.Nullable;

/** A row of a form: one figure as typed. */
record FigureRow(FigureSpec spec, String value, String unit, String origin, String note) {

    static final String PREFIX = "figures.";

    /** Returns a row for every figure of the catalogue, filled where there is one. */
    static List<FigureRow> filled(FigureSpec[] catalogue, List<SourcedFigure> figures) {
        return Arrays.stream(catalogue)
                .map(spec -> figures.stream()
                        .filter(figure -> figure.key().equals(spec.key()))
                        .findFirst()
                        .map(figure -> filled(spec, figure))
                        .orElseGet(
                                () -> new FigureRow(spec, "", spec.customary().label(), Origin.UNKNOWN.name(), "")))
                .toList();
    }

    /** Returns a row for every figure of the catalogue, as typed. */
    static List<FigureRow> typed(FigureSpec[] catalogue, Map<String, String> fields) {
        return Arrays.stream(catalogue)
                .map(spec -> new FigureRow(
                        spec,
                        field(fields, spec, "value", ""),
                        field(fields, spec, "unit", spec.customary().label()),
                        field(fields, spec, "origin", Origin.UNKNOWN.name()),
                        field(fields, spec, "note", "")))
                .toList();
    }

    /** Returns the name of its fields but for their last part. */
    public String field() {
        return PREFIX + spec.key();
    }

    /** Returns the origins to choose from. */
    public List<String> origins() {
        return Arrays.stream(Origin.values()).map(Origin::name).toList();
    }

    /** Returns whether anything is typed in it. */
    public boolean says() {
        return !value.isBlank() || !note.isBlank() || originOf(origin) != Origin.UNKNOWN;
    }

    /** Returns the least sensible value, in the customary unit. */
    public String least() {
        return Numbers.shown(spec.range().min());
    }

    /** Returns the greatest sensible value, in the customary unit. */
    public String greatest() {
        return Numbers.shown(spec.range().max());
    }

    /**
     * Returns the figures of the rows that say anything. An estimate that is as it was keeps whether it is accepted; any other
     * waits to be accepted.
     *
     * @param problems takes what can't be read as a number
     */
    static List<SourcedFigure> figures(List<FigureRow> rows, List<SourcedFigure> before, List<StockProblem> problems) {
        List<SourcedFigure> figures = new ArrayList<>();
        for (FigureRow row : rows) {
            Optional<Double> value = Numbers.decimal(row.value);
            if (value.isEmpty() && !row.value.isBlank()) {
                problems.add(
                        new StockProblem(PREFIX + row.spec.key(), "stock.refused.not-a-number", List.of(row.value)));
            } else if (row.says()) {
                figures.add(row.figure(value.orElse(null), before));
            }
        }
        return figures;
    }

    private SourcedFigure figure(@Nullable Double value, List<SourcedFigure> before) {
        Origin entered = originOf(origin);
        SourcedFigure waiting =
                new SourcedFigure(spec.key(), value, unit, entered, note.trim(), entered != Origin.ESTIMATED);
        SourcedFigure accepted = new SourcedFigure(spec.key(), value, unit, entered, note.trim(), true);
        return before.contains(accepted) ? accepted : waiting;
    }

    private static FigureRow filled(FigureSpec spec, SourcedFigure figure) {
        Double value = figure.value();
        return new FigureRow(
                spec,
                value == null ? "" : Numbers.typed(value),
                figure.unit(),
                figure.origin().name(),
                figure.note());
    }

    private static Origin originOf(String name) {
        return Arrays.stream(Origin.values())
                .filter(origin -> origin.name().equals(name))
                .findFirst()
                .orElse(Origin.UNKNOWN);
    }

    private static String field(Map<String, String> fields, FigureSpec spec, String part, String otherwise) {
        return fields.getOrDefault(PREFIX + spec.key() + "." + part, otherwise);
    }
}
