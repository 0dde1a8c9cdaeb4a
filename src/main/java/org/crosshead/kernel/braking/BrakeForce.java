package org.crosshead.kernel.braking;

/** Retarding force of the fully applied brake. */
public interface BrakeForce {

    /**
     * Returns the force at the rims of all braked wheels, never above what the rail holds.
     *
     * @param speedMps 0 or more
     */
    double forceN(double speedMps);
}
