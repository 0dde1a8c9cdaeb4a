package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;

/**
 * The working brake of a train.
 *
 * @param lengthM length of train that the brake reaches, from the driver's handle to its rear
 * @param blocks of all working brakes together, full application
 */
public record ContinuousBrake(Means means, Timing timing, double lengthM, Blocks blocks) {

    public ContinuousBrake {
        Check.within("lengthM", lengthM, 0, 1_500);
    }

    /** How the driver's handle reaches the blocks. */
    public enum Means {
        VACUUM,
        AIR,
        /** Steam brake on the engine, nothing on the train. */
        STEAM,
        /** Hand brakes of tender and van, worked by whistle. */
        HAND
    }

    /** How fast the cylinders are set to fill. */
    public enum Timing {
        PASSENGER,
        GOODS
    }
}
