package org.crosshead.route;

import org.crosshead.kernel.units.Units;

/** Unit of a radius, a sighting distance or the length of a platform. */
public enum LengthUnit {
    CHAINS,
    YARDS,
    FEET,
    METRES;

    public double metres(double length) {
        return switch (this) {
            case CHAINS -> Units.metresFromChains(length);
            case YARDS -> Units.metresFromYards(length);
            case FEET -> Units.metresFromFeet(length);
            case METRES -> length;
        };
    }
}
