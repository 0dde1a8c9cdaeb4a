package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * The fireman's hands over a stretch.
 *
 * @param coalKgPerS coal put on, mean rate
 * @param feedKgPerS water fed into the boiler, mean rate
 * @param blower from 0 (shut) to 1 (wide open)
 * @param dampers from 0 (shut) to 1 (open)
 * @param ejectorKgPerS steam of the large ejector, beside that of the brake's small one
 */
public record Firing(double coalKgPerS, double feedKgPerS, double blower, double dampers, double ejectorKgPerS) {

    public Firing {
        Check.notNegative("coalKgPerS", coalKgPerS);
        Check.notNegative("feedKgPerS", feedKgPerS);
        Check.within("blower", blower, 0, 1);
        Check.within("dampers", dampers, 0, 1);
        Check.notNegative("ejectorKgPerS", ejectorKgPerS);
    }

    /** With the large ejector shut. */
    public Firing(double coalKgPerS, double feedKgPerS, double blower, double dampers) {
        this(coalKgPerS, feedKgPerS, blower, dampers, 0);
    }

    /** With the blower shut and the dampers open. */
    public Firing(double coalKgPerS, double feedKgPerS) {
        this(coalKgPerS, feedKgPerS, 0, 1);
    }

    /** Returns the same with the large ejector taking so much steam. */
    public Firing ejecting(double kgPerS) {
        return new Firing(coalKgPerS, feedKgPerS, blower, dampers, kgPerS);
    }

    /** Returns the same with another feed. */
    public Firing fed(double feedKgPerS) {
        return new Firing(coalKgPerS, feedKgPerS, blower, dampers, ejectorKgPerS);
    }
}
