package org.crosshead.briefing;

import java.time.Instant;
import java.util.List;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.jspecify.annotations.Nullable;

/**
 * What comes of a day that is not as planned, beside the briefing. It is stored nowhere.
 *
 * @param zone of the railway's clock
 * @param settings where and how steam is set on the road then
 * @param noPlan why there is no plan then, and with what there would be; empty where there is one
 */
public record WhatIfAnswer(
        String trainCode, String zone, Side planned, Side otherwise, List<Setting> settings, List<Phrase> noPlan) {

    public WhatIfAnswer {
        settings = List.copyOf(settings);
        noPlan = List.copyOf(noPlan);
    }

    /**
     * One of the two.
     *
     * @param byPlan false where no plan was found and the rules of the trade are the forecast
     * @param standsAt where the train comes to a stand or is not held; null where it arrives
     */
    public record Side(
            List<Arrival> arrivals,
            double coalLb,
            double waterGallons,
            Lowest pressurePsi,
            Lowest glassPercent,
            boolean byPlan,
            @Nullable Place standsAt) {

        public Side {
            arrivals = List.copyOf(arrivals);
        }

        /** Says whether the water falls below the bottom of the glass. */
        public boolean waterOutOfSight() {
            return glassPercent.value() < 0;
        }
    }

    /** A time at a place; null where it is not booked or not reached. */
    public record Arrival(
            String name, @Nullable Instant booked, @Nullable Instant forecast) {}

    /** The least of a figure and where it is. */
    public record Lowest(double value, Place place) {}

    /**
     * A setting of the plan; shut where the regulator is 0.
     *
     * @param asPlanned whether the briefing has the same near here
     */
    public record Setting(Place place, double regulator, double cutoffPercent, boolean asPlanned) {}
}
