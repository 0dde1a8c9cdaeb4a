package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Friction of blocks by their force, and how it fades while a brake is held. */
class BlockFrictionReferenceTests {

    private static final double TONNE_N = 9_806.65;

    /** Form of the traction rules after Karwatzki: from memory; values computed from it. */
    @ParameterizedTest
    @CsvSource({"2, 0, 0.3046", "2, 20, 0.1828", "2, 60, 0.1218", "2, 100, 0.1015", "5, 60, 0.0864"})
    void ironRubsLessTheHarderItIsPressed(double tonnes, double kmh, double friction) {
        assertThat(BlockFriction.CAST_IRON.coefficient(tonnes * TONNE_N, Units.mpsFromKmh(kmh)))
                .isCloseTo(friction, within(5e-4));
    }

    /** Key KARWATZKI (read), 20 kN. */
    @ParameterizedTest
    @CsvSource({"0, 0.3457", "50, 0.2766", "100, 0.2469"})
    void compositionIsAsPublished(double kmh, double friction) {
        assertThat(BlockFriction.COMPOSITION.coefficient(20_000, Units.mpsFromKmh(kmh)))
                .isCloseTo(friction, within(5e-4));
    }

    /** The same law with the constants of another textbook, in kN: from memory; equal to 2 %. */
    @ParameterizedTest
    @CsvSource({"10, 0", "20, 30", "30, 60", "50, 100"})
    void ironAgreesWithTheOtherSetOfConstants(double kN, double kmh) {
        BlockFriction other = new BlockFriction(0.024, 62_500, 12_500, 100 / 3.6, 20 / 3.6);
        assertThat(BlockFriction.CAST_IRON.coefficient(1_000 * kN, kmh / 3.6))
                .isCloseTo(other.coefficient(1_000 * kN, kmh / 3.6), withinPercentage(2));
    }

    /** Both laws fall alike with speed, so that one share keeps the lower of them at every speed. */
    @ParameterizedTest
    @CsvSource({"14", "30", "45", "60"})
    void lowerOfTheTwoLawsIsKept(double kN) {
        for (double kmh = 0; kmh <= 120; kmh += 20) {
            double v = Units.mpsFromKmh(kmh);
            assertThat(BlockFriction.ironShare(1_000 * kN) * CastIronBlocks.friction(v))
                    .isCloseTo(
                            Math.min(CastIronBlocks.friction(v), BlockFriction.CAST_IRON.coefficient(1_000 * kN, v)),
                            within(1e-9));
            assertThat(BlockFriction.compositionShare(1_000 * kN) * CompositionBlocks.friction(v))
                    .isCloseTo(
                            Math.min(
                                    CompositionBlocks.friction(v),
                                    BlockFriction.COMPOSITION.coefficient(1_000 * kN, v)),
                            within(1e-9));
        }
    }

    /**
     * Galton's trials of 1878 (from memory): friction after the brake had been on for 10 to 20 s, over the friction counted here at that
     * speed. Held long, iron is counted with {@link CastIronBlocks#LONG_HOLD}: each trial lies within 15 % of it.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.099", "27, 0.072", "37, 0.069", "47, 0.070", "60, 0.058"})
    void ironFadesWhileItIsHeld(double mph, double friction) {
        assertThat(friction / CastIronBlocks.friction(Units.mpsFromMph(mph)))
                .isCloseTo(CastIronBlocks.LONG_HOLD, withinPercentage(15));
    }

    @Test
    void figuresThatCannotBeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> BlockFriction.CAST_IRON.coefficient(-1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> BlockFriction.CAST_IRON.coefficient(1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new BlockFriction(0, 1, 1, 1, 1));
    }
}
