package org.crosshead.kernel.plan;

import org.crosshead.kernel.units.Check;

/**
 * The shortest line through a channel: the most even supply that keeps a store between its bounds. Of all supplies that do, it has
 * the least sum of any convex cost.
 */
final class TautString {

    private TautString() {}

    /**
     * Returns the slope over each interval.
     *
     * @param at rising places, n + 1
     * @param low lower bounds of the line at the places
     * @param high upper bounds, nowhere below the lower; at the first and last place both are the line's
     */
    static double[] slopes(double[] at, double[] low, double[] high) {
        int last = at.length - 1;
        Check.that(low.length == at.length && high.length == at.length, "bounds must be given at every place");
        double[] slopes = new double[last];
        int from = 0;
        double level = low[0];
        while (from < last) {
            double steepest = Double.POSITIVE_INFINITY;
            double flattest = Double.NEGATIVE_INFINITY;
            int byHigh = from;
            int byLow = from;
            int to = from + 1;
            int end = -1;
            double slope = 0;
            double reached = level;
            for (; to <= last && end < 0; to++) {
                double run = at[to] - at[from];
                double toHigh = (high[to] - level) / run;
                double toLow = (low[to] - level) / run;
                if (toLow > steepest) {
                    end = byHigh;
                    slope = steepest;
                    reached = high[byHigh];
                } else if (toHigh < flattest) {
                    end = byLow;
                    slope = flattest;
                    reached = low[byLow];
                } else {
                    if (toHigh <= steepest) {
                        steepest = toHigh;
                        byHigh = to;
                    }
                    if (toLow >= flattest) {
                        flattest = toLow;
                        byLow = to;
                    }
                    if (to == last) {
                        end = last;
                        slope = toLow;
                        reached = low[last];
                    }
                }
            }
            for (int i = from; i < end; i++) {
                slopes[i] = slope;
            }
            from = end;
            level = reached;
        }
        return slopes;
    }
}
