package org.crosshead.kernel.braking;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * What the gauge says of an automatic brake, and the share of its full force that belongs to it.
 *
 * <p>Vacuum: the force goes with the difference between the chambers, which keep the vacuum they were released at, and the train pipe.
 * Chambers released at 25 inches behind an engine that makes 21 keep 4 inches on until they are released by hand (RCTS in
 * docs/sources.md: 21 and 25 inches). Air: braking begins 30 kPa below the released pressure and is full at 150 kPa below
 * ([SUBSET-026-3] A.3.10, read).
 */
public final class BrakeReading {

    /** Reduction of the train pipe at which an air brake begins to hold. */
    public static final double AIR_BEGINS_PA = 30_000;

    /** Reduction of the train pipe at which an air brake holds fully. */
    public static final double AIR_FULL_PA = 150_000;

    private BrakeReading() {}

    /**
     * Returns the share of the force that a brake made for one vacuum has at a reading of the train pipe; more than 1 where the
     * chambers hold more than that vacuum.
     *
     * @param madeForPa vacuum for which the full force is counted, released
     * @param chamberPa vacuum kept in the chambers
     * @param pipePa vacuum in the train pipe
     */
    public static double vacuumShare(double madeForPa, double chamberPa, double pipePa) {
        Check.positive("madeForPa", madeForPa);
        Check.notNegative("chamberPa", chamberPa);
        Check.notNegative("pipePa", pipePa);
        return Math.max(0, chamberPa - pipePa) / madeForPa;
    }

    /** Returns the vacuum in the train pipe that leaves a share of the force, chambers at the vacuum they were made for. */
    public static double vacuumPa(double madeForPa, double share) {
        return Check.positive("madeForPa", madeForPa) * (1 - Check.within("share", share, 0, 1));
    }

    /** Returns the share of the force of an air brake at a reduction of its train pipe. */
    public static double airShare(double reductionPa) {
        Check.notNegative("reductionPa", reductionPa);
        return Math.max(0, Math.min(1, (reductionPa - AIR_BEGINS_PA) / (AIR_FULL_PA - AIR_BEGINS_PA)));
    }

    /** Returns the reduction of the train pipe that gives a share of the force, more than none. */
    public static double airReductionPa(double share) {
        return AIR_BEGINS_PA + Check.within("share", share, 0, 1) * (AIR_FULL_PA - AIR_BEGINS_PA);
    }

    /**
     * Returns the force of a vacuum cylinder.
     *
     * @param diameterM of its piston
     * @param differencePa of the pressures on both sides
     */
    public static double cylinderN(double diameterM, double differencePa) {
        Check.positive("diameterM", diameterM);
        return Check.notNegative("differencePa", differencePa) * Math.PI / 4 * diameterM * diameterM;
    }

    /** Returns 21 inches of mercury, at which most railways release (RCTS). */
    public static double twentyOneInchesPa() {
        return Units.paFromInHg(21);
    }
}
