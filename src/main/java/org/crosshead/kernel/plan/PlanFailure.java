package org.crosshead.kernel.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.RunRequest;

/**
 * Why no plan could be made, and what would make one.
 *
 * @param limit what stands in the way
 * @param at where on the path, m; empty where it is no single place
 * @param loadShare a share of the trailing load with which there is a plan, sought by halving to a 16th, so near the greatest; 0 where none
 *     was found
 * @param withMoreTime whether there is one at this load where no times are booked
 */
public record PlanFailure(Limit limit, OptionalDouble at, double loadShare, boolean withMoreTime) {

    private static final int ROUNDS = 4;

    /** What stands in the way of a plan. */
    public enum Limit {
        /** The boiler starts below the class's least pressure. */
        STARTS_LOW,
        /** No handling at all makes the trip within the bounds of boiler, cylinders and rail. */
        PULL,
        /** None of the settings that crews use makes it. */
        SETTINGS,
        /** The train of the plan comes to a stand. */
        STANDS,
        /** Its brake does not hold the train of the plan on a fall. */
        NOT_HELD,
        /** The water of the plan falls below the class's least. */
        WATER,
        /** Its pressure falls below the class's least. */
        PRESSURE
    }

    /** Returns why {@link Planner#plan} gives none for a request for which it gives none. */
    static PlanFailure of(RunRequest request, Limit limit, OptionalDouble at) {
        return new PlanFailure(
                limit, at, loadShare(request), Planner.plan(untimed(request)).isPresent());
    }

    private static double loadShare(RunRequest request) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < ROUNDS; i++) {
            double middle = (low + high) / 2;
            if (Planner.plan(request.withTrailing(middle)).isPresent()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static RunRequest untimed(RunRequest request) {
        List<Call> calls = request.calls().stream()
                .map(call -> new Call(call.positionM(), call.stops(), Call.Times.NONE, call.standing()))
                .toList();
        return new RunRequest(request.road(), request.train(), calls, request.policy());
    }
}
