package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;

/** A third way to a braking distance: every vehicle's own ramp behind a wave along the train, at equal steps of a millisecond. */
final class VehicleByVehicle {

    private static final double STEP_S = 0.001;

    private VehicleByVehicle() {}

    /**
     * Returns distance and time of a stop.
     *
     * @param vehicles all alike, along the whole train
     * @param waveS time of the wave from the handle to the rear
     * @param riseS of each vehicle
     */
    static double[] run(
            CastIronBlocks blocks,
            TrainBody body,
            GradientProfile profile,
            int vehicles,
            double reactionS,
            double waveS,
            double riseS,
            double[] start) {
        double x = start[0];
        double v = start[1];
        double t = 0;
        while (v > 0 && t < 600) {
            double share = 0;
            for (int i = 0; i < vehicles; i++) {
                double beginsS = reactionS + 1 + waveS * (i + 0.5) / vehicles;
                share += Math.max(0, Math.min(1, (t - beginsS) / riseS)) / vehicles;
            }
            double weightN = body.massKg() * Units.GRAVITY_MPS2;
            double outerN = -weightN * profile.meanGradient(x, body.lengthM())
                    - body.resistance().forceN(v);
            double forceN = t < reactionS
                    ? Math.max(0, outerN)
                    : outerN
                            - Math.min(
                                    blocks.railForceN() * share,
                                    share * blocks.times(1).forceN(v));
            double next = Math.max(0, v + forceN / body.inertiaKg() * STEP_S);
            x += (v + next) / 2 * STEP_S;
            v = next;
            t += STEP_S;
        }
        return new double[] {x - start[0], t};
    }
}
