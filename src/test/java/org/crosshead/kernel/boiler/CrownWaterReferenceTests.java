package org.crosshead.kernel.boiler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrownWaterReferenceTests {

    private static final double HALF_M = 0.125;
    private static final double RANGE_M = 0.2;

    private static CrownWater boiler(double distanceM) {
        return new CrownWater(HALF_M, RANGE_M, 4_500, 5_500, distanceM);
    }

    /** Shift of the water on a slope, x sin atan(1/n): 54.0, 80.0 and 150 mm (geometry, WATER-SLOPE in docs/sources.md). */
    @ParameterizedTest
    @CsvSource({"2.7, 50, 54.0", "4.0, 50, 80.0", "6.0, 40, 150.0"})
    void leansByTheSlope(double distanceM, double oneIn, double millimetres) {
        double level = boiler(distanceM).depthM(5_000, 0, 0, true);
        assertThat(1_000 * (level - boiler(distanceM).depthM(5_000, -1 / oneIn, 0, true)))
                .isCloseTo(millimetres, within(0.1));
        assertThat(1_000 * (boiler(distanceM).depthM(5_000, 1 / oneIn, 0, true) - level))
                .isCloseTo(millimetres, within(0.1));
        assertThat(1_000 * (level - boiler(distanceM).depthM(5_000, 1 / oneIn, 0, false)))
                .isCloseTo(millimetres, within(0.1));
    }

    /** A tank of water that slows leans by its retardation over that of gravity: mechanics. */
    @Test
    void leansForwardWhenBraking() {
        double steady = boiler(3).depthM(5_000, 0.01, 0, true);
        assertThat(boiler(3).depthM(5_000, 0.01, -0.980_665, true)).isCloseTo(steady - 0.3, within(1e-12));
        assertThat(boiler(3).depthM(5_000, 0.01, -0.980_665, false))
                .isCloseTo(boiler(3).depthM(5_000, 0.01, 0, false) + 0.3, within(1e-12));
    }

    @Test
    void fallsAndRisesWithTheWater() {
        assertThat(boiler(3).levelM(5_000)).isEqualTo(HALF_M);
        assertThat(boiler(3).levelM(5_500)).isCloseTo(HALF_M + RANGE_M / 2, within(1e-12));
        assertThat(boiler(3).levelM(4_500)).isCloseTo(HALF_M - RANGE_M / 2, within(1e-12));
        assertThat(boiler(3).levelM(4_000)).isNegative();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new CrownWater(0.1, 0.2, 5_000, 5_000, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new CrownWater(0, 0.2, 4_000, 5_000, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new CrownWater(0.1, 0, 4_000, 5_000, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new CrownWater(0.1, 0.2, 4_000, 5_000, -1));
    }
}
