package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Composition blocks on steel tyres: the coefficient of friction is {@code 0.36 (V + 150)/(2V + 150)}, V in km/h, whatever the force. It
 * falls with speed less than cast iron's.
 *
 * <p>Source: [BLOCK-FRICTION] (read in a quotation). Used from 0 to 200 km/h. Wet they lose more than iron: {@link #WET} of it (from
 * memory). Falling with the time of application is left out, as in the source.
 *
 * @param blockForceN sum of the forces of all working blocks, full application
 * @param frictionShare 1 for dry cool blocks, {@link #WET} otherwise
 * @param railForceN what the rail holds under the braked wheels
 */
public record CompositionBlocks(double blockForceN, double frictionShare, double railForceN) implements Blocks {

    /** Share of the friction of dry blocks: from memory, 0.5 to 0.7. */
    public static final double WET = 0.5;

    public CompositionBlocks {
        Check.notNegative("blockForceN", blockForceN);
        Check.within("frictionShare", frictionShare, 0.1, 1);
        Check.notNegative("railForceN", railForceN);
    }

    /** Returns the coefficient of friction of dry blocks. */
    public static double friction(double speedMps) {
        Check.within("speedMps", speedMps, 0, CastIronBlocks.SPEED_MAX_MPS);
        double v = Units.kmhFromMps(speedMps);
        return 0.36 * (v + 150) / (2 * v + 150);
    }

    @Override
    public double forceN(double speedMps) {
        return Math.min(railForceN, frictionShare * friction(speedMps) * blockForceN);
    }

    @Override
    public CompositionBlocks times(double multiple) {
        return new CompositionBlocks(blockForceN * Check.notNegative("multiple", multiple), frictionShare, railForceN);
    }

    @Override
    public CompositionBlocks onRail(double multiple) {
        return new CompositionBlocks(blockForceN, frictionShare, railForceN * Check.notNegative("multiple", multiple));
    }
}
