package org.crosshead.kernel.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Pace;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.traction.Controls;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plans on roads of 10 km against every way of setting four positions of the handles at six places, each run through the full model as
 * the plan is, at the speed told with the plan. No search is in this: it shares with the planner the model and nothing else.
 */
class ExhaustivePlanTests {

    private static final double WORSE_MOST = 1.006;
    private static final double SAME_S = 1;
    private static final List<Controls> SETTINGS =
            List.of(new Controls(0, 0), new Controls(1, 0.15), new Controls(1, 0.2), new Controls(1, 0.3));
    private static final double[] PLACES_M = {300, 1_700, 3_100, 4_500, 5_900, 7_300};

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0, 0, 13",
        "0.005, -0.0033, 0, 0.0025, -0.004, 14",
        "-0.0033, 0.0083, -0.005, 0, 0, 14",
        "0, 0.0067, 0.0025, -0.01, 0, 13"
    })
    void noneOfFourThousandWaysIsCheaperInTheSameTime(
            double first, double second, double third, double fourth, double fifth, double meanMps) {
        RunRequest request = PlanTrips.trip(
                new double[] {0, 2_000, 4_000, 6_000, 8_000, 10_000},
                new double[] {first, second, third, fourth, fifth},
                8,
                OptionalDouble.of(9_400 / meanMps));
        Plan plan = Planner.plan(request).orElseThrow();
        Run planned = plan.outcome().run();
        int ways = (int) Math.pow(SETTINGS.size(), PLACES_M.length);
        double[] coals = IntStream.range(0, ways)
                .parallel()
                .mapToDouble(way -> cost(request, plan, way))
                .toArray();
        double best = IntStream.range(0, ways).mapToDouble(i -> coals[i]).min().orElseThrow();
        assertThat(best).as("some way arrives in time").isLessThan(Double.POSITIVE_INFINITY);
        assertThat(PlanTrips.coalKg(request, planned)).isLessThan(WORSE_MOST * best);
    }

    /** Returns the coal of one way; infinite where it does not arrive as soon as the plan. */
    private static double cost(RunRequest request, Plan plan, int way) {
        List<PlanSetting> settings = new ArrayList<>();
        List<Cause> causes = new ArrayList<>();
        int rest = way;
        int before = -1;
        for (double placeM : PLACES_M) {
            int chosen = rest % SETTINGS.size();
            rest /= SETTINGS.size();
            if (chosen != before) {
                settings.add(new PlanSetting(placeM, SETTINGS.get(chosen)));
                causes.add(before < 0 ? Cause.STARTING : Cause.SPEED_RISES);
            }
            before = chosen;
        }
        if (settings.get(0).shut()) {
            return Double.POSITIVE_INFINITY;
        }
        Run planned = plan.outcome().run();
        RunOutcome outcome = Forecast.paced(
                request,
                new PlanDriver(settings, causes, plan.trip().withoutSpeeds()),
                new PlanFireman(plan.trip()),
                Pace.of(request, planned));
        boolean inTime =
                outcome instanceof RunOutcome.Arrives && outcome.run().durationS() <= planned.durationS() + SAME_S;
        return inTime ? PlanTrips.coalKg(request, outcome.run()) : Double.POSITIVE_INFINITY;
    }
}
