package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Run;

/** Finds where a run is held to the speed allowed by the brake on a fall, outside any braking for a limit or stop. */
final class HeldStretches {

    private static final double LEAST_N = 300;
    private static final double LEAST_LENGTH_M = 250;
    private static final double GAP_M = 800;

    private HeldStretches() {}

    /** Returns the samples at which such stretches begin, in running order. */
    static List<Integer> beginnings(Run run) {
        boolean[] braking = braking(run);
        List<Integer> found = new ArrayList<>();
        int from = -1;
        double lastM = Double.NEGATIVE_INFINITY;
        for (int i = 0; i + 1 < run.size(); i++) {
            boolean held = run.brakeN(i) > LEAST_N && !braking[i] && run.gravityN(i) < 0 && run.speedMps(i) > 1;
            if (held && run.positionM(i) - lastM > GAP_M) {
                from = i;
            }
            if (held) {
                lastM = run.positionM(i);
                boolean longEnough = from >= 0 && lastM - run.positionM(from) >= LEAST_LENGTH_M;
                if (longEnough && (found.isEmpty() || found.get(found.size() - 1) != from)) {
                    found.add(from);
                }
            }
        }
        return found;
    }

    private static boolean[] braking(Run run) {
        boolean[] braking = new boolean[run.size() + 1];
        int from = -1;
        for (Change change : run.changes()) {
            if (change instanceof Change.BrakeApplied) {
                from = change.sample();
            } else if (change instanceof Change.BrakeReleased && from >= 0) {
                for (int i = from; i < Math.min(change.sample(), run.size()); i++) {
                    braking[i] = true;
                }
                from = -1;
            }
        }
        return braking;
    }
}
