package org.crosshead.kernel.traction;

import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.units.Check;

/**
 * Nominal tractive effort of a simple-expansion engine: {@code k p d^2 s n/(2 D)}.
 *
 * <p>Source: the form by which makers stated it, [EFFORTS], which it repeats to 0.05 per cent with k 0.85. It is the
 * rim force at creeping speed in full gear with the boiler at its pressure; compounds need another rule.
 */
public final class TractiveEffort {

    /** Share of boiler pressure that the cylinders get in full gear, as customarily stated. */
    public static final double CUSTOMARY_SHARE = 0.85;

    private TractiveEffort() {}

    /**
     * Returns the force at the rim.
     *
     * @param pressurePa above the atmosphere
     * @param share of the pressure acting in the mean, above 0 to 1
     */
    public static double ofN(Cylinders cylinders, double pressurePa, double share) {
        Check.notNegative("pressurePa", pressurePa);
        Check.within("share", share, Double.MIN_NORMAL, 1);
        return share * pressurePa * cylinders.forcePerPressureM2();
    }
}
