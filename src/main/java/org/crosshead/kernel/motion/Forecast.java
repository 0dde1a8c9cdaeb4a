package org.crosshead.kernel.motion;

import java.util.Optional;

/**
 * Makes runs. A run is integrated over distance in steps of at most 50 m that end at every place where something changes at once;
 * within a step the forces are those at its mean speed, so that the square of speed changes evenly. Deterministic.
 */
public final class Forecast {

    private static final double IN_TIME_S = 10;
    private static final int PACE_ROUNDS = 7;
    private static final double PACE_LEAST_SHARE = 0.7;

    private final RunRequest request;
    private final RunGrid grid;
    private final RunRecorder recorder;
    private final Driver driver;
    private final Fireman fireman;

    private final double stepShare;

    private Forecast(RunRequest request, Driver driver, Fireman fireman, double stepShare) {
        this.request = request;
        this.driver = driver;
        this.fireman = fireman;
        this.stepShare = stepShare;
        grid = new RunGrid(request, stepShare);
        recorder = new RunRecorder(request.train().engines().size());
    }

    /** Returns the run that keeps to booked times where it can: no faster than they ask, between the limits of the road. */
    public static RunOutcome timed(RunRequest request, Driver driver, Fireman fireman) {
        return new Forecast(request, driver, fireman, 1).make(true);
    }

    /** Returns the run without regard to booked arrivals; booked departures are still waited for. */
    public static RunOutcome unhurried(RunRequest request, Driver driver, Fireman fireman) {
        return new Forecast(request, driver, fireman, 1).make(false);
    }

    /** Returns the unhurried run with steps made shorter, by which the error of the steps is told. */
    static RunOutcome finer(RunRequest request, Driver driver, Fireman fireman, double stepShare) {
        return new Forecast(request, driver, fireman, stepShare).make(false);
    }

    private RunOutcome make(boolean keepsTime) {
        TrainState state = new TrainState(request.train().engines(), request.startM());
        StepMaker steps = new StepMaker(request, grid, recorder, new Crew(driver, fireman), stepShare);
        for (int call = 0; call + 1 < request.calls().size(); call++) {
            if (state.standing) {
                steps.stand(state, call);
            }
            Interval interval = keepsTime ? inTime(steps, state, call + 1) : interval(steps, state, call + 1, FLAT_OUT);
            if (interval.failure().isPresent()) {
                return interval.failure().get();
            }
            state = interval.end();
        }
        steps.end(state);
        return new RunOutcome.Arrives(recorder.run());
    }

    private static final double FLAT_OUT = Double.POSITIVE_INFINITY;

    /** Who works the train. */
    record Crew(Driver driver, Fireman fireman) {}

    /** A stretch between two calls, or why it was not made. */
    private record Interval(TrainState end, Optional<RunOutcome> failure) {}

    private Interval interval(StepMaker steps, TrainState from, int toCall, double paceMps) {
        TrainState state = new TrainState(from);
        return new Interval(state, steps.run(state, toCall, paceMps));
    }

    private Interval inTime(StepMaker steps, TrainState from, int toCall) {
        RunRecorder.Mark mark = recorder.mark();
        Interval fastest = interval(steps, from, toCall, FLAT_OUT);
        var booked = request.calls().get(toCall).times().arrivalS();
        if (fastest.failure().isPresent()
                || booked.isEmpty()
                || fastest.end().timeS > booked.getAsDouble() - IN_TIME_S) {
            return fastest;
        }
        double low = PACE_LEAST_SHARE
                * (request.calls().get(toCall).positionM() - from.positionM)
                / (booked.getAsDouble() - from.timeS);
        double high = request.speedMaxMps();
        for (int i = 0; i < PACE_ROUNDS; i++) {
            double middle = (low + high) / 2;
            recorder.backTo(mark);
            Interval tried = interval(steps, from, toCall, middle);
            boolean late = tried.failure().isPresent() || tried.end().timeS > booked.getAsDouble();
            if (late) {
                low = middle;
            } else {
                high = middle;
            }
        }
        recorder.backTo(mark);
        if (high < request.speedMaxMps()) {
            recorder.add(new Change.PaceKept(recorder.size(), high));
        }
        return interval(steps, from, toCall, high);
    }
}
