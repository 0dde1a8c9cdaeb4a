package org.crosshead.exchange;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One line of a file. Its cells have been checked each by its column; where one was refused, the answer here stands in for it
 * only so that reading can go on to the next problem.
 *
 * @param number line of the file, the header being 1
 * @param cells by column, without blanks around them
 */
record Line(ImportFile file, int number, Map<String, String> cells) {

    Line {
        cells = Map.copyOf(cells);
    }

    String text(String column) {
        return cells.getOrDefault(column, "");
    }

    @Nullable
    String textOrNull(String column) {
        return text(column).isEmpty() ? null : text(column);
    }

    double number(String column) {
        return Optional.ofNullable(numberOrNull(column)).orElse(0.0);
    }

    @Nullable
    Double numberOrNull(String column) {
        return CellRules.isNumber(text(column)) ? Double.valueOf(new BigDecimal(text(column)).doubleValue()) : null;
    }

    int whole(String column) {
        return CellRules.isWhole(text(column)) ? Integer.parseInt(text(column)) : 0;
    }

    boolean yes(String column) {
        return text(column).equalsIgnoreCase("yes");
    }

    <E extends Enum<E>> E word(String column, Class<E> words) {
        return Optional.ofNullable(wordOrNull(column, words)).orElseGet(() -> words.getEnumConstants()[0]);
    }

    <E extends Enum<E>> @Nullable E wordOrNull(String column, Class<E> words) {
        String cell = text(column).toUpperCase(Locale.ROOT);
        for (E word : words.getEnumConstants()) {
            if (word.name().equals(cell)) {
                return word;
            }
        }
        return null;
    }
}
