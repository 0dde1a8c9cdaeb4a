package org.crosshead.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.units.Check;

/**
 * A train, its road and its booked times: all that a forecast needs.
 *
 * @param calls in running order, at least two, rising by at least 1 m; the run starts from rest at the first and ends at the last
 */
public record RunRequest(RunRoad road, MakeUp train, List<Call> calls, RunPolicy policy) {

    private static final double APART_M = 1;

    public RunRequest {
        calls = List.copyOf(calls);
        Check.that(calls.size() >= 2, "calls must be at least two");
        for (int i = 1; i < calls.size(); i++) {
            Check.that(
                    calls.get(i).positionM() >= calls.get(i - 1).positionM() + APART_M,
                    "calls must be in running order, at least 1 m apart");
        }
        for (double reversalM : road.reversalsM()) {
            requireStop(calls, reversalM, reversalM + train.body().lengthM());
        }
    }

    /** A reversal must be a stop but the last, and the next call must lie beyond the head as it is then. */
    private static void requireStop(List<Call> calls, double reversalM, double headM) {
        int at = 0;
        while (at < calls.size() && calls.get(at).positionM() != reversalM) {
            at++;
        }
        Check.that(
                at + 1 < calls.size() && calls.get(at).stops(),
                "a reversal must be a call that stops, and not the last");
        Check.that(
                calls.get(at + 1).positionM() >= headM + APART_M,
                "the call after a reversal must lie more than a train length beyond it");
    }

    public double startM() {
        return calls.get(0).positionM();
    }

    public double endM() {
        return calls.get(calls.size() - 1).positionM();
    }

    /** Returns the same run with places where a step ends, at least 1 m from calls and from each other. */
    public RunRequest marked(List<Double> places) {
        List<Double> apart = new ArrayList<>();
        for (double placeM : places.stream().sorted().toList()) {
            boolean near = calls.stream().anyMatch(call -> Math.abs(call.positionM() - placeM) < APART_M)
                    || (!apart.isEmpty() && placeM - apart.get(apart.size() - 1) < APART_M);
            if (!near && placeM > startM() && placeM < endM()) {
                apart.add(placeM);
            }
        }
        return new RunRequest(road.marked(apart), train, calls, policy);
    }

    /** Returns the same run with the trailing load made {@code share} times as heavy. */
    public RunRequest withTrailing(double share) {
        return new RunRequest(road, train.withTrailing(share), calls, policy);
    }

    /** Returns the same run with a steady pull from outside that helps the train from end to end, N. */
    public RunRequest withHelp(double helpN) {
        return new RunRequest(road, train.withHelp(helpN), calls, policy);
    }

    /** Returns the least of the greatest speeds of the train and of the engines that work from end to end. */
    double speedMaxMps() {
        double least = policy.speedMaxMps();
        for (EngineAtWork engine : train.engines()) {
            if (!engine.assistance().equals(Assistance.THROUGHOUT)) {
                continue;
            }
            LocomotiveParameters parameters = engine.engine().parameters();
            least = Math.min(least, parameters.speedMaxMps());
        }
        return least;
    }
}
