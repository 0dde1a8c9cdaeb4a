package org.crosshead.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
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

/** Motion against closed forms: constant force, constant slope, constant braking. */
class ForecastTests {

    private static final double LENGTH_M = 20_000;
    private static final double MASS_KG = 400_000;
    private static final double G = 9.80665;
    private static final Driver OPEN = moment -> new Handles(new Controls(1, 0.5), false, Cause.STARTING);
    private static final Fireman IDLE =
            (moment, engine) -> new Stoking(new Firing(0, 0), Stoking.Task.STEADY, Cause.STANDING);

    private static RunRequest request(
            GradientProfile profile, SpeedLimits limits, RunningResistance resistance, double pullN, Call... calls) {
        TrainBody body = new TrainBody(MASS_KG, 0, 200, resistance);
        EngineAtWork engine = EngineAtWork.throughout(
                new SteadyEngine(pullN), new EngineState(1e6, 5_000, 0), new Supply(10_000, 10_000, 3_000));
        MakeUp train = new MakeUp(
                body,
                new TrailingLoad(MASS_KG * 0.75, resistance.times(0.75)),
                List.of(engine),
                new Application(Application.Kind.SERVICE, 0, 0, 0, speedMps -> 0.5 * MASS_KG));
        Track track = new Track(profile, Curves.straight(LENGTH_M), limits);
        return new RunRequest(
                new RunRoad(track, RailState.DRY, List.of()), train, List.of(calls), new RunPolicy(1, 0, 35));
    }

    private static SpeedLimits noLimits() {
        return SpeedLimits.of(LENGTH_M, 60, List.of());
    }

