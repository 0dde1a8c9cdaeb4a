package org.crosshead.kernel.handling;

import static org.assertj.core.api.Assertions.assertThat;

import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunRequest;
import org.junit.jupiter.api.Test;

/** Each release of a vacuum brake takes its steam from the boiler, no more and no less. */
class LargeEjectorTests {

    private static final double KG_PER_S = 0.2;
    private static final double OPEN_S = 20;

    @Test
    void eachReleaseTakesItsSteam() {
        RunRequest without = DemonstrationRoad.express(8, false);
        RunRequest with = new RunRequest(
                without.road(),
                without.train().releasing(new MakeUp.Ejector(KG_PER_S, OPEN_S)),
                without.calls(),
                without.policy());
        Run run = Forecast.unhurried(with, new RuleDriver(), new RuleFireman()).run();
        long releases = run.changes().stream()
                .filter(Change.BrakeReleased.class::isInstance)
                .count();
        assertThat(releases).isGreaterThan(3);
        Run plain =
                Forecast.unhurried(without, new RuleDriver(), new RuleFireman()).run();
        assertThat(steamKg(run) - steamKg(plain))
                .isBetween(0.5 * (releases - 1) * KG_PER_S * OPEN_S, 1.5 * releases * KG_PER_S * OPEN_S);
    }

    private static double steamKg(Run run) {
        double sum = 0;
        for (int i = 0; i + 1 < run.size(); i++) {
            sum += run.auxiliaryKgPerS(i, 0) * (run.timeS(i + 1) - run.timeS(i));
        }
        return sum;
    }
}
