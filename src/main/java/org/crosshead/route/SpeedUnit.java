package org.crosshead.route;

import org.crosshead.kernel.units.Units;

/** Unit in which a limit is printed. */
public enum SpeedUnit {
    MPH,
    KMH;

    public double mps(double speed) {
        return this == MPH ? Units.mpsFromMph(speed) : Units.mpsFromKmh(speed);
    }

    public double fromMps(double speedMps) {
        return this == MPH ? Units.mphFromMps(speedMps) : Units.kmhFromMps(speedMps);
    }
}
