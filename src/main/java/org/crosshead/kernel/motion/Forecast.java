package org.crosshead.kernel.motion;

import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.units.Check;

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
        Forecast forecast = new Forecast(request, driver, fireman, 1);
        return forecast.make(forecast::inTime);
    }

    /** Returns the run without regard to booked arrivals; booked departures are still waited for. */
    public static RunOutcome unhurried(RunRequest request, Driver driver, Fireman fireman) {
        Forecast forecast = new Forecast(request, driver, fireman, 1);
        return forecast.make(forecast::flatOut);
    }

    /**
     * Returns the run of a crew that was told a speed for each stretch, and hurries where it left late.
     *
     * @param paces one for each stretch between calls
     */
    public static RunOutcome paced(RunRequest request, Driver driver, Fireman fireman, List<Pace> paces) {
        Check.that(paces.size() == request.calls().size() - 1, "paces must be one for each stretch between calls");
        Forecast forecast = new Forecast(request, driver, fireman, 1);
        return forecast.make((steps, state, toCall) ->
                forecast.interval(steps, state, toCall, paces.get(toCall - 1).speedMps(state.timeS)));
    }

    /** Returns the unhurried run with steps made shorter, by which the error of the steps is told. */
    static RunOutcome finer(RunRequest request, Driver driver, Fireman fireman, double stepShare) {
        Forecast forecast = new Forecast(request, driver, fireman, stepShare);
        return forecast.make(forecast::flatOut);
    }

    /** How a stretch between calls is run. */
    private interface Stretch {
        Interval run(StepMaker steps, TrainState from, int toCall);
    }

    private RunOutcome make(Stretch stretch) {
        TrainState state = new TrainState(request.train().engines(), request.startM());
        StepMaker steps = new StepMaker(request, grid, recorder, new Crew(driver, fireman), stepShare);
        for (int call = 0; call + 1 < request.calls().size(); call++) {
            if (state.standing) {
                steps.stand(state, call);
            }
            Interval interval = stretch.run(steps, state, call + 1);
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

    private Interval flatOut(StepMaker steps, TrainState from, int toCall) {
        return interval(steps, from, toCall, FLAT_OUT);
    }

    private Interval inTime(StepMaker steps, TrainState from, int toCall) {
        RunRecorder.Mark mark = recorder.mark();
        Interval fastest = flatOut(steps, from, toCall);
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
