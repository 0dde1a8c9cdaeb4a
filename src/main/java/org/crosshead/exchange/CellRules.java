package org.crosshead.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;

/** Checks one cell by its column. */
final class CellRules {

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}(\\.\\d{1,9})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
    private static final Pattern COMMA_NUMBER = Pattern.compile("-?[\\d.]*,[\\d.,]*");

    /** What a spreadsheet would work out. A minus before a number is a negative number. */
    private static final Pattern FORMULA = Pattern.compile("(?s)[=+@\t].*|-(?!\\.?\\d).*");

    private static final Pattern CONTROL = Pattern.compile("(?s).*[\\p{Cntrl}&&[^\r\n]].*");

    private CellRules() {}

    /** What is wrong with a cell. */
    record Refusal(String code, List<Object> args) {

        static Refusal of(String code, Object... args) {
            return new Refusal(code, List.of(args));
        }
    }

    /** Checks a cell as it stands in the file, blanks and all. */
    static Optional<Refusal> check(Column column, String raw) {
        String cell = raw.strip();
        if (FORMULA.matcher(raw).matches() || FORMULA.matcher(cell).matches()) {
            return Optional.of(Refusal.of("formula"));
        }
        if (CONTROL.matcher(cell).matches()) {
            return Optional.of(Refusal.of("control-character"));
        }
        if (cell.isEmpty()) {
            return column.filled() ? Optional.of(Refusal.of("cell-missing")) : Optional.empty();
        }
        return kind(column, cell);
    }

    static boolean isNumber(String cell) {
        return NUMBER.matcher(cell).matches();
    }

    static boolean isWhole(String cell) {
        return WHOLE.matcher(cell).matches();
    }

    private static Optional<Refusal> kind(Column column, String cell) {
        return switch (column.kind()) {
            case TEXT -> Optional.empty();
            case WHOLE -> refuseUnless(isWhole(cell), "whole", cell);
            case NUMBER ->
                refuseUnless(isNumber(cell), COMMA_NUMBER.matcher(cell).matches() ? "number-comma" : "number", cell);
            case MEASURE -> refuseUnless(isMeasure(cell), "measure", cell);
            case YES_NO -> refuseUnless(cell.equalsIgnoreCase("yes") || cell.equalsIgnoreCase("no"), "yes-no", cell);
            case WORD ->
                refuseUnless(
                        column.words().contains(cell.toUpperCase(Locale.ROOT)),
                        "word",
                        cell,
                        String.join(", ", column.words()));
            case DAY -> refuseUnless(DayCell.looksRight(cell), "day", cell);
            case TIME -> refuseUnless(TimeCell.looksRight(cell), "time", cell);
        };
    }

    static boolean isMeasure(String cell) {
        return Measures.parse(cell, MeasureUnit.CHAINS).isPresent()
                || Measures.parse(cell, MeasureUnit.KILOMETRES).isPresent();
    }

    private static Optional<Refusal> refuseUnless(boolean right, String code, Object... args) {
        return right ? Optional.empty() : Optional.of(Refusal.of(code, args));
    }
}
