package org.crosshead.kernel.boiler;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Two live-steam injectors alike. What one delivers falls with the pressure as the speed of its steam jet's water does, with the
 * root; below a least pressure, or with feed too warm for the steam to condense, it does not pick up. The steam that it takes
 * comes back with the feed, so the boiler gains the feed's own heat and no more.
 *
 * @param deliveryKgPerS of one at the working pressure
 * @param workingPa pressure above the atmosphere at which it delivers that
 */
public record Injectors(double deliveryKgPerS, double workingPa) {

    /** How many an engine has: two independent means of feeding is the rule (from memory). */
    static final int COUNT = 2;

    /** Pressure below which one does not start: an estimate. */
    static final double STARTS_PA = Units.paFromPsi(25);

    /** Feed hotter than this is not taken at working pressure: an estimate; about 110 F is told from memory. */
    static final double FEED_HOTTEST_C = 43;

    public Injectors {
        Check.positive("deliveryKgPerS", deliveryKgPerS);
        Check.positive("workingPa", workingPa);
    }

    /**
     * Returns the most that both together feed.
     *
     * @param pressurePa above the atmosphere
     * @param feedC temperature of the water in tank or tender
     */
    public double mostKgPerS(double pressurePa, double feedC) {
        return pressurePa < STARTS_PA || feedC > FEED_HOTTEST_C
                ? 0
                : COUNT * deliveryKgPerS * Math.sqrt(pressurePa / workingPa);
    }
}
