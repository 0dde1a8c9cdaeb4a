package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * The fireman's hands over a stretch.
 *
 * @param coalKgPerS coal put on, mean rate
 * @param feedKgPerS water fed into the boiler, mean rate
 * @param blower from 0 (shut) to 1 (wide open)
 * @param dampers from 0 (shut) to 1 (open)
 */
public record Firing(double coalKgPerS, double feedKgPerS, double blower, double dampers) {

    public Firing {
        Check.notNegative("coalKgPerS", coalKgPerS);
        Check.notNegative("feedKgPerS", feedKgPerS);
        Check.within("blower", blower, 0, 1);
        Check.within("dampers", dampers, 0, 1);
    }

    /** With the blower shut and the dampers open. */
    public Firing(double coalKgPerS, double feedKgPerS) {
        this(coalKgPerS, feedKgPerS, 0, 1);
    }

    /** Returns the same with another feed. */
    public Firing fed(double feedKgPerS) {
        return new Firing(coalKgPerS, feedKgPerS, blower, dampers);
    }
}