    @Test
    void constantForceGivesConstantAcceleration() {
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, 0),
                noLimits(),
                RunningResistance.NONE,
                40_000,
                Call.untimed(0, true),
                Call.untimed(5_000, true));
        Run run = Forecast.unhurried(request, OPEN, IDLE).run();
        RunPoint point = run.at(2_000);
        assertThat(point.speedMps()).isCloseTo(Math.sqrt(2 * 0.1 * 2_000), withinPercentage(1e-6));
        assertThat(point.timeS()).isCloseTo(Math.sqrt(2 * 2_000 / 0.1), withinPercentage(1e-6));
    }

    @Test
    void slopeActsByItsSine() {
        double gradient = 0.02;
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, gradient),
                noLimits(),
                RunningResistance.NONE,
                100_000,
                Call.untimed(300, true),
                Call.untimed(8_000, true));
        RunPoint point = Forecast.unhurried(request, OPEN, IDLE).run().at(3_300);
        double acceleration = 100_000 / MASS_KG - G * gradient / Math.sqrt(1 + gradient * gradient);
        assertThat(point.speedMps()).isCloseTo(Math.sqrt(2 * acceleration * 3_000), withinPercentage(1e-4));
    }

    @Test
    void constantBrakeStopsInTheDistanceOfTheClosedForm() {
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, 0),
                SpeedLimits.of(LENGTH_M, 20, List.of()),
                RunningResistance.NONE,
                80_000,
                Call.untimed(0, true),
                Call.untimed(6_000, true));
        Run run = Forecast.unhurried(request, OPEN, IDLE).run();
        double brakingM = 20 * 20 / (2 * 0.5);
        assertThat(run.at(6_000 - brakingM - 60).speedMps()).isCloseTo(20, within(0.01));
        assertThat(run.at(6_000 - brakingM / 4).speedMps()).isCloseTo(10, within(0.1));
        assertThat(run.speedMps(run.size() - 1)).isZero();
        assertThat(run.positionM(run.size() - 1)).isEqualTo(6_000);
    }

    @Test
    void limitHoldsUntilTheTailHasCleared() {
        SpeedLimits limits = SpeedLimits.of(LENGTH_M, 30, List.of(new SpeedLimits.Length(4_000, 5_000, 10)));
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, 0),
                limits,
                RunningResistance.NONE,
                80_000,
                Call.untimed(0, true),
                Call.untimed(12_000, true));
        Run run = Forecast.unhurried(request, OPEN, IDLE).run();
        assertThat(run.at(4_000).speedMps()).isLessThanOrEqualTo(10.01);
        assertThat(run.at(5_199).speedMps()).isLessThanOrEqualTo(10.01);
        assertThat(run.at(5_400).speedMps()).isGreaterThan(10.5);
        for (int i = 0; i < run.size(); i++) {
            assertThat(run.speedMps(i)).isLessThanOrEqualTo(30.01);
        }
    }

    @Test
    void trainThatCannotClimbStallsWhereItsEnergyIsSpent() {
        GradientProfile bank = GradientProfile.of(new double[] {0, 4_000, LENGTH_M}, new double[] {0, 0.025});
        RunRequest request = request(
                bank, noLimits(), RunningResistance.NONE, 40_000, Call.untimed(300, true), Call.untimed(9_000, true));
        RunOutcome outcome = Forecast.unhurried(request, OPEN, IDLE);
        assertThat(outcome).isInstanceOf(RunOutcome.Stalls.class);
        double atM = ((RunOutcome.Stalls) outcome).positionM();
        double workJ = 40_000 * (atM - 300);
        assertThat(MASS_KG * G * bank.meanHeightM(atM, 200)).isCloseTo(workJ, withinPercentage(0.01));
        assertThat(outcome.run().size()).isGreaterThan(10);
    }

    @Test
    void trainThatCannotStartStallsWhereItStands() {
        RunningResistance sticky = new RunningResistance(10_000, 0, 0, 50_000);
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, 0),
                noLimits(),
                sticky,
                40_000,
                Call.untimed(300, true),
                Call.untimed(9_000, true));
        RunOutcome outcome = Forecast.unhurried(request, OPEN, IDLE);
        assertThat(outcome).isInstanceOf(RunOutcome.Stalls.class);
        assertThat(((RunOutcome.Stalls) outcome).positionM()).isEqualTo(300);
    }

    @Test
    void fallThatTheBrakeDoesNotHoldIsTold() {
        GradientProfile fall = GradientProfile.of(new double[] {0, 3_000, LENGTH_M}, new double[] {0, -0.08});
        RunRequest request = request(
                fall,
                SpeedLimits.of(LENGTH_M, 15, List.of()),
                RunningResistance.NONE,
                40_000,
                Call.untimed(300, true),
                Call.untimed(9_000, true));
        RunOutcome outcome = Forecast.unhurried(request, OPEN, IDLE);
        assertThat(outcome).isInstanceOf(RunOutcome.NotHeld.class);
        assertThat(((RunOutcome.NotHeld) outcome).positionM()).isBetween(3_000.0, 4_500.0);
    }

    @Test
    void standsUntilBookedAndFillsItsTank() {
        Call water = new Call(
                3_000,
                true,
                new Call.Times(java.util.OptionalDouble.of(500), java.util.OptionalDouble.of(900)),
                new Call.Standing(120, true));
        RunRequest request = request(
                GradientProfile.even(LENGTH_M, 0),
                noLimits(),
                RunningResistance.NONE,
                40_000,
                Call.untimed(0, true),
                water,
                Call.untimed(6_000, true));
        Run run = Forecast.unhurried(request, OPEN, IDLE).run();
        assertThat(run.callTimes()).hasSize(3);
        assertThat(run.callTimes().get(1).departureS()).isEqualTo(900);
        assertThat(run.tankWaterKg(run.size() - 1, 0)).isEqualTo(10_000);
        assertThat(run.callTimes().get(2).arrivalWholeS()).isEqualTo(Math.round(run.durationS()));
    }

    @Test
    void refusesCallsOutOfOrderAndASingleCall() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> request(
                        GradientProfile.even(LENGTH_M, 0),
                        noLimits(),
                        RunningResistance.NONE,
                        40_000,
                        Call.untimed(500, true)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> request(
                        GradientProfile.even(LENGTH_M, 0),
                        noLimits(),
                        RunningResistance.NONE,
                        40_000,
                        Call.untimed(500, true),
                        Call.untimed(400, true)));
    }
}
