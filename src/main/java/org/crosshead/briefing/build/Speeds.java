package org.crosshead.briefing.build;

import org.crosshead.kernel.units.Units;

/** Speeds as they are told along a route: miles an hour, or kilometres an hour where the route is measured in kilometres. */
record Speeds(Places places) {

    String unit(double positionM) {
        return places.isMetric(positionM) ? "km/h" : "mph";
    }

    double value(double speedMps, double positionM) {
        return places.isMetric(positionM) ? Units.kmhFromMps(speedMps) : Units.mphFromMps(speedMps);
    }
}
