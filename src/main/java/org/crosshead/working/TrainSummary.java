package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** A train as a line in a list. */
public record TrainSummary(
        long id,
        String code,
        LocalDate day,
        String title,
        boolean cancelled,
        String fromPlace,
        Instant departs,
        String toPlace,
        Instant arrives,
        List<String> engineNumbers,
        List<String> staffNumbers) {

    public TrainSummary {
        engineNumbers = List.copyOf(engineNumbers);
        staffNumbers = List.copyOf(staffNumbers);
    }
}
