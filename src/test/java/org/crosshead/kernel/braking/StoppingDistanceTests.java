package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.ResistanceFormulas;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Checks {@link StoppingDistance} against closed forms, a second slower method, and what must hold of any brake. */
class StoppingDistanceTests {

    private static final TrainBody FREE = new TrainBody(300_000, 0, 200, RunningResistance.NONE);
    private static final TrainBody TRAIN = new TrainBody(
            300_000,
            0.08,
            200,
            ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, 30_000, 4).times(10));
    private static final GradientProfile LEVEL = GradientProfile.even(30_000, 0);
    private static final GradientProfile ROLLING = GradientProfile.of(
            new double[] {0, 9_000, 9_400, 9_700, 10_050, 30_000}, new double[] {0.004, -0.012, 0.009, -0.015, 0.002});

    private static Application constant(double reactionS, double delayS, double buildUpS, double retardationMps2) {
        return new Application(
                Application.Kind.SERVICE,
                reactionS,
                delayS,
                buildUpS,
                ConstantRetardation.of(retardationMps2, FREE.inertiaKg()));
    }

    private static Application vacuum(Application.Kind kind) {
        ContinuousBrake brake = new ContinuousBrake(
                ContinuousBrake.Means.VACUUM,
                ContinuousBrake.Timing.PASSENGER,
                200,
                CastIronBlocks.dry(0.7 * 300_000 * Units.GRAVITY_MPS2, 300_000));
        return kind == Application.Kind.SERVICE ? ServiceBrakes.service(brake, 4) : ServiceBrakes.emergency(brake, 4);
    }

    private static Braking.Slows slows(Braking braking) {
        assertThat(braking).isInstanceOf(Braking.Slows.class);
        return (Braking.Slows) braking;
    }

    @Test
    void agreesWithConstantDeceleration() {
        double v = 25;
        Braking.Slows stop = slows(StoppingDistance.forward(constant(0, 0, 0, 0.5), FREE, LEVEL, 5_000, v, 0));
        assertThat(stop.distanceM()).isCloseTo(v * v / 2 / 0.5, within(1e-6));
        assertThat(stop.timeS()).isCloseTo(v / 0.5, within(1e-6));
        assertThat(stop.fullM()).isCloseTo(stop.distanceM(), within(1e-9));
    }

    @Test
    void agreesWithConstantSlope() {
        double v = 22;
        double gradient = -0.01;
        double a = 0.5 + Units.GRAVITY_MPS2 * Units.sineOfGradient(gradient);
        GradientProfile fall = GradientProfile.even(30_000, gradient);
        Braking.Slows slow = slows(StoppingDistance.forward(constant(0, 0, 0, 0.5), FREE, fall, 5_000, v, 10));
        assertThat(slow.distanceM()).isCloseTo((v * v - 100) / 2 / a, within(1e-6));
    }

    @Test
    void agreesWithLinearBuildUp() {
        double v = 26.822;
        double a = 0.64761;
        double rise = 4;
        double slower = v - a * rise / 2;
        Braking.Slows stop = slows(StoppingDistance.forward(constant(3, 1.5, rise, a), FREE, LEVEL, 5_000, v, 0));
        assertThat(stop.reactionM()).isCloseTo(3 * v, within(1e-9));
        assertThat(stop.buildUpM()).isCloseTo(1.5 * v + v * rise - a * rise * rise / 6, within(1e-6));
        assertThat(stop.fullM()).isCloseTo(slower * slower / 2 / a, within(1e-6));
    }

    @Test
    void agreesWithASlowerMethodOnChangingGradients() {
        Application application = vacuum(Application.Kind.SERVICE);
        Braking.Slows stop = slows(StoppingDistance.forward(application, TRAIN, ROLLING, 9_100, 25, 5));
        double[] euler = EulerStop.run(application, TRAIN, ROLLING, new double[] {9_100, 25, 5});
        assertThat(stop.distanceM()).isCloseTo(euler[0], within(0.5));
        assertThat(stop.timeS()).isCloseTo(euler[1], within(0.05));
    }

    @Test
    void slowingThenStoppingIsStopping() {
        Application atOnce = constant(0, 0, 0, 0.6);
        double whole = slows(StoppingDistance.forward(atOnce, TRAIN, ROLLING, 9_100, 25, 0))
                .distanceM();
        double first = slows(StoppingDistance.forward(atOnce, TRAIN, ROLLING, 9_100, 25, 11))
                .distanceM();
        double rest = slows(StoppingDistance.forward(atOnce, TRAIN, ROLLING, 9_100 + first, 11, 0))
                .distanceM();
        assertThat(first + rest).isCloseTo(whole, within(1e-3));
    }

    @Test
    void findsWhereBrakingMustBegin() {
        Application application = vacuum(Application.Kind.SERVICE);
        double atM = 10_200;
        double onM = StoppingDistance.brakeOnM(application, TRAIN, ROLLING, atM, 25, 0);
        double stopsM = onM
                + slows(StoppingDistance.forward(application, TRAIN, ROLLING, onM, 25, 0))
                        .distanceM();
        assertThat(stopsM).isBetween(atM - 0.05, atM);
    }

    @Test
    void findsNoPlaceBeforeTheStartOfTheRoad() {
        Application application = vacuum(Application.Kind.SERVICE);
        assertThat(StoppingDistance.brakeOnM(application, TRAIN, LEVEL, 300, 25, 0))
                .isNaN();
    }

    @Test
    void findsAnEarlierPlaceWhereTheFallCannotBeHeld() {
        Application weak = constant(0, 0, 0, 0.2);
        GradientProfile intoFall = GradientProfile.of(new double[] {0, 8_000, 12_000}, new double[] {0, -0.025});
        double onM = StoppingDistance.brakeOnM(weak, FREE, intoFall, 8_300, 15, 0);
        assertThat(onM).isBetween(6_000.0, 7_700.0);
        assertThat(StoppingDistance.forward(weak, FREE, intoFall, 8_250, 15, 0))
                .isInstanceOf(Braking.DoesNotSlow.class);
    }

    @Test
    void saysThatAFallIsNotHeld() {
        GradientProfile fall = GradientProfile.even(30_000, -0.03);
        Braking braking = StoppingDistance.forward(constant(4, 1, 4, 0.2), FREE, fall, 1_000, 15, 0);
        assertThat(braking).isInstanceOfSatisfying(Braking.DoesNotSlow.class, never -> {
            assertThat(never.speedMps()).isGreaterThan(15);
            assertThat(never.positionM()).isGreaterThan(1_000);
        });
        assertThat(StoppingDistance.brakeOnM(constant(4, 1, 4, 0.2), FREE, fall, 20_000, 15, 0))
                .isNaN();
    }

    @Test
    void needsNoDistanceWhenSlowEnough() {
        assertThat(StoppingDistance.forward(constant(4, 1, 4, 0.5), FREE, LEVEL, 1_000, 10, 12))
                .isEqualTo(new Braking.Slows(0, 0, 0, 0, 0));
        assertThat(StoppingDistance.brakeOnM(constant(4, 1, 4, 0.5), FREE, LEVEL, 1_000, 10, 12))
                .isEqualTo(1_000);
    }

    @Test
    void growsWithSpeedFallAndReaction() {
        Application service = vacuum(Application.Kind.SERVICE);
        double before = 0;
        for (double v = 5; v <= 40; v += 2.5) {
            double distance = slows(StoppingDistance.forward(service, TRAIN, LEVEL, 9_000, v, 0))
                    .distanceM();
            assertThat(distance).isGreaterThan(before);
            before = distance;
        }
        GradientProfile fall = GradientProfile.even(30_000, -0.01);
        assertThat(slows(StoppingDistance.forward(service, TRAIN, fall, 9_000, 25, 0))
                        .distanceM())
                .isGreaterThan(slows(StoppingDistance.forward(service, TRAIN, LEVEL, 9_000, 25, 0))
                        .distanceM());
    }

    /** Gravity takes a fixed share, so a fall costs the weaker application more. */
    @Test
    void serviceSuffersMoreFromAFallThanEmergency() {
        GradientProfile fall = GradientProfile.even(30_000, -0.01);
        assertThat(ratio(fall)).isGreaterThan(ratio(LEVEL)).isGreaterThan(1);
    }

    private static double ratio(GradientProfile profile) {
        return slows(StoppingDistance.forward(vacuum(Application.Kind.SERVICE), TRAIN, profile, 9_000, 25, 0))
                        .distanceM()
                / slows(StoppingDistance.forward(vacuum(Application.Kind.EMERGENCY), TRAIN, profile, 9_000, 25, 0))
                        .distanceM();
    }

    @Test
    void repeatsToTheLastBit() {
        Application service = vacuum(Application.Kind.SERVICE);
        assertThat(StoppingDistance.forward(service, TRAIN, ROLLING, 9_100, 25, 0))
                .isEqualTo(StoppingDistance.forward(service, TRAIN, ROLLING, 9_100, 25, 0));
    }

    @Test
    void refusesSpeedsOutOfRange() {
        Application service = vacuum(Application.Kind.SERVICE);
        assertThatThrownBy(() -> StoppingDistance.forward(service, TRAIN, LEVEL, 0, Double.NaN, 0))
                .hasMessageContaining("fromMps must be from 0");
        assertThatThrownBy(() -> StoppingDistance.forward(service, TRAIN, LEVEL, 0, 20, -1))
                .hasMessageContaining("toMps must be from 0");
    }
}
