package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A train as a line in a list.
 *
 * @param formationCode null for a light engine
 */
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
        @Nullable String formationCode,
        List<String> engineNumbers,
        List<String> staffNumbers) {

    public TrainSummary {
        engineNumbers = List.copyOf(engineNumbers);
        staffNumbers = List.copyOf(staffNumbers);
    }
}
