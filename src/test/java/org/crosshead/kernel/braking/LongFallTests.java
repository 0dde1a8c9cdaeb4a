package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Heat and pinned brakes on a long fall, by closed forms. */
class LongFallTests {

    private static final TrainBody FREE = new TrainBody(300_000, 0.06, 200, RunningResistance.NONE);
    private static final TrainBody REAL =
            new TrainBody(300_000, 0.06, 200, new RunningResistance(6_000, 100, 8, 20_000));

    /** 300 t on 1 in 50 pull with 58.8 kN; at 10 m/s that is 588 kW, over 40 wheels 14.7 kW each. */
    @Test
    void allTheWorkOfGravityGoesIntoTheWheels() {
        assertThat(LongFall.heatPerWheelW(FREE, 0.02, 10, 40)).isCloseTo(14_707, withinPercentage(0.1));
        assertThat(LongFall.heatPerWheelW(FREE, 0.02, 20, 40)).isCloseTo(2 * 14_707, withinPercentage(0.1));
        assertThat(LongFall.heatPerWheelW(REAL, 0.02, 10, 40)).isLessThan(14_707 - 7_800.0 * 10 / 40 + 1);
        assertThat(LongFall.heatPerWheelW(REAL, 0.001, 10, 40)).isZero();
    }

    /** The bank's case of holding: 300 t, 1 in 40, 16 kN each (computed there with a factor of 1.25: 6); without it 73.55/16 gives 5. */
    @Test
    void pinnedBrakesMakeUpWhatTheWorkingBrakeLacks() {
        double fall = 1.0 / 40;
        assertThat(LongFall.drivingN(FREE, fall, 2) / 1_000).isCloseTo(73.53, withinPercentage(0.05));
        assertThat(LongFall.pinned(FREE, fall, 2, 0, 16_000)).isEqualTo(5);
        assertThat(LongFall.pinned(FREE, fall, 2, 30_000, 16_000)).isEqualTo(3);
        assertThat(LongFall.pinned(FREE, fall, 2, 80_000, 16_000)).isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> LongFall.pinned(FREE, 0.02, 2, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> LongFall.heatPerWheelW(FREE, 0.02, 2, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> LongFall.drivingN(FREE, -0.02, 2));
    }

    /** Mine railways of 1910 (GVBl Bayern 1910 p. 976, read): braked axles of 100 by gradient; their common coefficient is about 0.1. */
    @Test
    void minesRulesFollowFromOneCoefficient() {
        double[][] rows = {
            {100, 10}, {80, 13}, {66, 15}, {57, 18}, {50, 20}, {44, 22}, {40, 25}, {33, 30}, {28, 34}, {25, 39}
        };
        double axleKg = 3_000;
        double eachN = 0.1 * axleKg * Units.GRAVITY_MPS2;
        TrainBody train = new TrainBody(100 * axleKg, 0.06, 300, RunningResistance.NONE);
        for (double[] row : rows) {
            assertThat((double) LongFall.pinned(train, 1 / row[0], 3, 0, eachN))
                    .as("1 in %s", row[0])
                    .isBetween(row[1] - 1, row[1] + 2);
        }
    }
}
