package org.crosshead.kernel.motion;

/** What comes of a forecast. */
public sealed interface RunOutcome {

    /** Returns the run, as far as it goes. */
    Run run();

    /** The train reaches its last call. */
    record Arrives(Run run) implements RunOutcome {}

    /**
     * The train comes to a stand on the way, or does not start.
     *
     * @param positionM where its head stands
     */
    record Stalls(Run run, double positionM) implements RunOutcome {}

    /**
     * The service brake does not hold the train to a limit or a stop on the fall before it.
     *
     * @param positionM where the speed allowed is first passed
     * @param allowedMps speed allowed there
     */
    record NotHeld(Run run, double positionM, double allowedMps) implements RunOutcome {}
}
