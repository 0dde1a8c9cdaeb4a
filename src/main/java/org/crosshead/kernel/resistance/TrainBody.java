package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * A train, engines included, as a body that moves.
 *
 * @param massKg mass of the whole train
 * @param rotatingShare mass added for turning wheels, as a share of massKg, commonly 0.06 to 0.08
 * @param lengthM from the front of the first to the rear of the last vehicle
 */
public record TrainBody(double massKg, double rotatingShare, double lengthM, RunningResistance resistance) {

    public TrainBody {
        Check.within("massKg", massKg, 5_000, 20_000_000);
        Check.within("rotatingShare", rotatingShare, 0, 0.2);
        Check.within("lengthM", lengthM, 3, 3_000);
    }

    /** Returns the mass by which a force must be divided to give the acceleration. */
    public double inertiaKg() {
        return massKg * (1 + rotatingShare);
    }
}
