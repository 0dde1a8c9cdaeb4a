package org.crosshead.kernel.plan;

import java.util.List;
import java.util.Map;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.RunOutcome;

/**
 * A plan and the run that comes of it in the full model.
 *
 * @param settings in running order
 * @param causes why each is set
 * @param shut by the index of a setting, what shutting there is worth, where steam is shut for something ahead
 * @param trip speed, fire and boiler as they should be
 * @param outcome the run
 */
public record Plan(
        List<PlanSetting> settings,
        List<Cause> causes,
        Map<Integer, ShutWorth> shut,
        TripPlan trip,
        PlanCost cost,
        RunOutcome outcome) {

    public Plan {
        settings = List.copyOf(settings);
        causes = List.copyOf(causes);
        shut = Map.copyOf(shut);
    }
}
