package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;

/** A brake of one force at every speed: for trials that print a mean retardation, and for closed forms. */
public record ConstantRetardation(double retardingN) implements BrakeForce {

    public ConstantRetardation {
        Check.notNegative("retardingN", retardingN);
    }

    /** Returns the force that slows a body at this rate, its turning wheels included. */
    public static ConstantRetardation of(double retardationMps2, double inertiaKg) {
        return new ConstantRetardation(
                Check.notNegative("retardationMps2", retardationMps2) * Check.positive("inertiaKg", inertiaKg));
    }

    @Override
    public double forceN(double speedMps) {
        return retardingN;
    }
}
