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

    /** A worked case of holding: 300 t, 1 in 40, 16 kN each (computed there with a factor of 1.25: 6); without it 73.55/16 gives 5. */
    @Test
    void pinnedBrakesMakeUpWhatTheWorkingBrakeLacks() {
        double fall = 1.0 / 40;
        assertThat(LongFall.drivingN(FREE, fall, 2) / 1_000).isCloseTo(73.53, withinPercentage(0.05));
        assertThat(LongFall.pinned(FREE, fall, 2, 0, 16_000)).isEqualTo(5);
        assertThat(LongFall.pinned(FREE, fall, 2, 30_000, 16_000)).isEqualTo(3);
        assertThat(LongFall.pinned(FREE, fall, 2, 80_000, 16_000)).isZero();
    }

    /**
     * 300 t, 6 % turning: 318 t of inertia; 1 in 50 drives with 58.8 kN. From 12 m/s to 10: 10.8 s off, 10.8 s on with twice the force,
     * 238 m each time, so 16 times in 4 km. Of 0.6 used 10.8/40 comes back: 1, 0.67, 0.34, then always 0.27.
     */
    @Test
    void brakeLetGoAndAppliedAgainIsUsedUpOnALongFall() {
        double drivingN = LongFall.drivingN(FREE, 0.02, 11);
        BrakeForce twice = new ConstantRetardation(2 * drivingN);
        LongFall.Speeds speeds = new LongFall.Speeds(10, 12);
        LongFall.Cycling long4km =
                LongFall.cycling(FREE, 0.02, 4_000, twice, 0.6, speeds, 40).orElseThrow();
        assertThat(long4km.offS()).isCloseTo(2 * 318_000 / drivingN, withinPercentage(1e-6));
        assertThat(long4km.onS()).isCloseTo(long4km.offS(), withinPercentage(1e-6));
        assertThat(long4km.applications()).isEqualTo(16);
        assertThat(long4km.shareLeft()).isCloseTo(long4km.offS() / 40, withinPercentage(1e-6));
        LongFall.Cycling second =
                LongFall.cycling(FREE, 0.02, 500, twice, 0.6, speeds, 40).orElseThrow();
        assertThat(second.applications()).isEqualTo(2);
        assertThat(second.shareLeft()).isCloseTo(0.4 + second.offS() / 40, withinPercentage(1e-6));
        assertThat(LongFall.cycling(FREE, 0.02, 4_000, twice, 0.6, speeds, 10)
                        .orElseThrow()
                        .shareLeft())
                .isEqualTo(1);
        assertThat(LongFall.cycling(FREE, 0.02, 4_000, new ConstantRetardation(drivingN), 0.6, speeds, 40))
                .isEmpty();
        assertThat(LongFall.cycling(REAL, 0.001, 4_000, twice, 0.6, speeds, 40)).isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new LongFall.Speeds(0, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new LongFall.Speeds(3, 2));
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
