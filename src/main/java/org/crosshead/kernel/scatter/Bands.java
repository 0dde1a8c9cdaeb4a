package org.crosshead.kernel.scatter;

import java.util.List;

/**
 * What comes of many days.
 *
 * @param days how many were run
 * @param placesM rising; the bands have a value for each
 * @param pressurePa of the train engine
 * @param waterKg in its boiler
 * @param coalKg put on by its fireman since the start
 * @param leastPressurePa what nine days in ten do not fall below anywhere
 * @param leastWaterKg likewise
 * @param standsM where the train stood or was not held on the others, rising
 * @param easedDays on how many the driver had to ease steam for the rail, by place; 0 where he does so in the forecast too
 * @param lowWaterDays on how many the water fell below the class's least
 * @param calls for each call but the first
 */
public record Bands(
        int days,
        List<Double> placesM,
        Band pressurePa,
        Band waterKg,
        Band coalKg,
        double leastPressurePa,
        double leastWaterKg,
        List<Double> standsM,
        List<Integer> easedDays,
        int lowWaterDays,
        List<Arrival> calls) {

    public Bands {
        placesM = List.copyOf(placesM);
        standsM = List.copyOf(standsM);
        easedDays = List.copyOf(easedDays);
        calls = List.copyOf(calls);
    }

    /**
     * The value that one day in ten stays below, half the days, and nine in ten; of the days on which the train came so far. NaN where
     * it came on fewer than half.
     */
    public record Band(List<Double> low, List<Double> middle, List<Double> high) {

        public Band {
            low = List.copyOf(low);
            middle = List.copyOf(middle);
            high = List.copyOf(high);
        }
    }

    /**
     * When the train is at a call, of the days on which it came there.
     *
     * @param call index of the call in the request
     * @param lowS of the run, one day in ten is earlier; NaN where the train came on fewer than half of the days
     * @param lateDays on how many it came later than booked by more than is tolerated, or not at all; 0 where nothing is booked
     */
    public record Arrival(int call, double lowS, double middleS, double highS, int lateDays) {}
}
