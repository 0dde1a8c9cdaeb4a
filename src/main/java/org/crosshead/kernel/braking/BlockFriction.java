package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Friction of a brake block by its own force F and the speed: {@code k1 (F + k2)/(F + k3) (v + k4)/(v + k5)}, after Karwatzki. Blocks
 * pressed harder rub less for each newton.
 *
 * @param k1 limit for great force and speed
 * @param k2N above 0
 * @param k3N above 0
 * @param k4Mps above 0
 * @param k5Mps above 0
 */
public record BlockFriction(double k1, double k2N, double k3N, double k4Mps, double k5Mps) {

    private static final double TONNE_N = 1_000 * Units.GRAVITY_MPS2;

    /** Cast iron, {@code 0.6 (16 K + 100)/(80 K + 100) (V + 100)/(5 V + 100)}, K in tonnes of force, V in km/h: from memory. */
    public static final BlockFriction CAST_IRON =
            new BlockFriction(0.024, 6.25 * TONNE_N, 1.25 * TONNE_N, Units.mpsFromKmh(100), Units.mpsFromKmh(20));

    /** Composition: key KARWATZKI in docs/sources.md, read. */
    public static final BlockFriction COMPOSITION =
            new BlockFriction(0.055, 200_000, 50_000, Units.mpsFromKmh(150), Units.mpsFromKmh(75));

    public BlockFriction {
        Check.positive("k1", k1);
        Check.positive("k2N", k2N);
        Check.positive("k3N", k3N);
        Check.positive("k4Mps", k4Mps);
        Check.positive("k5Mps", k5Mps);
    }

    /** Returns the coefficient of a dry block. */
    public double coefficient(double forceN, double speedMps) {
        Check.notNegative("forceN", forceN);
        Check.notNegative("speedMps", speedMps);
        return k1 * (forceN + k2N) / (forceN + k3N) * (speedMps + k4Mps) / (speedMps + k5Mps);
    }

    /**
     * Returns as which share of its force a cast-iron block counts where the friction is taken whatever the force, so that the lower of
     * the two laws is kept: at most 1. Both fall alike with speed.
     */
    public static double ironShare(double forceN) {
        return Math.min(1, CAST_IRON.coefficient(forceN, 0) / CastIronBlocks.friction(0));
    }

    /** Returns the same for a composition block. */
    public static double compositionShare(double forceN) {
        return Math.min(1, COMPOSITION.coefficient(forceN, 0) / CompositionBlocks.friction(0));
    }
}
