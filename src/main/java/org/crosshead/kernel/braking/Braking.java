package org.crosshead.kernel.braking;

/** What comes of an application of the brake. */
public sealed interface Braking {

    /**
     * The train comes down to the target speed.
     *
     * @param distanceM from deciding to brake until the target speed
     * @param reactionM part of it run while the crew acts
     * @param buildUpM part of it run during dead time and build-up
     * @param fullM part of it run at full force
     */
    record Slows(double distanceM, double timeS, double reactionM, double buildUpM, double fullM) implements Braking {}

    /**
     * The brake does not bring the train down: on this gradient its force is not above the pull of gravity.
     *
     * @param speedMps speed at which it settles or which it exceeds at the end of the search
     * @param positionM how far the search went
     */
    record DoesNotSlow(double speedMps, double positionM) implements Braking {}
}
