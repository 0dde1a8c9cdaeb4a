package org.crosshead.kernel.motion;

import org.crosshead.kernel.units.Check;

/**
 * What the railway lays down for a forecast.
 *
 * @param brakingMargin service distances are made longer by this factor, commonly 1.10
 * @param coastS how long before braking steam is shut off where the booked times leave room, 0 for never
 * @param speedMaxMps greatest speed of the train, besides the limits of the road and of its engines
 * @param weights what a plan weighs against coal
 */
public record RunPolicy(double brakingMargin, double coastS, double speedMaxMps, Weights weights) {

    /** A margin of a tenth, half a minute of coasting, no greatest speed of the train's own. */
    public static final RunPolicy COMMON = new RunPolicy(1.10, 30, 90);

    /**
     * What a plan weighs against coal.
     *
     * @param waterKgPerKg coal that a kilogram of water is worth, 0 for none
     * @param slipKgPerM coal that a metre is worth on which steam must be eased for the rail
     * @param lateMost the most that a second may cost to be in time, as a multiple of what the grate burns in it at most
     */
    public record Weights(double waterKgPerKg, double slipKgPerM, double lateMost) {

        /** Water at no price, 10 g of coal for a metre eased, lateness at 8 grates: rules of this project. */
        public static final Weights COMMON = new Weights(0, 0.01, 8);

        public Weights {
            Check.within("waterKgPerKg", waterKgPerKg, 0, 1);
            Check.within("slipKgPerM", slipKgPerM, 0, 1);
            Check.within("lateMost", lateMost, 1, 50);
        }
    }

    /** With the common weights. */
    public RunPolicy(double brakingMargin, double coastS, double speedMaxMps) {
        this(brakingMargin, coastS, speedMaxMps, Weights.COMMON);
    }

    public RunPolicy {
        Check.within("brakingMargin", brakingMargin, 1, 3);
        Check.within("coastS", coastS, 0, 600);
        Check.within("speedMaxMps", speedMaxMps, 1, 90);
    }
}
