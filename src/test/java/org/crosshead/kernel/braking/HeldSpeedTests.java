package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

class HeldSpeedTests {

    private static final double MASS_KG = 400_000;
    private static final TrainBody BODY = new TrainBody(MASS_KG, 0.08, 200, RunningResistance.NONE);

    private static CastIronBlocks blocks(double share) {
        return new CastIronBlocks(share * MASS_KG * Units.GRAVITY_MPS2, 1, MASS_KG * Units.GRAVITY_MPS2);
    }

    /** Closed form: 0.27 p (V+100)/(5V+100) = sin i, so V = 100 (0.27 p - s)/(5 s - 0.27 p). */
    @Test
    void isWhereFrictionAndGravityMeet() {
        double sine = Units.sineOfGradient(1.0 / 50);
        double expectedKmh = 100 * (0.27 * 0.15 - sine) / (5 * sine - 0.27 * 0.15);
        assertThat(Units.kmhFromMps(HeldSpeed.mps(blocks(0.15), BODY, 1.0 / 50, 40)))
                .isCloseTo(expectedKmh, within(1e-6));
    }

    @Test
    void holdsThroughoutOrNotAtAll() {
        assertThat(HeldSpeed.mps(blocks(0.7), BODY, 1.0 / 100, 30)).isEqualTo(30);
        assertThat(HeldSpeed.mps(blocks(0.05), BODY, 1.0 / 50, 30)).isZero();
        assertThat(HeldSpeed.mps(new ConstantRetardation(0), BODY, 0.01, 30)).isZero();
    }

    /** Below it the stop is made, above it the train does not slow: the integration says the same. */
    @Test
    void agreesWithTheStoppingDistance() {
        double held = HeldSpeed.mps(blocks(0.15), BODY, 1.0 / 50, 40);
        GradientProfile fall = GradientProfile.even(60_000, -1.0 / 50);
        Application atOnce = new Application(Application.Kind.SERVICE, 0, 0, 0, blocks(0.15));
        assertThat(StoppingDistance.forward(atOnce, BODY, fall, 500, held - 0.5, 0))
                .isInstanceOf(Braking.Slows.class);
        assertThat(StoppingDistance.forward(atOnce, BODY, fall, 500, held + 0.5, 0))
                .isInstanceOf(Braking.DoesNotSlow.class);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> HeldSpeed.mps(blocks(0.5), BODY, -0.01, 30));
        assertThatIllegalArgumentException().isThrownBy(() -> HeldSpeed.mps(blocks(0.5), BODY, 0.01, -1));
    }
}
