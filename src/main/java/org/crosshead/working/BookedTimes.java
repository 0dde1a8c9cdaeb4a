package org.crosshead.working;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Turns times as a timetable prints them into moments. A time earlier than the one before it is past midnight; when the clock
 * goes back, the first reading that does not run backwards is taken, unless the second is asked for.
 */
public final class BookedTimes {

    /** A train that seems to stand or run longer than this between two times has one of them wrong. */
    static final Duration LONGEST_STEP = Duration.ofHours(12);

    private BookedTimes() {}

    /**
     * A reading of the railway's clock.
     *
     * @param again whether, in an hour that the clock shows twice, the second time is meant
     */
    public record Reading(LocalTime time, boolean again) {

        Optional<ZonedDateTime> on(LocalDate day, ZoneId zone) {
            ZonedDateTime moment = day.atTime(time).atZone(zone);
            boolean skipped = !moment.toLocalTime().equals(time);
            return skipped
                    ? Optional.empty()
                    : Optional.of(again ? moment.withLaterOffsetAtOverlap() : moment.withEarlierOffsetAtOverlap());
        }
    }

    /**
     * What the times come to.
     *
     * @param moments null where none is booked; ends before the first time that can't follow
     * @param skipped whether that time is missing because the clock never shows it, being put forward over it
     */
    public record Resolved(List<@Nullable Instant> moments, boolean skipped) {}

    /**
     * Returns the moments of the times in running order.
     *
     * @param times in running order; null where none is booked
     */
    public static Resolved resolve(LocalDate day, ZoneId zone, List<@Nullable Reading> times) {
        List<@Nullable Instant> moments = new ArrayList<>();
        Instant last = null;
        for (Reading time : times) {
            if (time == null) {
                moments.add(null);
                continue;
            }
            Optional<Instant> next =
                    last == null ? time.on(day, zone).map(ZonedDateTime::toInstant) : firstNotBefore(last, time, zone);
            if (next.isEmpty()) {
                return new Resolved(moments, last == null || isSkippedAfter(last, time, zone));
            }
            last = next.get();
            moments.add(last);
        }
        return new Resolved(moments, false);
    }

    private static Optional<Instant> firstNotBefore(Instant last, Reading time, ZoneId zone) {
        LocalDate day = last.atZone(zone).toLocalDate();
        for (LocalDate tried : List.of(day, day.plusDays(1))) {
            Optional<ZonedDateTime> reading = time.on(tried, zone);
            if (reading.isEmpty()) {
                continue;
            }
            for (ZonedDateTime offset : List.of(reading.get(), reading.get().withLaterOffsetAtOverlap())) {
                Instant moment = offset.toInstant();
                if (isStep(last, moment)) {
                    return Optional.of(moment);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isSkippedAfter(Instant last, Reading time, ZoneId zone) {
        LocalDate day = last.atZone(zone).toLocalDate();
        return List.of(day, day.plusDays(1)).stream()
                .filter(tried -> time.on(tried, zone).isEmpty())
                .map(tried -> tried.atTime(time.time()).atZone(zone).toInstant())
                .anyMatch(moment -> isStep(last, moment));
    }

    private static boolean isStep(Instant last, Instant moment) {
        return !moment.isBefore(last) && Duration.between(last, moment).compareTo(LONGEST_STEP) <= 0;
    }

    /** Returns the moment of this reading that lies nearest to another moment, or nothing if the clock skips it. */
    public static Optional<Instant> nearest(Instant to, Reading time, ZoneId zone) {
        LocalDate day = to.atZone(zone).toLocalDate();
        return List.of(day.minusDays(1), day, day.plusDays(1)).stream()
                .map(tried -> time.on(tried, zone).map(ZonedDateTime::toInstant))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(moment -> Duration.between(to, moment).abs()));
    }
}
