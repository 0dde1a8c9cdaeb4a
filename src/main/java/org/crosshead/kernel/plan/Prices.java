package org.crosshead.kernel.plan;

import java.util.Arrays;

/**
 * What a plan pays on each cell.
 */
final class Prices {

    /** Of time, kg of coal for a second. */
    final double[] timeKgPerS;

    /** Of the heat of the feed, kg of coal for a kilogram of steam's worth; it can be brought in at another time. */
    final double[] feedKgPerKg;

    /** What the fire makes for the feed there, as steam, kg/s. */
    final double[] feedingKgPerS;

    /** Level of the pull table that the pressure there comes nearest to. */
    final int[] level;

    /** Half the square of the speed above which no steam is spent, m2/s2. */
    final double[] paceHalf;

    /** Heat that cold feed takes to boil, as a share of what makes it steam. */
    static final double FEED_SHARE = 0.28;

    private final CoalCurve coal;

    Prices(int cells, CoalCurve coal, int level) {
        this.coal = coal;
        this.timeKgPerS = new double[cells];
        this.feedKgPerKg = new double[cells];
        this.feedingKgPerS = new double[cells];
        this.level = new int[cells];
        this.paceHalf = new double[cells];
        Arrays.fill(this.paceHalf, Double.POSITIVE_INFINITY);
        Arrays.fill(feedKgPerKg, coal.worth(0.5 * coal.mostKgPerS()));
        Arrays.fill(feedingKgPerS, FEED_SHARE * 0.5 * coal.mostKgPerS());
        Arrays.fill(this.level, level);
    }

    /**
     * Returns what a second costs on a cell while so much steam is used: its own price, coal burnt, and the feed's heat for that steam; less
     * the feed's heat that is brought in meanwhile.
     */
    double kgPerS(int cell, double steamKgPerS) {
        double feeding = feedingKgPerS[cell];
        double burnt = coal.coalKgPerS((1 - FEED_SHARE) * steamKgPerS + feeding);
        return Math.max(0, timeKgPerS[cell] + burnt + feedKgPerKg[cell] * (FEED_SHARE * steamKgPerS - feeding));
    }

    /** Returns the mean of the prices from one cell to another, as one cell. */
    Prices mean(int from, int to) {
        Prices mean = new Prices(1, coal, level[from]);
        mean.timeKgPerS[0] = Arrays.stream(timeKgPerS, from, to).average().orElseThrow();
        mean.feedKgPerKg[0] = Arrays.stream(feedKgPerKg, from, to).average().orElseThrow();
        mean.feedingKgPerS[0] = Arrays.stream(feedingKgPerS, from, to).average().orElseThrow();
        return mean;
    }

    CoalCurve coal() {
        return coal;
    }
}
