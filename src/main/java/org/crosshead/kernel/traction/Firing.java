package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * The fireman's hands over a stretch.
 *
 * @param coalKgPerS coal put on, mean rate
 * @param feedKgPerS water fed into the boiler, mean rate
 */
public record Firing(double coalKgPerS, double feedKgPerS) {

    public Firing {
        Check.notNegative("coalKgPerS", coalKgPerS);
        Check.notNegative("feedKgPerS", feedKgPerS);
    }
}
