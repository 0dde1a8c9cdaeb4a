package org.crosshead.kernel.motion;

import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.Pull;

/** Moves a train on, step by step, and records it. */
final class StepMaker {

    static final double STEP_S = 2;
    private static final double STEP_LEAST_M = 0.5;
    private static final double STANDING_STEP_S = 60;

    private static final double NOT_HELD_MPS = 1;
    private static final double NEARLY_THERE_M = 5;
    /** A stop is made by a driver whose brake would take him past the mark by less. */
    private static final double PAST_THE_MARK_M = 1;

    private static final int STEPS_MOST = 400_000;

    private final RunRequest request;
    private final RunGrid grid;
    private final RunRecorder recorder;
    private final Driver driver;
    private final Fireman fireman;
    private final double stepShare;
    private final List<EngineAtWork> engines;
    private final ServiceBrake brake;
    private final Firing[] firing;
    private final StepForces forces = new StepForces();

    StepMaker(RunRequest request, RunGrid grid, RunRecorder recorder, Forecast.Crew crew, double stepShare) {
        this.request = request;
        this.grid = grid;
        this.recorder = recorder;
        this.driver = crew.driver();
        this.fireman = crew.fireman();
        this.stepShare = stepShare;
        engines = request.train().engines();
        brake = new ServiceBrake(request.train().service(), request.train().ejector(), grid, recorder);
        firing = new Firing[engines.size()];
    }

    /** Runs to a call; empty if it is reached. */
    Optional<RunOutcome> run(TrainState state, int toCall, double paceMps) {
        double toM = request.calls().get(toCall).positionM();
        CabView view = new CabView(request, grid, state, paceMps);
        state.standing = false;
        for (int i = 0; state.positionM < toM; i++) {
            Optional<RunOutcome> failure = step(state, view);
            if (failure.isPresent()) {
                return failure;
            }
            if (i > STEPS_MOST) {
                return Optional.of(new RunOutcome.Stalls(ended(state), state.positionM));
            }
        }
        boolean stops = state.speedSquared <= 0;
        state.standing = stops;
        if (!stops) {
            recorder.add(new CallTime(toCall, state.timeS, state.timeS));
        }
        if (stops && toCall == request.calls().size() - 1) {
            recorder.add(new CallTime(toCall, state.timeS, state.timeS));
        }
        return Optional.empty();
    }

    /** Stands at a call until its departure. */
    void stand(TrainState state, int atCall) {
        Call call = request.calls().get(atCall);
        double arrivalS = state.timeS;
        double departureS = Math.max(
                arrivalS + call.standing().leastS(), call.times().departureS().orElse(arrivalS));
        CabView view = new CabView(request, grid, state, Double.POSITIVE_INFINITY);
        brake.release(state);
        set(state, TrainState.SHUT);
        while (state.timeS < departureS) {
            double durationS = Math.min(STANDING_STEP_S, departureS - state.timeS);
            stoke(state, view);
            eject(state, durationS);
            forces.clear();
            recorder.record(state, forces, grid);
            feedBoilers(state, durationS);
            state.timeS += durationS;
        }
        if (call.standing().takesWater()) {
            for (int i = 0; i < engines.size(); i++) {
                if (engines.get(i).worksAt(state.positionM)) {
                    state.tankWaterKg[i] = engines.get(i).supply().tankFullKg();
                }
            }
        }
        recorder.add(new CallTime(atCall, arrivalS, departureS));
        if (request.road().reversalsM().contains(state.positionM)) {
            changeEnds(state);
        }
        state.stoodM = state.positionM;
    }

    /** What was the tail becomes the head, without the train having moved. */
    private void changeEnds(TrainState state) {
        forces.clear();
        recorder.record(state, forces, grid);
        state.positionM += request.train().body().lengthM();
        state.cell = grid.cellFrom(state.positionM);
    }

    void end(TrainState state) {
        forces.clear();
        recorder.record(state, forces, grid);
    }

    private Run ended(TrainState state) {
        end(state);
        return recorder.run();
    }

    /** At a crawl a crew looks twice as often. */
    private static double stepS(TrainState state) {
        return state.speedMps() < ServiceBrake.CRAWL_MPS ? STEP_S / 2 : STEP_S;
    }

