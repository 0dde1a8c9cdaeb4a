package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.jspecify.annotations.Nullable;

/** What one engine gives at one moment: a crew weighs the same handles several times, which are worked out once. */
final class PullsOfMoment {

    private static final int KEPT = 8;

    private final Engine engine;
    private final Controls[] controls = new Controls[KEPT];
    private final Pull[] pulls = new Pull[KEPT];
    private int count;

    @Nullable
    private EngineState state;

    @Nullable
    private RailState rail;

    private double speedMps = Double.NaN;

    PullsOfMoment(Engine engine) {
        this.engine = engine;
    }

    /** Returns the engine's own answer; a state is a new object whenever it has changed. */
    @SuppressWarnings("ReferenceEquality")
    Pull pull(EngineState stateNow, Controls wanted, double speedNowMps, RailState railNow) {
        if (stateNow != state || speedNowMps != speedMps || railNow != rail) {
            state = stateNow;
            speedMps = speedNowMps;
            rail = railNow;
            count = 0;
        }
        for (int i = 0; i < count; i++) {
            if (controls[i].regulator() == wanted.regulator() && controls[i].cutoff() == wanted.cutoff()) {
                return pulls[i];
            }
        }
        Pull pull = engine.pull(stateNow, wanted, speedNowMps, railNow);
        if (count < KEPT) {
            controls[count] = wanted;
            pulls[count] = pull;
            count++;
        }
        return pull;
    }
}
