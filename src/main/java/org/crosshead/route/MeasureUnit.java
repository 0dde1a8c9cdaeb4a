package org.crosshead.route;

import org.crosshead.kernel.units.Units;

/** How positions along a route are printed: chains from the zero post, written as miles and chains, or kilometres. */
public enum MeasureUnit {
    CHAINS,
    KILOMETRES;

    /** Returns metres from a length in this unit. */
    public double metres(double measure) {
        return this == CHAINS ? Units.metresFromChains(measure) : Units.metresFromKm(measure);
    }

    /** Returns a length in this unit from metres. */
    public double fromMetres(double metres) {
        return this == CHAINS ? Units.chainsFromMetres(metres) : Units.kmFromMetres(metres);
    }
}
