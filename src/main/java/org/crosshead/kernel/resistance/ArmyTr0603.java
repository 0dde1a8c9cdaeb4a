package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The rules of a US Army railway course: 20 pounds per short ton of locomotive lost between rim and drawbar, 0.8 pounds per short ton
 * and degree of curve.
 *
 * <p>Source: [TR0603] par. 2.7 to 2.11 (read). No range of speed is printed: they are for the low speeds of a ruling grade.
 */
public final class ArmyTr0603 {

    private static final double LOCOMOTIVE_LB = 20;
    private static final double CURVE_LB_PER_DEGREE = 0.8;
    private static final double DEGREE_FEET = 5729.578;
    private static final double RADIUS_LEAST_M = 20;

    private ArmyTr0603() {}

    /** Returns newtons per kilogram of locomotive. */
    public static double locomotivePerMassN() {
        return ShortTon.newtonsPerKg(LOCOMOTIVE_LB);
    }

    /** Returns newtons per kilogram on a curve; a degree of curve is taken as 5729.578 ft divided by the radius, [WORKED]. */
    public static double curvePerMassN(double radiusM) {
        Check.within("radiusM", radiusM, RADIUS_LEAST_M, Double.POSITIVE_INFINITY);
        return ShortTon.newtonsPerKg(CURVE_LB_PER_DEGREE * DEGREE_FEET / Units.feetFromMetres(radiusM));
    }
}
