package org.crosshead.briefing.document;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How sure the forecast is: what comes of the same handling on many days that differ in what nobody knows beforehand.
 *
 * @param runs how many
 * @param sentences those that matter most first
 * @param arrivals for each call but the first
 */
public record Sureness(int runs, List<Phrase> sentences, List<Arrival> arrivals, Along along) {

    public Sureness {
        sentences = List.copyOf(sentences);
        arrivals = List.copyOf(arrivals);
    }

    /**
     * When the train is at a place. Null where it came there in fewer than half of the runs.
     *
     * @param early one run in ten is earlier
     * @param middle half are
     * @param late nine in ten are
     * @param lateRuns how many are later than booked by more than a minute, or do not come; 0 where nothing is booked
     */
    public record Arrival(
            String name,
            @Nullable Instant early,
            @Nullable Instant middle,
            @Nullable Instant late,
            int lateRuns) {}

    /** Between which values eight runs of ten lie along the path; all lists of one length. */
    public record Along(
            List<Double> positionM,
            List<Double> pressureLowPsi,
            List<Double> pressureHighPsi,
            List<Double> glassLowPercent,
            List<Double> glassHighPercent) {

        public Along {
            positionM = List.copyOf(positionM);
            pressureLowPsi = List.copyOf(pressureLowPsi);
            pressureHighPsi = List.copyOf(pressureHighPsi);
            glassLowPercent = List.copyOf(glassLowPercent);
            glassHighPercent = List.copyOf(glassHighPercent);
        }
    }
}
