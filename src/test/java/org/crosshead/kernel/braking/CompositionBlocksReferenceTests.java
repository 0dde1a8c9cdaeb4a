package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Friction of composition blocks (BLOCK-FRICTION, read): printed form; values to three figures, computed from it. */
class CompositionBlocksReferenceTests {

    @ParameterizedTest
    @CsvSource({"0, 0.360", "100, 0.257", "50, 0.288", "150, 0.240"})
    void frictionFallsAsPublished(double kmh, double friction) {
        assertThat(CompositionBlocks.friction(Units.mpsFromKmh(kmh))).isCloseTo(friction, within(5e-4));
    }

    /** From the two published forms: composition holds more than iron at every speed, and keeps far more of it when fast. */
    @Test
    void compositionKeepsItsFrictionWhereIronLosesIt() {
        double slow = ratio(10);
        double fast = ratio(100);
        assertThat(slow).isGreaterThan(1);
        assertThat(fast).isGreaterThan(2 * slow / 1.2);
    }

    private static double ratio(double kmh) {
        double mps = Units.mpsFromKmh(kmh);
        return CompositionBlocks.friction(mps) / CastIronBlocks.friction(mps);
    }

    @Test
    void mixedTrainsTakeEachVehicleAsItIs() {
        CastIronBlocks iron = new CastIronBlocks(100_000, 0.8, 12_000);
        CompositionBlocks composition = new CompositionBlocks(50_000, CompositionBlocks.WET, 1e6);
        CombinedBrake mixed = CombinedBrake.of(iron, composition);
        assertThat(mixed.forceN(0)).isEqualTo(12_000 + 0.5 * 0.36 * 50_000, within(1e-9));
        assertThat(mixed.times(0.5).forceN(0)).isEqualTo(0.8 * 0.27 * 50_000 + 0.5 * 0.36 * 25_000, within(1e-6));
        assertThat(mixed.onRail(0.5).forceN(0)).isEqualTo(6_000 + 0.5 * 0.36 * 50_000, within(1e-9));
    }
}
