package org.crosshead.kernel.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.ResistanceFormulas;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Checks {@link Holding} and {@link Restart}: signs, limits and refusals. */
class StandingTests {

    private static final double STRAIGHT_M = Double.POSITIVE_INFINITY;
    private static final TrainBody TRAIN = new TrainBody(
            300_000,
            0.08,
            200,
            ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, 30_000, 4).times(10));

    @Test
    void holdsAlikeUphillAndDown() {
        assertThat(Holding.balance(300_000, -0.02, 60_000, 1.25))
                .isEqualTo(Holding.balance(300_000, 0.02, 60_000, 1.25));
    }

    @Test
    void holdsWhenTheBrakeEqualsTheNeed() {
        double neededN = Holding.balance(300_000, 0.02, 0, Holding.SAFETY).neededN();
        assertThat(Holding.balance(300_000, 0.02, neededN, Holding.SAFETY).holds())
                .isTrue();
        Holding.Balance less = Holding.balance(300_000, 0.02, neededN - 1, Holding.SAFETY);
        assertThat(less.holds()).isFalse();
        assertThat(less.spareN()).isCloseTo(-1, within(1e-6));
    }

    @Test
    void needsNoBrakeOnTheLevel() {
        assertThat(Holding.handBrakes(300_000, 0, 16_000, 1.25)).isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> Holding.balance(0, 0.01, 0, 1.25)).hasMessageContaining("massKg");
        assertThatThrownBy(() -> Holding.balance(1, 0.3, 0, 1.25)).hasMessageContaining("gradient");
        assertThatThrownBy(() -> Holding.handBrakes(300_000, 0.01, 0, 1.25)).hasMessageContaining("eachN");
        assertThatThrownBy(() -> Holding.handBrakes(300_000, 0.01, 1e-3, 1.25)).hasMessageContaining("eachN");
        assertThatThrownBy(() -> Restart.balance(TRAIN, Double.NaN, STRAIGHT_M, 0))
                .hasMessageContaining("gradient");
    }

    @Test
    void addsStartingGravityAndCurve() {
        Restart.Balance balance = Restart.balance(TRAIN, 0.01, 400, 100_000);
        double weightN = 300_000 * Units.GRAVITY_MPS2;
        assertThat(balance.startingN()).isCloseTo(0.008 * weightN, within(1e-6));
        assertThat(balance.gravityN()).isCloseTo(weightN * Units.sineOfGradient(0.01), within(1e-6));
        assertThat(balance.curveN()).isCloseTo(300_000 * CurveResistance.perMassN(400), within(1e-6));
        assertThat(balance.spareN())
                .isCloseTo(100_000 - balance.startingN() - balance.gravityN() - balance.curveN(), within(1e-6));
    }

    @Test
    void startsOnlyWithMorePullThanNeed() {
        double neededN = Restart.balance(TRAIN, 0.01, STRAIGHT_M, 0).neededN();
        assertThat(Restart.balance(TRAIN, 0.01, STRAIGHT_M, neededN).starts()).isFalse();
        assertThat(Restart.balance(TRAIN, 0.01, STRAIGHT_M, neededN + 1).starts())
                .isTrue();
    }

    @Test
    void gravityHelpsOnAFall() {
        assertThat(Restart.balance(TRAIN, -0.02, STRAIGHT_M, 0).starts()).isTrue();
    }
}
