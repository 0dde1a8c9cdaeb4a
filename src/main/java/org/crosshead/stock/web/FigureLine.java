package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.crosshead.platform.Origin;
import org.crosshead.stock.Estimates;
import org.crosshead.stock.FigureEntry;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.figure.FigureSpec;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.Need;
import org.jspecify.annotations.Nullable;

/**
 * A line of a table of figures.
 *
 * @param value as entered with its unit, or null while unknown
 * @param origin where it came from; an estimate says whether it is accepted
 * @param note source, rule, or why it is unknown
 * @param needed whether no forecast can do without it
 * @param offer the estimate that waits to be accepted, or null
 */
record FigureLine(
        FigureSpec spec,
        @Nullable String value,
        Origin origin,
        String note,
        boolean needed,
        @Nullable String by,
        @Nullable String on,
        @Nullable Offer offer) {

    /** Returns whether its value is an estimate that a person has accepted. */
    public boolean estimate() {
        return value != null && origin == Origin.ESTIMATED;
    }

    /** Returns whether a forecast waits for it. */
    public boolean lacking() {
        return needed && value == null;
    }

    /** An estimate that waits to be accepted. */
    record Offer(String value, String rule) {}

    static List<FigureLine> of(
            FigureSpec[] catalogue, Collection<? extends FigureSpec> needed, List<FigureEntry> entries, Words words) {
        List<SourcedFigure> figures = entries.stream().map(FigureEntry::figure).toList();
        return Arrays.stream(catalogue)
                .map(spec -> line(spec, needed.contains(spec), entries, figures, words))
                .toList();
    }

    /** An estimate that nobody has accepted stands in the column of offers only: as a value it is unknown. */
    private static FigureLine line(
            FigureSpec spec, boolean needed, List<FigureEntry> entries, List<SourcedFigure> figures, Words words) {
        Offer offer = Estimates.waiting(spec, figures)
                .flatMap(figure -> offer(figure, words))
                .orElse(null);
        Optional<FigureEntry> entry = entries.stream()
                .filter(one -> one.figure().key().equals(spec.key()))
                .findFirst();
        if (entry.isEmpty()) {
            return new FigureLine(spec, null, Origin.UNKNOWN, "", needed, null, null, offer);
        }
        SourcedFigure figure = entry.get().figure();
        boolean waits = figure.origin() == Origin.ESTIMATED && !figure.accepted();
        Double value = figure.value();
        return new FigureLine(
                spec,
                value == null || waits ? null : shown(value, figure.unit(), words),
                waits ? Origin.UNKNOWN : figure.origin(),
                waits ? "" : figure.note(),
                needed,
                entry.get().enteredBy(),
                words.day(entry.get().enteredAt()),
                offer);
    }

    /** Returns the lines by what they are for, in the order of the needs. */
    static SortedMap<Need, List<FigureLine>> byNeed(List<FigureLine> lines) {
        SortedMap<Need, List<FigureLine>> groups = new TreeMap<>();
        lines.forEach(line -> groups.computeIfAbsent(line.spec().need(), need -> new ArrayList<>())
                .add(line));
        return groups;
    }

    private static Optional<Offer> offer(SourcedFigure estimate, Words words) {
        return Optional.ofNullable(estimate.value())
                .map(value -> new Offer(shown(value, estimate.unit(), words), estimate.note()));
    }

    private static String shown(double value, String unit, Words words) {
        String unitWords = FigureUnit.labelled(unit)
                .map(known -> words.of("stock.unit." + known.name()))
                .orElse(unit);
        return (Numbers.shown(value) + " " + unitWords).trim();
    }
}
