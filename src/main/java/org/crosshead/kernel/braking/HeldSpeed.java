package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The speed above which a brake no longer holds a train on a fall: friction of iron blocks falls with speed, gravity does not. Below it
 * the brake can bring the train down; above it the train runs away.
 */
public final class HeldSpeed {

    private static final double STEP_MPS = 0.25;
    private static final int HALVINGS = 40;

    private HeldSpeed() {}

    /**
     * Returns the greatest speed up to which the brake holds at every speed below, or {@code mostMps} where it holds throughout; 0
     * where it does not hold at all.
     *
     * @param force of the brake, fully applied in the way looked at
     * @param fall fall as run, rise over run, 0 or more
     * @param mostMps greatest speed looked at
     */
    public static double mps(BrakeForce force, TrainBody body, double fall, double mostMps) {
        Check.within("fall", fall, 0, 0.2);
        Check.within("mostMps", mostMps, 0, Units.mpsFromKmh(200));
        double gravityN = body.massKg() * Units.GRAVITY_MPS2 * Units.sineOfGradient(fall);
        double held = 0;
        for (double speed = 0; speed <= mostMps; speed += STEP_MPS) {
            if (spareN(force, body, gravityN, speed) <= 0) {
                return speed == 0 ? 0 : between(force, body, gravityN, held, speed);
            }
            held = speed;
        }
        return spareN(force, body, gravityN, mostMps) > 0 ? mostMps : between(force, body, gravityN, held, mostMps);
    }

    private static double between(BrakeForce force, TrainBody body, double gravityN, double held, double lost) {
        double low = held;
        double high = lost;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (spareN(force, body, gravityN, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double spareN(BrakeForce force, TrainBody body, double gravityN, double speedMps) {
        return force.forceN(speedMps) + body.resistance().forceN(speedMps) - gravityN;
    }
}
