package org.crosshead.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A draft with the lines that it was read from, so that what a service refuses is said of the line that says it.
 *
 * @param head line of the draft itself
 * @param parts lines of its parts, by their path in the draft, for example {@code figures.boiler_pressure} or {@code items[2]}
 */
record Located<T>(T draft, Line head, Map<String, Line> parts) {

    /** Columns of moments and lists that are not called as the draft's field is. */
    private static final Map<String, String> OTHER_NAMES =
            Map.of("first_moment", "first_day", "last_moment", "last_day", "figures", "key", "route", "route_code");

    /** What is wrong with a figure, by the column that is wrong where it is not the value. */
    private static final Map<String, String> FIGURE_COLUMNS = Map.of(
            "stock.refused.unit-unknown", "unit",
            "stock.refused.figure-unknown", "key",
            "stock.refused.figure-twice", "key",
            "stock.refused.origin-missing", "origin",
            "stock.refused.rule-missing", "note",
            "stock.refused.too-long", "note");

    Located {
        parts = Map.copyOf(parts);
    }

    /**
     * Returns a refusal with its line and column.
     *
     * @param path field of the draft, or of one of its parts
     */
    ImportProblem problem(String path, String code, List<Object> args) {
        Optional<String> part = parts.keySet().stream()
                .filter(key -> path.equals(key) || path.startsWith(key + "."))
                .findFirst();
        Line line = part.map(parts::get).orElse(head);
        String field = path.substring(part.map(String::length).orElse(0)).replaceFirst("^\\.", "");
        String column = path.startsWith("figures.") && field.isEmpty()
                ? FIGURE_COLUMNS.getOrDefault(code, "value")
                : column(line, field);
        return new ImportProblem(line.file().fileName(), line.number(), column, code, args);
    }

    private static String column(Line line, String field) {
        String name = field.replaceAll("([a-z])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
        String column = OTHER_NAMES.getOrDefault(name, name);
        return line.file().column(column).isPresent() ? column : "";
    }
}
