package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Cast-iron blocks on steel tyres: the coefficient of friction is {@code 0.27 (V + 100)/(5 V + 100)}, V in km/h, whatever the force.
 *
 * <p>Source: [BLOCK-FRICTION] (read in a quotation). It lies 16 to 32 per cent below Galton's trials of 1878 from 10 to 50 mph and 23 per
 * cent above them at 60 (from memory, [GALTON]). Used from 0 to 200 km/h, printed for 0 to 100. Wet or hot iron: 0.8 of it (from
 * memory). Friction falling with the time of application
 * is left out, as in the source; on a long fall {@link #LONG_HOLD} is counted. Force of the single block: {@link BlockFriction}.
 *
 * @param blockForceN sum of the forces of all working blocks, full application
 * @param frictionShare 1 for dry cool iron, {@link #WET_OR_HOT} otherwise
 * @param railForceN what the rail holds under the braked wheels
 */
public record CastIronBlocks(double blockForceN, double frictionShare, double railForceN) implements Blocks {

    /** Share of the friction of dry blocks: from memory. */
    public static final double WET_OR_HOT = 0.8;

    /**
     * Share of the friction of dry blocks that is left when they have been held for long: Galton's trials of 1878 after 10 to 20 s, 0.59
     * to 0.72 of the friction here; from memory.
     */
    public static final double LONG_HOLD = 0.65;

    /** The same as a share of the friction of wet or hot blocks, with which brakes are counted otherwise. */
    public static final double HELD_LONG_OF_WET = LONG_HOLD / WET_OR_HOT;

    /** Share of the weight on braked wheels that a brake may use, the lower of 0.15 to 0.2: from memory. */
    public static final double RAIL_SHARE = 0.15;

    static final double SPEED_MAX_MPS = Units.mpsFromKmh(200);

    public CastIronBlocks {
        Check.notNegative("blockForceN", blockForceN);
        Check.within("frictionShare", frictionShare, 0.1, 1);
        Check.notNegative("railForceN", railForceN);
    }

    /** Returns dry blocks on vehicles of this mass, the rail holding {@link #RAIL_SHARE} of their weight. */
    public static CastIronBlocks dry(double blockForceN, double brakedMassKg) {
        return new CastIronBlocks(blockForceN, 1, RAIL_SHARE * brakedMassKg * Units.GRAVITY_MPS2);
    }

    /** Returns the coefficient of friction of dry blocks. */
    public static double friction(double speedMps) {
        Check.within("speedMps", speedMps, 0, SPEED_MAX_MPS);
        double v = Units.kmhFromMps(speedMps);
        return 0.27 * (v + 100) / (5 * v + 100);
    }

    @Override
    public double forceN(double speedMps) {
        return Math.min(railForceN, frictionShare * friction(speedMps) * blockForceN);
    }

    @Override
    public CastIronBlocks times(double multiple) {
        return new CastIronBlocks(blockForceN * Check.notNegative("multiple", multiple), frictionShare, railForceN);
    }

    @Override
    public CastIronBlocks onRail(double multiple) {
        return new CastIronBlocks(blockForceN, frictionShare, railForceN * Check.notNegative("multiple", multiple));
    }

    /** Returns these and other blocks together, each with its own force; the friction is the lower of the two. */
    public CastIronBlocks plus(CastIronBlocks other) {
        return new CastIronBlocks(
                blockForceN + other.blockForceN,
                Math.min(frictionShare, other.frictionShare),
                railForceN + other.railForceN);
    }
}
