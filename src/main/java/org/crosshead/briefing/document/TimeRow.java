package org.crosshead.briefing.document;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Booked against forecast at one place.
 *
 * @param late seconds later than booked (negative: early) at arrival, or at passing; null where nothing is booked or the train does not get there
 */
public record TimeRow(
        Place place,
        String name,
        boolean stops,
        @Nullable Instant bookedArrival,
        @Nullable Instant forecastArrival,
        @Nullable Instant bookedDeparture,
        @Nullable Instant forecastDeparture,
        @Nullable Term late) {}
