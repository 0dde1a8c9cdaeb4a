package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipChanceTests {

    private static final double WEIGHT_N = 600_000;

    private static double chance(double share, double peak, RailState rail) {
        return SlipChance.of(new SlipChance.Demand(share * WEIGHT_N, peak, WEIGHT_N), rail, 0);
    }

    /** Values of the normal distribution as in any table (from memory): 0.5, 0.841345, 0.977250, 0.998650. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.841345", "2, 0.977250", "3, 0.998650", "-1, 0.158655", "-2, 0.022750"})
    void normalDistribution(double deviations, double expected) {
        assertThat(SlipChance.normal(deviations)).isCloseTo(expected, within(2e-6));
    }

    @Test
    void aPeakAtTheMeanOfTheRailSlipsEveryOtherTime() {
        assertThat(chance(0.25, 1.2, RailState.DRY)).isCloseTo(0.5, within(1e-6));
        assertThat(chance(0.16, 1.25, RailState.WET)).isCloseTo(0.5, within(1e-6));
    }

    @Test
    void worseRailsMorePullAndMoreUnevennessSlipMore() {
        assertThat(chance(0.15, 1.2, RailState.WET)).isGreaterThan(chance(0.15, 1.2, RailState.DRY));
        assertThat(chance(0.15, 1.2, RailState.GREASY)).isGreaterThan(chance(0.15, 1.2, RailState.WET));
        assertThat(chance(0.20, 1.2, RailState.DRY)).isGreaterThan(chance(0.15, 1.2, RailState.DRY));
        assertThat(chance(0.20, 1.3, RailState.DRY)).isGreaterThan(chance(0.20, 1.1, RailState.DRY));
        assertThat(SlipChance.of(new SlipChance.Demand(100_000, 1.2, WEIGHT_N), RailState.DRY, 20))
                .isGreaterThan(SlipChance.of(new SlipChance.Demand(100_000, 1.2, WEIGHT_N), RailState.DRY, 2));
    }

    /** The factor of adhesion of four by which engines were built (read in an encyclopedia): hard on a wet rail, mostly held by a dry one. */
    @Test
    void anEngineBuiltToTheFactorOfFourStartsOnADryRail() {
        assertThat(chance(0.25 * 0.85, 1.18, RailState.DRY)).isLessThan(0.25);
        assertThat(chance(0.25, 1.18, RailState.WET)).isGreaterThan(0.5);
    }

    @Test
    void refusesWhatCanNotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SlipChance.Demand(-1, 1.2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new SlipChance.Demand(1, 0.9, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new SlipChance.Demand(1, 1.2, 0));
    }
}
