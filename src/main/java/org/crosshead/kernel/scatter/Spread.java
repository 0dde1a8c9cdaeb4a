package org.crosshead.kernel.scatter;

import org.crosshead.kernel.units.Check;

/**
 * How much what is not known beforehand differs from day to day: standard deviations, the first four as shares of the value.
 *
 * @param coalHeat of the coal
 * @param adhesion of the rail
 * @param resistance of the whole train, formula and day together
 * @param load hauled mass
 * @param windMps of the wind along the train
 * @param actionS by which the driver sets a handle early or late
 * @param pressurePa of reading the pressure gauge
 * @param glassShare of reading the glass, as a share of the glass
 */
public record Spread(
        double coalHeat,
        double adhesion,
        double resistance,
        double load,
        double windMps,
        double actionS,
        double pressurePa,
        double glassShare) {

    /** Every day as forecast. */
    public static final Spread NONE = new Spread(0, 0, 0, 0, 0, 0, 0, 0);

    private static final double SHARE_MOST = 0.3;

    public Spread {
        Check.within("coalHeat", coalHeat, 0, SHARE_MOST);
        Check.within("adhesion", adhesion, 0, SHARE_MOST);
        Check.within("resistance", resistance, 0, SHARE_MOST);
        Check.within("load", load, 0, SHARE_MOST);
        Check.within("windMps", windMps, 0, 20);
        Check.within("actionS", actionS, 0, 60);
        Check.within("pressurePa", pressurePa, 0, 200_000);
        Check.within("glassShare", glassShare, 0, SHARE_MOST);
    }
}
