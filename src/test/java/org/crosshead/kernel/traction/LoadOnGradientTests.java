package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.junit.jupiter.api.Test;

/** Checks {@link LoadOnGradient} and {@link TractiveEffort}: inverse, limits and refusals. */
class LoadOnGradientTests {

    private static final LoadOnGradient ENGINE = new LoadOnGradient(100_000, 0.05, 100_000);

    @Test
    void gradientForALoadIsTheInverse() {
        for (double gradient = 0.001; gradient < 0.05; gradient += 0.003) {
            assertThat(ENGINE.gradientFor(ENGINE.loadKg(gradient))).isCloseTo(gradient, within(1e-8));
        }
    }

    @Test
    void loadFallsToNothingOnASteepGradient() {
        assertThat(ENGINE.loadKg(0.2)).isZero();
        assertThat(ENGINE.gradientFor(1e9)).isZero();
    }

    @Test
    void effortGrowsWithPressureAndShare() {
        Cylinders cylinders = new Cylinders(2, 0.5, 0.65, 1.8);
        double fullN = TractiveEffort.ofN(cylinders, 15e5, 0.85);
        assertThat(TractiveEffort.ofN(cylinders, 7.5e5, 0.85)).isCloseTo(fullN / 2, within(1e-6));
        assertThat(TractiveEffort.ofN(cylinders, 15e5, 0.425)).isCloseTo(fullN / 2, within(1e-6));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new LoadOnGradient(0, 0.05, 1)).hasMessageContaining("pullN");
        assertThatThrownBy(() -> ENGINE.loadKg(-0.01)).hasMessageContaining("gradient");
        assertThatThrownBy(() -> TractiveEffort.ofN(new Cylinders(2, 0.5, 0.65, 1.8), 1e5, 1.4))
                .hasMessageContaining("share");
        assertThatThrownBy(() -> TractiveEffort.ofN(new Cylinders(2, 0.5, 0.65, 1.8), Double.NaN, 0.85))
                .hasMessageContaining("pressurePa");
    }
}
