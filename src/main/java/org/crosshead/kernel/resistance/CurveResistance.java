package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * Curve resistance as this project takes it: {@link Roeckl}, but below 300 m never less than at 300 m, so that a sharper curve never
 * resists less. Never below the published formula. From 60 m; sharper curves are taken as 60 m and so understated.
 */
public final class CurveResistance {

    private CurveResistance() {}

    /**
     * Returns newtons per kilogram of the part of the train that stands on the curve.
     *
     * @param radiusM greater than 0; infinite for straight track, where it is 0
     * @throws IllegalArgumentException if the radius is not above 0, or not a number
     */
    public static double perMassN(double radiusM) {
        Check.within("radiusM", radiusM, Double.MIN_NORMAL, Double.POSITIVE_INFINITY);
        double publishedN = Roeckl.perMassN(Math.max(Roeckl.RADIUS_LEAST_M, radiusM));
        return radiusM < Roeckl.CHANGE_M ? Math.max(publishedN, Roeckl.perMassN(Roeckl.CHANGE_M)) : publishedN;
    }
}
