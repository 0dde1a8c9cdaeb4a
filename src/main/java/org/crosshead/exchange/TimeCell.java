package org.crosshead.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time in a cell: {@code 09:05} or {@code 09:05:30} on the train's day, {@code 25:10} at ten past one on the day after, or a day
 * and a time, {@code 2030-05-05 23:10} or {@code D-1 23:10}.
 */
final class TimeCell {

    private static final Pattern TIME = Pattern.compile("(?:(\\S+) )?(\\d{1,2}):([0-5]\\d)(?::([0-5]\\d))?");
    private static final int HOURS_MAX = 47;
    private static final int HOURS_PER_DAY = 24;
    private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

    private TimeCell() {}

    static boolean looksRight(String cell) {
        return parse(cell, ANY_DAY, ANY_DAY).isPresent();
    }

    /**
     * Returns the moment by the railway's clock.
     *
     * @param day the train's day
     * @param today day of the import, from which relative days count
     */
    static Optional<LocalDateTime> parse(String cell, LocalDate day, LocalDate today) {
        Matcher time = TIME.matcher(cell);
        if (!time.matches() || Integer.parseInt(time.group(2)) > HOURS_MAX) {
            return Optional.empty();
        }
        int hours = Integer.parseInt(time.group(2));
        String seconds = time.group(4) == null ? "0" : time.group(4);
        return day(time.group(1), day, today)
                .map(start -> start.plusDays(hours / HOURS_PER_DAY)
                        .atTime(hours % HOURS_PER_DAY, Integer.parseInt(time.group(3)), Integer.parseInt(seconds)));
    }

    private static Optional<LocalDate> day(@Nullable String cell, LocalDate day, LocalDate today) {
        return cell == null ? Optional.of(day) : DayCell.parse(cell, today);
    }
}
