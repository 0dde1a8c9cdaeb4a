package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.diagram.StripModel.Work;
import org.crosshead.diagram.StripModel.WorkKind;
import org.jspecify.annotations.Nullable;

/** The fireman's rows of the strip: rounds of firing, and where injector and blower are at work. */
final class FiremanWork {

    private FiremanWork() {}

    static List<Work> of(@Nullable FiremanPlan plan) {
        if (plan == null) {
            return List.of();
        }
        List<Work> work = new ArrayList<>();
        plan.rounds().forEach(atM -> work.add(new Work(WorkKind.FIRE, atM, atM, "")));
        plan.feeds().forEach(feed -> work.add(new Work(WorkKind.INJECTOR, feed.fromM(), feed.toM(), "")));
        plan.blowers().forEach(open -> work.add(new Work(WorkKind.BLOWER, open.fromM(), open.toM(), "")));
        return work;
    }
}
