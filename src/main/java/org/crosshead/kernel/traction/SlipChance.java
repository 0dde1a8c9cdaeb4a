package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * How likely driving wheels are to slip at one place: the peak of the pull over a turn, against an adhesion that scatters from day
 * to day and rail to rail.
 *
 * <p>Mean adhesion at rest lies midway between the published figures: dry 0.25 (Koffman) and 0.35, wet 0.15 (Koffman) and 0.25 (5AT,
 * read), greasy between a tenth and a twelfth (Bourne); falling with speed as Curtius and Kniffler (from memory). The spread, a
 * fifth of the mean, is an estimate: published single figures lie up to 30 per cent from the line. A chance says which places to mind
 * and not how often a wheel will slip.
 */
public final class SlipChance {

    /** Standard deviation as a share of the mean. */
    static final double SPREAD = 0.2;

    private static final double DRY = 0.30;
    private static final double WET = 0.20;
    private static final double GREASY = 0.09;
    private static final double LEAVES = 0.06;
    private static final double SANDED = 0.28;

    private SlipChance() {}

    /** Returns the mean adhesion of such a rail at a speed, as a share of the weight on the coupled wheels. */
    public static double meanAdhesion(RailState rail, double speedMps) {
        double atRest = switch (rail) {
            case DRY -> DRY;
            case SANDED -> SANDED;
            case WET, DAMP -> WET;
            case GREASY -> GREASY;
            case LEAVES -> LEAVES;
        };
        return atRest * Adhesion.curtiusKniffler(speedMps) / Adhesion.curtiusKniffler(0);
    }

    /**
     * Returns the chance that the peak of the pull is more than the rail holds.
     *
     * @return from 0 to 1
     */
    public static double of(Demand demand, RailState rail, double speedMps) {
        double wanted = demand.meanPullN() * demand.peakOverMean() / demand.adhesiveWeightN();
        double mean = meanAdhesion(rail, speedMps);
        return normal((wanted - mean) / (SPREAD * mean));
    }

    /**
     * What the wheels ask of the rail.
     *
     * @param meanPullN pull at the rim, mean over a turn, 0 or more
     * @param peakOverMean 1 or more
     * @param adhesiveWeightN weight on the coupled wheels
     */
    public record Demand(double meanPullN, double peakOverMean, double adhesiveWeightN) {

        public Demand {
            Check.notNegative("meanPullN", meanPullN);
            Check.within("peakOverMean", peakOverMean, 1, 3);
            Check.positive("adhesiveWeightN", adhesiveWeightN);
        }
    }

    /**
     * Returns the normal distribution up to so many standard deviations.
     *
     * <p>Source: the form of C. Hastings (1955) as commonly printed, five terms (from memory); within 1e-6.
     */
    static double normal(double deviations) {
        double z = Math.abs(deviations);
        double t = 1 / (1 + 0.231_641_9 * z);
        double tail = Math.exp(-z * z / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319_381_530
                        + t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
        return deviations > 0 ? 1 - tail : tail;
    }
}
