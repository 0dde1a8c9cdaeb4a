package org.crosshead.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day in a cell: {@code 2030-05-06}, or {@code D+3} and {@code D-400}, so many days from the day of the import. */
final class DayCell {

    private static final Pattern RELATIVE = Pattern.compile("[Dd]([+-]\\d{1,5})");
    private static final Pattern CALENDAR = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

    private DayCell() {}

    static boolean looksRight(String cell) {
        return parse(cell, ANY_DAY).isPresent();
    }

    static Optional<LocalDate> parse(String cell, LocalDate today) {
        Matcher relative = RELATIVE.matcher(cell);
        if (relative.matches()) {
            return Optional.of(today.plusDays(Integer.parseInt(relative.group(1))));
        }
        return CALENDAR.matcher(cell).matches() ? calendar(cell) : Optional.empty();
    }

    private static Optional<LocalDate> calendar(String cell) {
        try {
            return Optional.of(LocalDate.parse(cell));
        } catch (DateTimeException ex) {
            return Optional.empty();
        }
    }
}
