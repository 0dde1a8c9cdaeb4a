package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Steam that condenses on the walls as it comes in, as a share of what the diagram shows: more at short cutoffs, where the walls have
 * long to cool, less at speed, little with superheat.
 *
 * <p>An estimate of this project, within what is told from memory: 0.30 to 0.40 at short cutoffs and 0.15 to 0.20 at long ones for
 * saturated steam, 0 to 0.10 for superheated, to which leakage adds; so that the water rate at 25 to 35 per cent cutoff lies within 15 per cent of 24 to 27
 * lb for an indicated horse-power hour, 16 to 20 superheated (from memory).
 */
final class MissingQuantity {

    private static final double AT_NO_CUTOFF = 0.42;
    private static final double FALL = 0.36;
    private static final double USUAL_FT_PER_MIN = 500;
    private static final double SOFTENED_FT_PER_MIN = 150;
    private static final double DRY_KELVINS = 120;
    private static final double LEAST = 0.12;

    private MissingQuantity() {}

    /** Returns the share, from 0.12 to about 0.5. */
    static double share(double cutoff, double pistonSpeedMps, double superheatK) {
        Check.within("cutoff", cutoff, 0, 1);
        double ftPerMin = Units.feetPerMinuteFromMps(pistonSpeedMps);
        double speed =
                Math.sqrt(Math.sqrt((USUAL_FT_PER_MIN + SOFTENED_FT_PER_MIN) / (ftPerMin + SOFTENED_FT_PER_MIN)));
        double wet = (AT_NO_CUTOFF - FALL * cutoff) * speed;
        return Math.max(LEAST, wet * (1 - superheatK / DRY_KELVINS));
    }
}
