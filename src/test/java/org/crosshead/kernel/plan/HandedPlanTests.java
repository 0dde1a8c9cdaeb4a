package org.crosshead.kernel.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.traction.Controls;
import org.junit.jupiter.api.Test;

class HandedPlanTests {

    private static final RunRequest REQUEST = DemonstrationRoad.stretched(25_000, 8);
    private static final Plan PLAN = Planner.plan(REQUEST).orElseThrow();
    private static final double LEAST_PA = 0;

    private static HandedPlan with(HandChange... changes) {
        return HandedPlan.of(REQUEST, PLAN, List.of(changes), LEAST_PA);
    }

    private static PlanSetting second() {
        int first = 0;
        while (PLAN.causes().get(first) == Cause.STARTING) {
            first++;
        }
        return PLAN.settings().get(first);
    }

    @Test
    void withoutChangesItIsThePlan() {
        assertThat(with().plan()).isSameAs(PLAN);
    }

    @Test
    void movedSettingIsMadeWhereItIsMovedTo() {
        PlanSetting meant = second();
        HandedPlan moved = with(new HandChange.Moved(meant.fromM() + 60, meant.fromM() + 400));
        assertThat(moved.done().get(0).fate()).isEqualTo(HandedPlan.Fate.APPLIED);
        assertThat(moved.plan().settings())
                .hasSameSizeAs(PLAN.settings())
                .doesNotContain(meant)
                .contains(new PlanSetting(meant.fromM() + 400, meant.controls()));
        assertThat(moved.plan().causes()).contains(Cause.SET_BY_HAND);
        assertThat(moved.plan().outcome()).isInstanceOf(RunOutcome.Arrives.class);
    }

    @Test
    void struckSettingIsLeftOutAndTheOneBeforeItGoesOn() {
        PlanSetting meant = second();
        HandedPlan struck = with(new HandChange.Struck(meant.fromM()));
        assertThat(struck.plan().settings()).hasSize(PLAN.settings().size() - 1).doesNotContain(meant);
    }

    @Test
    void costsOfChangesAddUpToTheDifferenceOfTheRuns() {
        PlanSetting meant = second();
        HandedPlan both = with(
                new HandChange.Moved(meant.fromM(), meant.fromM() + 400),
                new HandChange.Added(meant.fromM() + 2_000, new Controls(1, 0.3)));
        double timeS = both.done().stream().mapToDouble(HandedPlan.Done::timeS).sum();
        assertThat(both.plan().outcome().run().durationS()
                        - PLAN.outcome().run().durationS())
                .isEqualTo(timeS, org.assertj.core.api.Assertions.offset(1e-6));
    }

    @Test
    void oneThatWouldTakeThePressureBelowWhatIsAllowedIsLeftOut() {
        double atLowestPa = PLAN.outcome().run().pressurePa(PLAN.outcome().run().lowestPressure(0));
        HandedPlan open =
                HandedPlan.of(REQUEST, PLAN, List.of(new HandChange.Added(3_000, new Controls(1, 0.5))), atLowestPa);
        HandedPlan.Done done = open.done().get(0);
        assertThat(done.fate()).isEqualTo(HandedPlan.Fate.LOW_PRESSURE);
        assertThat(done.coalKg()).isZero();
        assertThat(open.plan()).isSameAs(PLAN);
    }

    @Test
    void trainOnWhichSteamIsShutEarlyRunsOnAndIsLater() {
        PlanSetting last = PLAN.settings().get(PLAN.settings().size() - 1);
        HandedPlan shut = with(new HandChange.Added(last.fromM() - 4_000, new Controls(0, 0)));
        HandedPlan.Done done = shut.done().get(0);
        assertThat(done.fate()).isEqualTo(HandedPlan.Fate.APPLIED);
        assertThat(done.timeS()).isGreaterThan(60);
        assertThat(shut.plan().outcome()).isInstanceOf(RunOutcome.Arrives.class);
    }

    @Test
    void startIsNotChanged() {
        HandedPlan start = with(new HandChange.Struck(PLAN.settings().get(0).fromM() - 700));
        assertThat(start.done().get(0).fate()).isEqualTo(HandedPlan.Fate.NOTHING_THERE);
        assertThat(start.plan()).isSameAs(PLAN);
    }
}
