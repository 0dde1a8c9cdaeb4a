package org.crosshead.kernel.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects a run's samples while it is made. What was recorded after a mark can be taken back. */
final class RunRecorder {

    private static final int FIRST_ROWS = 4096;

    private final int engineCount;
    private final int stride;
    private double[] rows;
    private int size;
    private final List<Change> changes = new ArrayList<>();
    private final List<CallTime> callTimes = new ArrayList<>();

    RunRecorder(int engineCount) {
        this.engineCount = engineCount;
        this.stride = Run.TRAIN_COLUMNS + Run.ENGINE_COLUMNS * engineCount;
        this.rows = new double[FIRST_ROWS * stride];
    }

    /** Place of a recorder to which it can be taken back. */
    record Mark(int size, int changes, int callTimes) {}

    Mark mark() {
        return new Mark(size, changes.size(), callTimes.size());
    }

    void backTo(Mark mark) {
        size = mark.size();
        changes.subList(mark.changes(), changes.size()).clear();
        callTimes.subList(mark.callTimes(), callTimes.size()).clear();
    }

    int size() {
        return size;
    }

    void add(Change change) {
        changes.add(change);
    }

    void add(CallTime callTime) {
        callTimes.add(callTime);
    }

    private int next() {
        int at = size * stride;
        if (at + stride > rows.length) {
            rows = Arrays.copyOf(rows, 2 * rows.length);
        }
        size++;
        return at;
    }

    /** Opens a sample with a state and the forces of the step that begins there. */
    void record(TrainState state, StepForces forces, RunGrid grid) {
        int at = next();
        rows[at + Run.POSITION] = state.positionM;
        rows[at + Run.TIME] = state.timeS;
        rows[at + Run.SPEED] = state.speedMps();
        rows[at + Run.REGULATOR] = state.handles.controls().regulator();
        rows[at + Run.CUTOFF] = state.handles.controls().cutoff();
        rows[at + Run.PULL] = forces.pullN;
        rows[at + Run.RESISTANCE] = forces.resistanceN;
        rows[at + Run.GRAVITY] = forces.gravityN;
        rows[at + Run.CURVE] = forces.curveN;
        rows[at + Run.BRAKE] = forces.brakeN;
        rows[at + Run.INERTIA] = grid.inertiaKg[state.cell];
        rows[at + Run.MASS] = grid.massKg[state.cell];
        rows[at + Run.LIMITED_BY] = Run.limitCode(forces.limitedBy);
        for (int i = 0; i < engineCount; i++) {
            int engine = at + Run.TRAIN_COLUMNS + i * Run.ENGINE_COLUMNS;
            rows[engine + Run.PRESSURE] = state.boilers[i].pressurePa();
            rows[engine + Run.WATER] = state.boilers[i].waterKg();
            rows[engine + Run.TANK_WATER] = state.tankWaterKg[i];
            rows[engine + Run.COAL_BURNT] = state.coalBurntKg[i];
            rows[engine + Run.STEAM] = forces.steamKgPerS(i) * forces.steamShare;
            rows[engine + Run.TANK_USED] = state.tankUsedKg[i];
            rows[engine + Run.FIRE] = state.boilers[i].fireKg();
            rows[engine + Run.BLOWING] = state.boilers[i].blowing() ? 1 : 0;
            rows[engine + Run.SUPPLIES] = state.boilers[i].suppliesShare();
            rows[engine + Run.AUXILIARY] = state.auxiliaryKgPerS[i];
            rows[engine + Run.BLOWER] = state.blower[i];
            rows[engine + Run.DAMPERS] = state.dampers[i];
        }
    }

    Run run() {
        return new Run(engineCount, Arrays.copyOf(rows, size * stride), changes, callTimes);
    }
}