    private Optional<RunOutcome> step(TrainState state, CabView view) {
        brake.decide(state, view);
        set(state, state.braking ? shut(state, view) : driver.handles(view));
        stoke(state, view);
        double fromM = state.positionM;
        double toM = Math.min(
                fromM + stepShare * Math.max(STEP_LEAST_M, stepS(state) * state.speedMps()),
                grid.positionM[state.cell + 1]);
        if (state.speedSquared <= 0 && !starts(state, view, toM)) {
            return Optional.of(new RunOutcome.Stalls(ended(state), fromM));
        }
        double endSquared = work(state, view, toM);
        boolean atStop = grid.allowedSquared(state.cell, toM) <= 0;
        if (endSquared <= 0 && !atStop) {
            double gone = state.speedSquared / (state.speedSquared - forces.freeEndSquared) * (toM - fromM);
            double stopM = nextStopM(state);
            endSquared = Math.min(state.speedSquared, 0.04);
            boolean near = stopM - fromM - gone <= NEARLY_THERE_M && state.speedSquared > 0;
            if (!near || !creeps(state, view, endSquared, toM - fromM)) {
                return stalled(state, Math.min(gone, toM - fromM));
            }
        }
        if (escapes(state, toM, endSquared)) {
            return Optional.of(
                    new RunOutcome.NotHeld(ended(state), fromM, Math.sqrt(grid.allowedSquared(state.cell, toM))));
        }
        advance(state, toM, endSquared);
        return Optional.empty();
    }

    /**
     * Within a few metres of the mark the driver gives a breath of steam more than the handles told say: as much of the first valve
     * in full gear as brings the train there at a crawl, and the steam for it. Returns false if that is not enough.
     */
    private boolean creeps(TrainState state, CabView view, double endSquared, double lengthM) {
        double neededN = forces.pullN + (endSquared - forces.freeEndSquared) * forces.inertiaKg / (2 * lengthM);
        EngineAtWork first = engines.get(0);
        Controls breath = new Controls(
                Controls.FIRST_VALVE, first.engine().parameters().valveGear().cutoffFull());
        Pull most = view.pull(0, breath, state.speedMps());
        if (neededN > most.forceN()) {
            return false;
        }
        forces.pullN = neededN;
        forces.steamKgPerS(0, most.steamKgPerS() * neededN / most.forceN(), engines.size());
        forces.steamShare = 1;
        return true;
    }

    /** Returns true if a limit is passed too fast, or a stop is made only by more brake than there is. */
    private boolean escapes(TrainState state, double toM, double endSquared) {
        double allowed = grid.allowedSquared(state.cell, toM);
        if (allowed <= 0) {
            double fullN = brake.fullN(state.speedMps());
            double lackingM = (forces.brakeN / fullN - 1) * (toM - state.positionM);
            return forces.brakeN > fullN && lackingM > PAST_THE_MARK_M;
        }
        boolean falling = grid.allowedEnd[state.cell] < grid.allowedStart[state.cell];
        return !falling && Math.sqrt(endSquared) > Math.sqrt(allowed) + NOT_HELD_MPS;
    }

    private Optional<RunOutcome> stalled(TrainState state, double goneM) {
        double durationS = Math.min(STANDING_STEP_S, 2 * goneM / Math.max(0.1, state.speedMps()));
        eject(state, durationS);
        recorder.record(state, forces, grid);
        feedBoilers(state, durationS);
        state.timeS += durationS;
        state.positionM += goneM;
        state.speedSquared = 0;
        return Optional.of(new RunOutcome.Stalls(ended(state), state.positionM));
    }

    private void advance(TrainState state, double toM, double endSquared) {
        double durationS = 2 * (toM - state.positionM) / (state.speedMps() + Math.sqrt(endSquared));
        eject(state, Math.min(durationS, STANDING_STEP_S));
        recorder.record(state, forces, grid);
        feedBoilers(state, Math.min(durationS, STANDING_STEP_S));
        state.timeS += durationS;
        state.positionM = toM;
        state.speedSquared = endSquared;
        if (toM >= grid.positionM[state.cell + 1] && state.cell + 1 < grid.cells()) {
            state.cell++;
        }
    }

    /** Sets the forces of a step and returns the square of speed at its end. */
    private double work(TrainState state, CabView view, double toM) {
        double lengthM = toM - state.positionM;
        forces.inertiaKg = grid.inertiaKg[state.cell];
        forces.massKg = grid.massKg[state.cell];
        forces.gravityN = forces.massKg * grid.work.gravity(state.cell, state.positionM, toM) / lengthM;
        forces.curveN = forces.massKg * grid.work.curve(state.cell, state.positionM, toM) / lengthM;
        double first = free(state, view, state.speedMps(), lengthM);
        double meanMps = (state.speedMps() + Math.sqrt(Math.max(0, first))) / 2;
        double end = free(state, view, meanMps, lengthM);
        forces.freeEndSquared = end;
        double allowed = grid.allowedSquared(state.cell, toM);
        double wanted = Math.min(allowed, view.paceMps() * view.paceMps());
        double full = forces.pullN;
        if (end > wanted && full > 0) {
            double tooMuchN = (end - wanted) * forces.inertiaKg / (2 * lengthM);
            forces.pullN = Math.max(0, full - tooMuchN);
            end -= 2 * lengthM * (full - forces.pullN) / forces.inertiaKg;
        }
        forces.steamShare = full > 0 ? forces.pullN / full : 0;
        if (end > allowed) {
            double neededN = (end - allowed) * forces.inertiaKg / (2 * lengthM);

            forces.brakeN = allowed <= 0 ? neededN : Math.min(neededN, brake.forceN(state, meanMps));
            end -= 2 * lengthM * forces.brakeN / forces.inertiaKg;
        }
        return allowed <= 0 ? 0 : Math.max(0, end);
    }

