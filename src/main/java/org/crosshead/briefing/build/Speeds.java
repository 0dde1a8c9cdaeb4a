package org.crosshead.briefing.build;

import org.crosshead.kernel.units.Units;

/**
 * Speeds and braking distances as they are told along a route: miles an hour and yards, or kilometres an hour and metres where the route
 * is measured in kilometres.
 */
record Speeds(Places places) {

    String unit(double positionM) {
        return places.isMetric(positionM) ? "km/h" : "mph";
    }

    double value(double speedMps, double positionM) {
        return places.isMetric(positionM) ? Units.kmhFromMps(speedMps) : Units.mphFromMps(speedMps);
    }

    String distanceUnit(double positionM) {
        return places.isMetric(positionM) ? "m" : "yd";
    }

    /** Returns the length of the unit in which distances are told here. */
    double distanceUnitM(double positionM) {
        return places.isMetric(positionM) ? 1 : Units.metresFromYards(1);
    }
}
