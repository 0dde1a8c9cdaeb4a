package org.crosshead.briefing.build;

import java.util.Optional;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.Planner;
import org.jspecify.annotations.Nullable;

/**
 * The run of a train as it is told: by its plan, else by the rules of the trade.
 *
 * @param plan null where the rules are followed
 * @param needsMomentum true where the booked times are too slow to rush a bank, so that the run is faster than booked
 */
record HandledRun(RunOutcome outcome, @Nullable Plan plan, boolean needsMomentum) {

    /** @param request marked at the places where a crew can change something */
    static HandledRun of(RunRequest request) {
        Optional<Plan> plan = Planner.plan(request);
        return plan.isPresent() ? new HandledRun(plan.get().outcome(), plan.get(), false) : byRules(request);
    }

    private static HandledRun byRules(RunRequest request) {
        RunOutcome timed = Forecast.timed(request, new RuleDriver(), new RuleFireman());
        if (!(timed instanceof RunOutcome.Stalls)) {
            return new HandledRun(timed, null, false);
        }
        RunOutcome unhurried = Forecast.unhurried(request, new RuleDriver(), new RuleFireman());
        return new HandledRun(unhurried, null, unhurried instanceof RunOutcome.Arrives);
    }
}
