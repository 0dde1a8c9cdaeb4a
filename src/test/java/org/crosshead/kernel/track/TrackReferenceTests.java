package org.crosshead.kernel.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks gradients averaged over a length against worked examples. */
class TrackReferenceTests {

    /** Examples take rise over run, the kernel the sine: at 20 in 1000 they differ by 4 parts in a million of the length. */
    private static final double TOLERANCE = 5e-6;

    private static final GradientProfile EDGE =
            GradientProfile.of(new double[] {0, 1_000, 2_000}, new double[] {0, 0.010});

    /** [WORKED] (computed): a train of 200 m, its head so far past the foot of 10 in 1000. */
    @ParameterizedTest
    @CsvSource({"0, 0", "50, 2.5", "100, 5", "200, 10"})
    void gradientUnderATrain(double pastM, double perMille) {
        assertThat(EDGE.meanGradient(1_000 + pastM, 200)).isCloseTo(perMille / 1000, within(TOLERANCE));
    }
}
