package org.crosshead.working.web;

import java.time.LocalDate;
import java.util.List;

/**
 * The trains of a day, ready to show.
 *
 * @param inWords the day
 */
record DayPage(LocalDate day, String inWords, List<Line> lines) {

    DayPage {
        lines = List.copyOf(lines);
    }

    public LocalDate before() {
        return day.minusDays(1);
    }

    public LocalDate after() {
        return day.plusDays(1);
    }

    /**
     * One train.
     *
     * @param load empty for a light engine
     * @param crew names, empty while nobody is booked
     */
    record Line(
            long id,
            String code,
            String title,
            boolean cancelled,
            String fromPlace,
            String departs,
            String toPlace,
            String arrives,
            String engines,
            String load,
            String crew) {}
}
