package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;

/** A second, slower and independent way to a braking distance: small equal steps of time, every force afresh in each. */
final class EulerStop {

    private static final double STEP_S = 0.0005;

    private EulerStop() {}

    /** Returns distance and time from place, speed and wanted speed. */
    static double[] run(Application application, TrainBody body, GradientProfile profile, double[] start) {
        double x = start[0];
        double v = start[1];
        double t = 0;
        while (v > start[2] && t < 600) {
            double weightN = body.massKg() * Units.GRAVITY_MPS2;
            double gravityN = weightN * profile.meanGradient(x, body.lengthM());
            double outerN = -gravityN - body.resistance().forceN(v);
            double forceN = t < application.reactionS()
                    ? Math.max(0, outerN)
                    : outerN - share(application, t) * application.force().forceN(v);
            v += forceN / body.inertiaKg() * STEP_S;
            x += v * STEP_S;
            t += STEP_S;
        }
        return new double[] {x - start[0], t};
    }

    private static double share(Application application, double timeS) {
        double risingS = timeS - application.reactionS() - application.delayS();
        if (risingS <= 0) {
            return 0;
        }
        return risingS >= application.buildUpS() ? 1 : risingS / application.buildUpS();
    }
}
