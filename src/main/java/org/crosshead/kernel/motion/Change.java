package org.crosshead.kernel.motion;

/** Something a crew does on a run. */
public sealed interface Change {

    /** Returns the sample of the run at which it is done. */
    int sample();

    record HandlesSet(int sample, Handles handles) implements Change {}

    /**
     * The driver moves the brake handle; it bites later.
     *
     * @param forStop true for a stop, false for a limit
     */
    record BrakeApplied(int sample, boolean forStop) implements Change {}

    record BrakeReleased(int sample) implements Change {}

    /**
     * A fireman takes up another kind of work.
     *
     * @param engine index of the engine whose fireman it is
     */
    record TaskBegun(int sample, int engine, Stoking stoking) implements Change {}

    /**
     * From here to the next call the driver uses no steam to run faster than a speed, so that the booked time is kept.
     *
     * @param speedMps a speed that the train reaches on the way
     */
    record PaceKept(int sample, double speedMps) implements Change {}
}
