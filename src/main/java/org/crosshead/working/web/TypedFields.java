package org.crosshead.working.web;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.working.BookedTimes.Reading;
import org.crosshead.working.TrainRefusedException.Problem;
import org.jspecify.annotations.Nullable;

/** Reads fields as typed, and keeps a problem for each that can't be read. */
final class TypedFields {

    private static final Pattern TIME = Pattern.compile("([01]?\\d|2[0-3])[:.]([0-5]\\d)(?:[:.]([0-5]\\d))?( again)?");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

    private final List<Problem> problems = new ArrayList<>();

    /** A field with what was typed in it; list and index as in {@link Problem}. */
    record Cell(String list, int index, String field, String typed) {

        static Cell of(String field, String typed) {
            return new Cell("", -1, field, typed);
        }
    }

    /** Returns what was typed without the blanks around it; empty where nothing came. */
    static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    static @Nullable String orNull(String typed) {
        return typed.isEmpty() ? null : typed;
    }

    static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException ex) {
            return Optional.empty();
        }
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    void refuse(Cell cell, String code, Object... args) {
        problems.add(new Problem(cell.list(), cell.index(), cell.field(), code, List.of(args)));
    }

    LocalDate day(Cell cell, LocalDate otherwise) {
        Optional<LocalDate> day = day(cell.typed()).filter(read -> read.getYear() >= 1900 && read.getYear() <= 9998);
        if (day.isEmpty()) {
            refuse(cell, "day-unreadable");
        }
        return day.orElse(otherwise);
    }

    /** Returns the reading, or null where none is typed or it can't be read. */
    @Nullable
    Reading time(Cell cell) {
        if (cell.typed().isEmpty()) {
            return null;
        }
        Matcher time = TIME.matcher(cell.typed());
        if (!time.matches()) {
            refuse(cell, "time-unreadable");
            return null;
        }
        String seconds = time.group(3) == null ? "0" : time.group(3);
        return new Reading(
                LocalTime.of(whole(time.group(1)), whole(time.group(2)), whole(seconds)), time.group(4) != null);
    }

    double number(Cell cell, double whenEmpty) {
        if (cell.typed().isEmpty()) {
            return whenEmpty;
        }
        if (!NUMBER.matcher(cell.typed()).matches()) {
            refuse(cell, "number-unreadable");
            return whenEmpty;
        }
        return Double.parseDouble(cell.typed());
    }

    @Nullable
    Double numberOrNull(Cell cell) {
        return cell.typed().isEmpty() ? null : (Double) number(cell, 0);
    }

    double measure(Cell cell, MeasureUnit unit) {
        Optional<Double> measure = Measures.parse(cell.typed(), unit);
        if (measure.isEmpty()) {
            refuse(cell, "measure-unreadable");
        }
        return measure.orElse(0.0);
    }

    <E extends Enum<E>> E choice(Cell cell, Class<E> choices, E whenEmpty) {
        if (cell.typed().isEmpty()) {
            return whenEmpty;
        }
        Optional<E> chosen = Arrays.stream(choices.getEnumConstants())
                .filter(choice -> choice.name().equals(cell.typed()))
                .findFirst();
        if (chosen.isEmpty()) {
            refuse(cell, "choose");
        }
        return chosen.orElse(whenEmpty);
    }

    private static int whole(String digits) {
        return Integer.parseInt(digits);
    }
}
