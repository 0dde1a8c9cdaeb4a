package org.crosshead.kernel.steam;

/**
 * Steam through an opening, choked where the pressures are far enough apart.
 *
 * <p>Choked: Napier's rule, 1/70 pound a second for each square inch and pound of absolute pressure (key BW in docs/sources.md), as
 * printed for dry saturated steam, brought to steam of other density by the square root of pressure over volume. Below that the
 * quarter of an ellipse between the critical ratio and 1, as is common for such flow.
 */
public final class Orifice {

    /** Ratio of pressures at and below which the flow is choked: dry saturated steam, 0.577 by its exponent of 1.135. */
    static final double CRITICAL = 0.577;

    /**
     * Napier's rule as a share of area times the root of pressure over volume: at 1.5 MPa, 1.4573e-3 s/m times the root of
     * 1.5e6 Pa times 0.1317 m3/kg.
     */
    static final double CHOKED = 0.648;

    private Orifice() {}

    /**
     * Returns the flow for each square metre, kg/(m2 s), from a higher to a lower absolute pressure; 0 where it is not higher.
     *
     * @param volumeM3PerKg of the steam before the opening
     */
    public static double flux(double fromPa, double volumeM3PerKg, double toPa) {
        double ratio = toPa / fromPa;
        if (ratio >= 1) {
            return 0;
        }
        double choked = CHOKED * Math.sqrt(fromPa / volumeM3PerKg);
        if (ratio <= CRITICAL) {
            return choked;
        }
        double share = (ratio - CRITICAL) / (1 - CRITICAL);
        return choked * Math.sqrt(1 - share * share);
    }
}
