package org.crosshead.kernel.braking;

/** Brake blocks on the treads of wheels, fully applied. */
public interface Blocks extends BrakeForce {

    /** Returns the same blocks pressed with this multiple of the force, 0 or more; the rail holds no more for it. */
    Blocks times(double multiple);

    /** Returns the same blocks on a rail that holds this multiple, 0 or more. */
    Blocks onRail(double multiple);
}
