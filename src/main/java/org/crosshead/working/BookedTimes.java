package org.crosshead.working;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Turns times as a timetable prints them into moments. A time earlier than the one before it is past midnight; when the clock
 * goes back, the first reading that does not run backwards is taken.
 */
public final class BookedTimes {

    /** A train that seems to stand or run longer than this between two times has one of them wrong. */
    static final Duration LONGEST_STEP = Duration.ofHours(12);

    private BookedTimes() {}

    /**
     * Returns the moments of the times in running order, or nothing from the first that runs backwards on.
     *
     * @param times in running order; null where none is booked
     * @return as many moments as times; null where none is booked; shorter where the next time runs backwards
     */
    public static List<@Nullable Instant> resolve(LocalDate day, ZoneId zone, List<@Nullable LocalTime> times) {
        List<@Nullable Instant> moments = new ArrayList<>();
        Instant last = null;
        for (LocalTime time : times) {
            if (time == null) {
                moments.add(null);
                continue;
            }
            Instant reached = last;
            Optional<Instant> next = reached == null
                    ? Optional.of(day.atTime(time).atZone(zone).toInstant())
                    : firstNotBefore(reached, time, zone);
            if (next.isEmpty()) {
                return moments;
            }
            last = next.get();
            moments.add(last);
        }
        return moments;
    }

    private static Optional<Instant> firstNotBefore(Instant last, LocalTime time, ZoneId zone) {
        LocalDate day = last.atZone(zone).toLocalDate();
        for (LocalDate tried : List.of(day, day.plusDays(1))) {
            ZonedDateTime reading = tried.atTime(time).atZone(zone);
            for (ZonedDateTime offset :
                    List.of(reading.withEarlierOffsetAtOverlap(), reading.withLaterOffsetAtOverlap())) {
                Instant moment = offset.toInstant();
                if (!moment.isBefore(last) && Duration.between(last, moment).compareTo(LONGEST_STEP) <= 0) {
                    return Optional.of(moment);
                }
            }
        }
        return Optional.empty();
    }
}
