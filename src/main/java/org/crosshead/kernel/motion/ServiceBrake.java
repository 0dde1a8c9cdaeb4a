package org.crosshead.kernel.motion;

import org.crosshead.kernel.braking.Application;

/** The driver's work with the service brake: when it is applied for a limit or a stop, when released, and what it gives meanwhile. */
final class ServiceBrake {

    /** Below this a driver feels his way to the mark with the brake already on. */
    static final double CRAWL_MPS = 4;

    private static final double SLOWER_MPS = 0.05;
    private static final double NEAR_ENVELOPE = 0.64;
    private static final double BELOW_ENVELOPE = 0.45;

    private final Application service;
    private final MakeUp.Ejector ejector;
    private final RunGrid grid;
    private final RunRecorder recorder;

    ServiceBrake(Application service, MakeUp.Ejector ejector, RunGrid grid, RunRecorder recorder) {
        this.service = service;
        this.ejector = ejector;
        this.grid = grid;
        this.recorder = recorder;
    }

    double fullN(double speedMps) {
        return service.force().forceN(speedMps);
    }

    /** Applies or releases the brake by what lies ahead. */
    void decide(TrainState state, CabView view) {
        double speedMps = state.speedMps();
        double leadM = speedMps * (StepMaker.STEP_S + service.delayS() + service.buildUpS() / 2);
        double ahead = view.allowedSquared(leadM);
        double here = grid.allowedSquared(state.cell, state.positionM);
        boolean late = speedMps > Math.sqrt(ahead) + SLOWER_MPS
                && (speedMps >= CRAWL_MPS || state.speedSquared > NEAR_ENVELOPE * here);
        if (!state.braking && late) {
            state.braking = true;
            state.brakeFromS = state.timeS;
            recorder.add(new Change.BrakeApplied(recorder.size(), view.stopAhead()));
        } else if (state.braking && released(state, ahead)) {
            release(state);
        }
    }

    private boolean released(TrainState state, double aheadSquared) {
        double here = grid.allowedSquared(state.cell, state.positionM);
        boolean crawls = state.speedMps() < CRAWL_MPS && state.speedSquared < BELOW_ENVELOPE * here;
        return state.speedSquared <= aheadSquared || crawls;
    }

    void release(TrainState state) {
        if (state.braking) {
            state.braking = false;
            state.ejectorS = ejector.durationS();
            recorder.add(new Change.BrakeReleased(recorder.size()));
        }
    }

    /** Returns the force that the brake has by now, and at once for holding a train to a limit or at a crawl. */
    double forceN(TrainState state, double speedMps) {
        double full = fullN(speedMps);
        if (!state.braking || service.buildUpS() <= 0 || speedMps < CRAWL_MPS) {
            return full;
        }
        double bittenS = state.timeS - state.brakeFromS - service.delayS();
        return full * Math.max(0, Math.min(1, bittenS / service.buildUpS()));
    }
}
