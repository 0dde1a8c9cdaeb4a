package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * The driver's two handles.
 *
 * @param regulator opening from 0 (shut) to 1 (wide open); crews use 0, {@link #FIRST_VALVE} and 1
 * @param cutoff share of the stroke during which steam is let in, from 0 to 1
 */
public record Controls(double regulator, double cutoff) {

    /** Opening of the regulator's first valve. */
    public static final double FIRST_VALVE = 0.5;

    public Controls {
        Check.within("regulator", regulator, 0, 1);
        Check.within("cutoff", cutoff, 0, 1);
    }
}
