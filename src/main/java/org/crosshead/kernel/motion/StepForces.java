package org.crosshead.kernel.motion;

import java.util.Arrays;
import org.crosshead.kernel.traction.LimitedBy;
import org.jspecify.annotations.Nullable;

/** Forces of the step that is being made; all are means over it. */
final class StepForces {

    double pullN;
    double resistanceN;
    double gravityN;
    double curveN;
    double brakeN;
    double inertiaKg;
    double massKg;
    /** Square of speed at the end of the step with these handles and no brake; may be negative. */
    double freeEndSquared;
    /** Share of the pull of the handles that is used: less than 1 where it is eased to hold a speed. */
    double steamShare;

    @Nullable
    LimitedBy limitedBy;

    private double[] steamKgPerS = {};

    void clear() {
        pullN = 0;
        resistanceN = 0;
        gravityN = 0;
        curveN = 0;
        brakeN = 0;
        steamShare = 0;
        limitedBy = null;
        Arrays.fill(steamKgPerS, 0);
    }

    void steamKgPerS(int engine, double value, int engines) {
        if (steamKgPerS.length < engines) {
            steamKgPerS = Arrays.copyOf(steamKgPerS, engines);
        }
        steamKgPerS[engine] = value;
    }

    double steamKgPerS(int engine) {
        return engine < steamKgPerS.length ? steamKgPerS[engine] : 0;
    }
}
