package org.crosshead.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.Curves;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.RailState;
import org.junit.jupiter.api.Test;

/** A train that runs up a slope with a break of gradient, reverses and comes back over the same rails. */
class ReversalTests {

    private static final double REVERSAL_M = 3_000;
    private static final double TRAIN_M = 200;
    private static final double MASS_KG = 400_000;
    private static final double G = 9.80665;

    /** Level, 1 in 100 up from 2,900 m to the reversal, and the same turned round. */
    private static final GradientProfile THERE_AND_BACK =
            GradientProfile.of(new double[] {0, 2_900, 3_000, 3_100, 6_000}, new double[] {0, 0.01, -0.01, 0});

    private static final double PULL_N = 60_000;

    private static RunRequest request(List<SpeedLimits.Length> limits, Call... calls) {
        TrainBody body = new TrainBody(MASS_KG, 0, TRAIN_M, RunningResistance.NONE);
        EngineAtWork engine = EngineAtWork.throughout(
                new SteadyEngine(PULL_N), new EngineState(1e6, 5_000, 0), new Supply(10_000, 10_000, 3_000));
        MakeUp train = new MakeUp(
                body,
                new TrailingLoad(0.75 * MASS_KG, RunningResistance.NONE),
                List.of(engine),
                new Application(Application.Kind.SERVICE, 0, 0, 0, speedMps -> 0.5 * MASS_KG));
        Track track = new Track(THERE_AND_BACK, Curves.straight(6_000), SpeedLimits.of(6_000, 60, limits));
        RunRoad road = new RunRoad(track, RailState.DRY, List.of(), List.of(REVERSAL_M));
        return new RunRequest(road, train, List.of(calls), new RunPolicy(1, 0, 35));
    }

    private static Run run(List<SpeedLimits.Length> limits) {
        Call.Times times = new Call.Times(OptionalDouble.empty(), OptionalDouble.of(900));
        Call reversal = new Call(REVERSAL_M, true, times, new Call.Standing(60, false));
        return Forecast.unhurried(
                        request(limits, Call.untimed(300, true), reversal, Call.untimed(5_500, true)),
                        moment -> new Handles(new Controls(1, 0.5), false, Cause.STARTING),
                        (moment, engine) -> new Stoking(new Firing(0, 0), Stoking.Task.STEADY, Cause.STANDING))
                .run();
    }

    private static int firstBeyond(Run run) {
        int sample = run.sampleAt(REVERSAL_M) + 1;
        assertThat(run.positionM(sample)).isEqualTo(REVERSAL_M + TRAIN_M);
        return sample;
    }

    @Test
    void theFormerTailLeadsWithoutTheTrainHavingMoved() {
        Run run = run(List.of());
        int after = firstBeyond(run);
        assertThat(run.timeS(after)).isEqualTo(900);
        assertThat(run.timeS(after - 1)).isEqualTo(900);
        assertThat(run.speedMps(after)).isZero();
        assertThat(THERE_AND_BACK.meanHeightM(run.positionM(after), TRAIN_M))
                .isCloseTo(THERE_AND_BACK.meanHeightM(REVERSAL_M, TRAIN_M), within(1e-9));
    }

    /** Half the train stands on 1 in 100: what held it back before helps it after, by the same force. */
    @Test
    void gradientUnderTheWholeTrainChangesSign() {
        Run run = run(List.of());
        int after = firstBeyond(run);
        double halfOnSlopeN = MASS_KG * G * 0.5 * 0.01 / Math.sqrt(1 + 0.01 * 0.01);
        double stepM = run.positionM(after + 1) - run.positionM(after);
        double withdrawnN = MASS_KG * G * 0.01 * stepM / (2 * TRAIN_M);
        assertThat(run.gravityN(after)).isCloseTo(-halfOnSlopeN + withdrawnN, withinPercentage(0.02));
    }

    /** Constant pull and the work of half a train coming down one metre in each hundred of the slope: speed in closed form. */
    @Test
    void speedBeyondTheReversalIsThatOfTheClosedForm() {
        Run run = run(List.of());
        double headM = 4_000;
        double workJ = PULL_N * (headM - REVERSAL_M - TRAIN_M)
                + MASS_KG
                        * G
                        * (THERE_AND_BACK.meanHeightM(REVERSAL_M, TRAIN_M)
                                - THERE_AND_BACK.meanHeightM(headM, TRAIN_M));
        assertThat(run.at(headM).speedMps()).isCloseTo(Math.sqrt(2 * workJ / MASS_KG), withinPercentage(1e-6));
    }

    /** A limit that covers the reversal holds again from the first metre back, until the new tail has left it. */
    @Test
    void limitAtTheReversalHoldsUntilTheNewTailHasLeftIt() {
        double limitMps = 5;
        Run run = run(List.of(new SpeedLimits.Length(2_600, 3_400, limitMps)));
        assertThat(run.at(3_590).speedMps()).isLessThanOrEqualTo(limitMps + 0.01);
        assertThat(run.at(3_700).speedMps()).isGreaterThan(limitMps + 0.5);
    }

    @Test
    void energyBalancesThroughTheReversal() {
        Run run = run(List.of());
        for (int i = 0; i + 1 < run.size(); i++) {
            double lengthM = run.positionM(i + 1) - run.positionM(i);
            double netJ = (run.pullN(i) - run.gravityN(i) - run.brakeN(i)) * lengthM;
            double gainedJ = MASS_KG * (square(run.speedMps(i + 1)) - square(run.speedMps(i))) / 2;
            assertThat(netJ).isCloseTo(gainedJ, within(1e-6 * MASS_KG * 30 * 30 / 2));
        }
    }

    @Test
    void placesWithinTheTrainStandAtItsDeparture() {
        RunPoint within = run(List.of()).at(REVERSAL_M + TRAIN_M / 2);
        assertThat(within.timeS()).isEqualTo(900);
        assertThat(within.speedMps()).isZero();
    }

    @Test
    void refusesAReversalWithoutAStopOrWithACallUnderTheTrain() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> request(List.of(), Call.untimed(300, true), Call.untimed(5_500, true)))
                .withMessageContaining("reversal must be a call");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> request(
                        List.of(),
                        Call.untimed(300, true),
                        Call.untimed(REVERSAL_M, true),
                        Call.untimed(3_150, false),
                        Call.untimed(5_500, true)))
                .withMessageContaining("train length beyond");
    }

    private static double square(double value) {
        return value * value;
    }
}
