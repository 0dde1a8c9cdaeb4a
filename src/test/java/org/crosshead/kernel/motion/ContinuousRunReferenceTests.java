package org.crosshead.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Firing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The forward run against the integrator of order 8 of a general library (Dormand and Prince), all of the model in it. */
class ContinuousRunReferenceTests {

    private static final Firing FIRING = new Firing(0.25, 1.5);
    private static final double FROM_M = 1_500;
    private static final double TO_M = 13_500;

    private static RunRequest request(int coaches) {
        return DemonstrationRoad.express(coaches, false);
    }

    private static Run forward(RunRequest request, Controls controls, double stepShare) {
        return FinerForecast.of(
                        request,
                        moment -> new Handles(
                                moment.standing() ? new Controls(0, 0) : controls, false, Cause.SPEED_RISES),
                        (moment, engine) -> new Stoking(FIRING, Stoking.Task.STEADY, Cause.SPEED_RISES),
                        stepShare)
                .run();
    }

    private static double between(Run run) {
        return run.timeS(run.sampleAt(TO_M)) - run.timeS(run.sampleAt(FROM_M));
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 8, 11})
    void timeAgreesWithAGeneralIntegrator(int coaches) {
        RunRequest request = request(coaches);
        Controls controls = new Controls(1, 0.15 + 0.01 * coaches);
        Run run = forward(request, controls, 1);
        int from = run.sampleAt(FROM_M);
        int to = run.sampleAt(TO_M);
        ContinuousRun continuous = new ContinuousRun(request, controls, FIRING);
        double timeS = continuous.timeS(run, from, to, 1e-9);
        assertThat(between(run)).isCloseTo(timeS, withinPercentage(0.1));
        assertThat(continuous.timeS(run, from, to, 1e-6)).isCloseTo(timeS, withinPercentage(1e-2));
        assertThat(run.changes()).isNotEmpty();
        for (int i = from; i < to; i++) {
            assertThat(run.regulator(i)).as("eased at %s", run.positionM(i)).isEqualTo(1);
            assertThat(run.brakeN(i)).isZero();
        }
    }

    /** Halved steps come nearer to it. */
    @Test
    void finerStepsComeNearer() {
        RunRequest request = request(8);
        Controls controls = new Controls(1, 0.23);
        List<Double> errors = List.of(1.0, 0.5, 0.25).stream()
                .map(share -> {
                    Run run = forward(request, controls, share);
                    int from = run.sampleAt(FROM_M);
                    int to = run.sampleAt(TO_M);
                    return Math.abs((run.timeS(to) - run.timeS(from))
                                    / new ContinuousRun(request, controls, FIRING).timeS(run, from, to, 1e-9)
                            - 1);
                })
                .toList();
        assertThat(errors.get(2)).isLessThan(errors.get(0));
        assertThat(errors.get(2)).isLessThan(1e-3);
    }
}
