package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/** What a long fall asks of the brakes of a train that is held to a steady speed on it. */
public final class LongFall {

    /** Heat that a wheel braked by iron blocks on its tread stands for long: from memory, the lower of 30 to 40 kW. */
    public static final double WHEEL_W = 30_000;

    private LongFall() {}

    /**
     * Returns the force by which gravity is above the resistance of the train, 0 where it is not. Balance of forces.
     *
     * @param fall fall as run, rise over run, from 0 to 0.2
     * @param speedMps steady speed
     */
    public static double drivingN(TrainBody body, double fall, double speedMps) {
        Check.within("fall", fall, 0, 0.2);
        double gravityN = body.massKg() * Units.GRAVITY_MPS2 * Units.sineOfGradient(fall);
        return Math.max(0, gravityN - body.resistance().forceN(speedMps));
    }

    /**
     * Returns the heat that the blocks put into each braked wheel at a steady speed: all the work of gravity that resistance does not
     * take. Wind and radiation, which cool it, are left out.
     *
     * @param wheels braked wheels, 1 or more
     */
    public static double heatPerWheelW(TrainBody body, double fall, double speedMps, int wheels) {
        Check.that(wheels >= 1, "wheels must be at least 1, but was " + wheels);
        return drivingN(body, fall, speedMps) * speedMps / wheels;
    }

    /**
     * Returns how many pinned brakes hold the train at a steady speed together with the working brake; always rounded up. Advice for
     * comparison: railways' own rules govern.
     *
     * @param brakeN of the working brake at that speed
     * @param eachN of one pinned brake at that speed, more than 0
     */
    public static int pinned(TrainBody body, double fall, double speedMps, double brakeN, double eachN) {
        Check.positive("eachN", eachN);
        Check.notNegative("brakeN", brakeN);
        return (int) Math.ceil(Math.max(0, drivingN(body, fall, speedMps) - brakeN) / eachN);
    }
}
