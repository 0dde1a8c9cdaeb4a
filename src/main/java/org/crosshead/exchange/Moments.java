package org.crosshead.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Turns days and times of cells into moments by the railway's clock. */
final class Moments {

    private final LocalDate today;
    private final ZoneId zone;
    private final ProblemList problems;

    Moments(LocalDate today, ZoneId zone, ProblemList problems) {
        this.today = today;
        this.zone = zone;
        this.problems = problems;
    }

    /** Returns the day in a cell; the day of the import stands in for one that was refused already. */
    LocalDate day(Line line, String column) {
        return DayCell.parse(line.text(column), today).orElse(today);
    }

    @Nullable
    LocalDate dayOrNull(Line line, String column) {
        return line.text(column).isEmpty() ? null : day(line, column);
    }

    Instant moment(Line line, String column, LocalDate day) {
        return Optional.ofNullable(momentOrNull(line, column, day, null)).orElse(Instant.EPOCH);
    }

    /**
     * Returns the moment in a cell, or null for an empty one. An hour that the clocks skip is refused; one that they run through
     * twice is taken the first time, or the second if the first is before the moment that it must follow.
     */
    @Nullable
    Instant momentOrNull(Line line, String column, LocalDate day, @Nullable Instant after) {
        Optional<LocalDateTime> time = TimeCell.parse(line.text(column), day, today);
        if (time.isEmpty()) {
            return null;
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(time.get());
        if (offsets.isEmpty()) {
            problems.refuse(
                    line, column, "hour-missing", line.text(column), time.get().toLocalDate(), zone.getId());
            return null;
        }
        Instant first = time.get().toInstant(offsets.get(0));
        return after != null && first.isBefore(after) ? time.get().toInstant(offsets.get(offsets.size() - 1)) : first;
    }
}
