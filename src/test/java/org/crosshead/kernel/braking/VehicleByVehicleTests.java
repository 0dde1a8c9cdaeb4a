package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.braking.ContinuousBrake.Means;
import org.crosshead.kernel.braking.ContinuousBrake.Timing;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One ramp for the whole train against every vehicle by itself: half a metre and a twentieth of a second. */
class VehicleByVehicleTests {

    @ParameterizedTest
    @CsvSource({
        "8, 160, 0, 60",
        "12, 250, 0, 60",
        "12, 250, -10, 50",
        "5, 100, 5, 40",
        "10, 200, -5, 30",
        "40, 280, 0, 25",
        "40, 280, -10, 25",
        "12, 250, 0, 15"
    })
    void oneRampStopsAsTheVehiclesDo(int vehicles, double lengthM, double perMille, double mph) {
        boolean goods = vehicles > 20;
        double massKg = vehicles * (goods ? 10_000 : 34_000) + 130_000;
        TrainBody body = new TrainBody(
                massKg, 0.08, lengthM, new RunningResistance(0.01 * massKg, 0, 0.00002 * massKg, 0.05 * massKg));
        CastIronBlocks blocks = CastIronBlocks.dry(0.6 * massKg * Units.GRAVITY_MPS2, massKg);
        ContinuousBrake brake =
                new ContinuousBrake(Means.VACUUM, goods ? Timing.GOODS : Timing.PASSENGER, lengthM, blocks);
        GradientProfile profile = GradientProfile.even(30_000, perMille / 1_000);
        Braking.Slows one = (Braking.Slows) StoppingDistance.forward(
                ServiceBrakes.emergency(brake, 4), body, profile, 5_000, Units.mpsFromMph(mph), 0);
        double[] single = VehicleByVehicle.run(
                blocks,
                body,
                profile,
                vehicles * 8,
                4,
                lengthM / ServiceBrakes.VACUUM_WAVE_MPS,
                goods ? 18 : 4,
                new double[] {5_000, Units.mpsFromMph(mph)});

        assertThat(one.distanceM()).isCloseTo(single[0], within(0.5));
        assertThat(one.timeS()).isCloseTo(single[1], within(0.05));
    }
}
