package org.crosshead.kernel.traction;

/**
 * Mean effective pressure in the cylinders at low speed, as a share of chest pressure, over cutoff.
 *
 * <p>Short-travel valves: D. K. Clark's line {@code 13.5 sqrt(cutoff in per cent) - 28} per cent, which reproduces his printed
 * table (key VOS in docs/sources.md) within 1.5 psi; the line itself is from memory. Long-travel valves, which open wider for
 * the same cutoff, lie between Clark and the diagram without losses: six tenths of the way, an estimate of this project. Neither
 * is taken above 0.85, the share of the tractive effort formula.
 */
final class MeanPressure {

    /** Share of boiler pressure in the tractive effort formula (key EFFORTS in docs/sources.md). */
    static final double SHARE_MAX = TractiveEffort.CUSTOMARY_SHARE;

    /** Clearance of the diagram without losses, as a share of the stroke: 6 to 10 per cent is common. */
    static final double CLEARANCE = 0.08;

    private static final double CLARK_SLOPE = 13.5;
    private static final double CLARK_OFFSET = 28;
    private static final double PER_CENT = 100;
    private static final double LONG_TRAVEL_SHARE = 0.6;
    private static final double ATMOSPHERE_SHARE = 0.08;

    private MeanPressure() {}

    /** Returns the share for a family of valve gear. */
    static double share(ValveFamily family, double cutoff) {
        double clark = clark(cutoff);
        double share = family == ValveFamily.SHORT_TRAVEL
                ? clark
                : clark + LONG_TRAVEL_SHARE * Math.max(0, lossFree(cutoff) - clark);
        return Math.min(SHARE_MAX, share);
    }

    /** Returns Clark's share, not below 0. */
    static double clark(double cutoff) {
        return Math.max(0, (CLARK_SLOPE * Math.sqrt(PER_CENT * cutoff) - CLARK_OFFSET) / PER_CENT);
    }

    /**
     * Returns the share of a diagram without losses but with clearance: admission at chest pressure, hyperbolic expansion,
     * exhaust at the atmosphere. Absolute pressure is taken 8 per cent above gauge, as at about 180 psi.
     */
    static double lossFree(double cutoff) {
        return (1 + ATMOSPHERE_SHARE) * forward(cutoff, CLEARANCE) - ATMOSPHERE_SHARE;
    }

    /**
     * Returns the mean of the forward stroke as a share of the absolute pressure of admission, with hyperbolic expansion.
     *
     * @param clearance as a share of the stroke, 0 or more
     */
    static double forward(double cutoff, double clearance) {
        return cutoff + (cutoff + clearance) * Math.log((1 + clearance) / (cutoff + clearance));
    }
}
