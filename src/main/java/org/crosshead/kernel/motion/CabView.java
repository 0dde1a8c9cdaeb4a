package org.crosshead.kernel.motion;

import java.util.List;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;

/** A moment as it stands in a train's state and the grid of its road. */
final class CabView implements Moment {

    private final RunRequest request;
    private final RunGrid grid;
    private final TrainState state;
    /** Speed kept to for the booked time, m/s. */
    private final double paceMps;

    private final PullsOfMoment[] pulls;

    CabView(RunRequest request, RunGrid grid, TrainState state, double paceMps) {
        this.request = request;
        this.grid = grid;
        this.state = state;
        this.paceMps = paceMps;
        pulls = engines().stream()
                .map(engine -> new PullsOfMoment(engine.engine()))
                .toArray(PullsOfMoment[]::new);
    }

    double paceMps() {
        return paceMps;
    }

    private List<EngineAtWork> engines() {
        return request.train().engines();
    }

    @Override
    public double positionM() {
        return state.positionM;
    }

    @Override
    public double timeS() {
        return state.timeS;
    }

    @Override
    public double speedMps() {
        return state.speedMps();
    }

    @Override
    public boolean standing() {
        return state.standing;
    }

    @Override
    public boolean braking() {
        return state.braking;
    }

    @Override
    public Handles handles() {
        return state.handles;
    }

    @Override
    public Stoking.Task task(int engine) {
        return state.tasks[engine];
    }

    @Override
    public double sinceChangeS() {
        return state.timeS - state.changedS;
    }

    @Override
    public double sinceStandingM() {
        return state.positionM - state.stoodM;
    }

    @Override
    public double sinceTaskS(int engine) {
        return state.timeS - state.taskFromS[engine];
    }

    @Override
    public Engine engine(int engine) {
        return engines().get(engine).engine();
    }

    @Override
    public EngineState state(int engine) {
        return state.boilers[engine];
    }

    @Override
    public double tankWaterKg(int engine) {
        return state.tankWaterKg[engine];
    }

    @Override
    public RailState rail() {
        return grid.rail[state.cell];
    }

    @Override
    public double speedWantedMps() {
        return Math.min(paceMps, Math.sqrt(grid.allowedSquared(state.cell, state.positionM)));
    }

    @Override
    public double speedWantedMps(double aheadM) {
        return Math.min(paceMps, Math.sqrt(allowedSquared(aheadM)));
    }

    /** Returns the least square of the speeds allowed from here to so far ahead. */
    double allowedSquared(double aheadM) {
        double least = grid.allowedSquared(state.cell, state.positionM);
        double toM = state.positionM + aheadM;
        int cell = state.cell;
        while (cell < grid.cells() && grid.positionM[cell] < toM) {
            least = Math.min(
                    least, grid.positionM[cell + 1] <= toM ? grid.allowedEnd[cell] : grid.allowedSquared(cell, toM));
            cell++;
        }
        return least;
    }

    @Override
    public boolean stopAhead() {
        int cell = state.cell;
        while (cell + 1 < grid.cells()
                && grid.allowedEnd[cell] > 0
                && grid.allowedStart[cell + 1] <= grid.allowedStart[cell]) {
            cell++;
        }
        return grid.allowedEnd[cell] <= 0;
    }

    @Override
    public double coastS() {
        return request.policy().coastS();
    }

    @Override
    public Pull pull(int engine, Controls controls, double speedMps) {
        return pulls[engine].pull(state.boilers[engine], controls, speedMps, rail());
    }

    /** Returns the pull of the handles as they are set, the cocks with them. */
    Pull pullAsSet(int engine, Handles handles, double speedMps) {
        Controls controls = followed(engine, handles.controls());
        Pull pull = pull(engine, controls, speedMps);
        return handles.cocksOpen() && controls.regulator() > 0
                ? engines().get(engine).engine().cocksOpen(pull, state.boilers[engine], controls)
                : pull;
    }

    /** Returns the handles of an engine while the train engine has these. */
    Controls followed(int engine, Controls controls) {
        EngineAtWork atWork = engines().get(engine);
        return engine == 0 ? atWork.handles(controls) : atWork.followed(controls, state.boilers[engine]);
    }

    @Override
    public double pullN(Controls controls) {
        double sum = request.train().helpN();
        for (int i = 0; i < engines().size(); i++) {
            if (engines().get(i).worksAt(state.positionM)) {
                sum += pull(i, followed(i, controls), state.speedMps()).forceN();
            }
        }
        return sum;
    }

    @Override
    public double steamKgPerS(int engine) {
        return state.steamKgPerS[engine];
    }

    @Override
    public double holdingForceN(double speedMps, double aheadM) {
        double toM = Math.min(state.positionM + aheadM, request.endM());
        double lengthM = toM - state.positionM;
        double alongN = lengthM <= 0 ? 0 : grid.massKg[state.cell] * grid.work.ahead(state.positionM, toM) / lengthM;
        RunningResistance resistance = grid.resistance[state.cell];
        double runningN =
                speedMps > 0 ? resistance.forceN(speedMps) : Math.max(resistance.startingN(), resistance.constantN());
        return runningN + alongN;
    }

    @Override
    public double inertiaKg() {
        return grid.inertiaKg[state.cell];
    }

    @Override
    public double gradient(double fromM, double lengthM) {
        double startM = Math.min(state.positionM + fromM, request.endM());
        double endM = Math.min(startM + lengthM, request.endM());
        return endM - startM < 1 ? 0 : grid.work.riseM(startM, endM) / (endM - startM);
    }
}
