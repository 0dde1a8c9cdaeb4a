package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Check;

/** A stretch whose rail is in another state than the rest of the road; counts while the head is from fromM to toM. */
public record RailStretch(double fromM, double toM, RailState state) {

    public RailStretch {
        Check.notNegative("fromM", fromM);
        Check.that(toM > fromM, "toM must be greater than fromM");
    }
}