    /** Sets pull and resistance at a speed, brake off, and returns the square of speed that they lead to. */
    private double free(TrainState state, CabView view, double speedMps, double lengthM) {
        forces.pullN = request.train().helpN();
        forces.brakeN = 0;
        forces.limitedBy = null;
        for (int i = 0; i < engines.size(); i++) {
            forces.steamKgPerS(i, 0, engines.size());
            if (engines.get(i).worksAt(state.positionM)) {
                Controls controls = state.handles.controls();
                Pull pull = view.pullAsSet(i, state.handles, speedMps);
                forces.pullN += pull.forceN();
                forces.steamKgPerS(i, pull.steamKgPerS(), engines.size());
                if (i == 0 && controls.regulator() > 0) {
                    forces.limitedBy = pull.limitedBy();
                }
            }
        }
        forces.resistanceN = grid.resistance[state.cell].forceN(speedMps);
        double netN = forces.pullN - forces.resistanceN - forces.gravityN - forces.curveN;
        return state.speedSquared + 2 * lengthM * netN / forces.inertiaKg;
    }

    private boolean starts(TrainState state, CabView view, double toM) {
        RunningResistance resistance = grid.resistance[state.cell];
        double lengthM = toM - state.positionM;
        double alongN = grid.massKg[state.cell] * grid.work.within(state.cell, state.positionM, toM) / lengthM;
        double pullN = view.pullN(state.handles.controls());
        return pullN > Math.max(resistance.startingN(), resistance.constantN()) + alongN;
    }

    private double nextStopM(TrainState state) {
        int cell = state.cell;
        while (cell < grid.cells() - 1 && grid.allowedEnd[cell] > 0) {
            cell++;
        }
        return grid.positionM[cell + 1];
    }

    private Handles shut(TrainState state, CabView view) {
        Cause cause = view.stopAhead() ? Cause.STOP_AHEAD : Cause.LIMIT_AHEAD;
        return new Handles(new Controls(0, state.handles.controls().cutoff()), false, cause);
    }

    private void set(TrainState state, Handles handles) {
        if (!handles.sameAs(state.handles)) {
            recorder.add(new Change.HandlesSet(recorder.size(), handles));
            state.changedS = state.timeS;
            state.handles = handles;
        }
    }

    private void stoke(TrainState state, CabView view) {
        for (int i = 0; i < engines.size(); i++) {
            Stoking stoking = fireman.stoking(view, i);
            if (stoking.task() != state.tasks[i]) {
                recorder.add(new Change.TaskBegun(recorder.size(), i, stoking));
                state.tasks[i] = stoking.task();
                state.taskFromS[i] = state.timeS;
            }
            firing[i] = state.tankWaterKg[i] > 0
                    ? stoking.firing()
                    : stoking.firing().fed(0);
            state.blower[i] = firing[i].blower();
            state.dampers[i] = firing[i].dampers();
            state.auxiliaryKgPerS[i] = engines.get(i).engine().auxiliaryKgPerS(firing[i].blower());
        }
    }

    /** Takes the steam of the train engine's large ejector for a while, as long as it is still open. */
    private void eject(TrainState state, double durationS) {
        if (state.ejectorS <= 0 || durationS <= 0) {
            return;
        }
        double openS = Math.min(state.ejectorS, durationS);
        double kgPerS = request.train().ejector().kgPerS() * openS / durationS;
        firing[0] = firing[0].ejecting(kgPerS);
        state.auxiliaryKgPerS[0] += kgPerS;
        state.ejectorS -= openS;
    }

    private void feedBoilers(TrainState state, double durationS) {
        for (int i = 0; i < engines.size(); i++) {
            if (!engines.get(i).worksAt(state.positionM)) {
                continue;
            }
            double steam = forces.steamKgPerS(i) * forces.steamShare;
            double feedKgPerS = Math.min(
                    firing[i].feedKgPerS(), engines.get(i).engine().feedMaxKgPerS(state.boilers[i].pressurePa()));
            double fedKg = Math.min(feedKgPerS * durationS, state.tankWaterKg[i]);
            Firing done = firing[i].fed(durationS > 0 ? fedKg / durationS : 0);
            state.steamKgPerS[i] = steam;
            state.boilers[i] = engines.get(i).engine().after(state.boilers[i], steam, done, durationS);
            state.tankWaterKg[i] -= fedKg;
            state.tankUsedKg[i] += fedKg;
            state.coalBurntKg[i] += firing[i].coalKgPerS() * durationS;
            state.boilers[i] = state.boilers[i].carrying(
                    engines.get(i).supply().share(state.tankWaterKg[i], state.coalBurntKg[i]));
        }
    }
}
