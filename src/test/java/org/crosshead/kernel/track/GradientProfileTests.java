package org.crosshead.kernel.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GradientProfileTests {

    private static final GradientProfile HILL =
            GradientProfile.of(new double[] {0, 1_000, 3_000, 4_000}, new double[] {0, 0.01, -0.02});

    @Test
    void heightIsLengthTimesSine() {
        double sine = 0.01 / Math.sqrt(1 + 0.01 * 0.01);
        assertThat(HILL.heightM(3_000)).isCloseTo(2_000 * sine, within(1e-9));
        assertThat(HILL.riseM(3_000, 2_000)).isCloseTo(-1_000 * sine, within(1e-9));
    }

    @Test
    void meanOverTrainMixesTheGradientsUnderIt() {
        assertThat(HILL.meanGradient(1_050, 200)).isCloseTo(0.25 * HILL.meanGradient(2_000, 10), within(1e-12));
        assertThat(HILL.meanGradient(-50, 100)).isZero();
        assertThat(HILL.meanGradient(5_000, 10)).isCloseTo(HILL.meanGradient(3_900, 10), within(1e-12));
    }

    @Test
    void meanHeightGrowsByTheMeanGradient() {
        double step = 1e-3;
        for (double headM : new double[] {500, 1_100, 2_500, 3_050, 3_990}) {
            double slope = (HILL.meanHeightM(headM + step, 150) - HILL.meanHeightM(headM - step, 150)) / (2 * step);
            assertThat(slope).isCloseTo(HILL.meanGradient(headM, 150), within(1e-6));
        }
    }

    @Test
    void reversedRunsTheSameRailsTheOtherWay() {
        GradientProfile back = HILL.reversed();
        assertThat(back.gradientAt(500)).isEqualTo(0.02);
        assertThat(back.gradientAt(2_000)).isEqualTo(-0.01);
        assertThat(back.riseM(0, 4_000)).isCloseTo(-HILL.riseM(0, 4_000), within(1e-9));
    }

    @Test
    void refusesBoundariesThatDoNotRiseAndImpossibleGradients() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradientProfile.of(new double[] {0, 5, 5}, new double[] {0, 0}))
                .withMessageContaining("rise");
        assertThatIllegalArgumentException().isThrownBy(() -> GradientProfile.even(100, 0.5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradientProfile.of(new double[] {0, 5}, new double[] {0, 0}));
        assertThatIllegalArgumentException().isThrownBy(() -> GradientProfile.of(new double[] {0}, new double[] {}));
    }
}
