package org.crosshead.kernel.braking;

import java.util.Optional;
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
     * Letting the brake go and applying it again and again.
     *
     * @param offS time between letting it go and applying it again
     * @param onS time for which it is on
     * @param applications on the whole fall
     * @param shareLeft of its force that it has at the last of them
     */
    public record Cycling(double offS, double onS, int applications, double shareLeft) {}

    /**
     * Returns how the brake stands when the train is kept between two speeds by letting it go and applying it again. What an application
     * uses comes back in proportion to the time that it is off, so that a fall with too little of it uses the brake up: an estimate.
     *
     * @param fall rise over run; on it the train must run away without the brake, and the brake must slow it
     * @param lengthM of the fall
     * @param force of the application
     * @param used share of the brake's force that it uses, above 0 to 1
     * @param speeds at the higher it is applied, at the lower let go
     * @param recoverS time in which the whole brake recovers
     */
    public static Optional<Cycling> cycling(
            TrainBody body,
            double fall,
            double lengthM,
            BrakeForce force,
            double used,
            Speeds speeds,
            double recoverS) {
        Check.positive("lengthM", lengthM);
        Check.within("used", used, 0.01, 1);
        Check.positive("recoverS", recoverS);
        double meanMps = (speeds.highMps() + speeds.lowMps()) / 2;
        double drivingN = drivingN(body, fall, meanMps);
        double slowingN = force.forceN(meanMps) - drivingN;
        if (drivingN <= 0 || slowingN <= 0) {
            return Optional.empty();
        }
        double momentum = (speeds.highMps() - speeds.lowMps()) * body.inertiaKg();
        double offS = momentum / drivingN;
        double onS = momentum / slowingN;
        int applications = (int) Math.floor(lengthM / (meanMps * (offS + onS)));
        double share = 1;
        for (int i = 1; i < applications; i++) {
            share = Math.min(1, Math.max(0, share - used) + offS / recoverS);
        }
        return Optional.of(new Cycling(offS, onS, applications, share));
    }

    /** Between which speeds a train is kept, m/s; the lower above 0. */
    public record Speeds(double lowMps, double highMps) {

        public Speeds {
            Check.positive("lowMps", lowMps);
            Check.that(highMps > lowMps, "highMps must be above lowMps");
        }
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
