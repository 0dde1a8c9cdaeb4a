package org.crosshead.kernel.plan;

/**
 * Seeks the price of time at which a section takes the time booked. The dearer time is, the less is taken; both run over powers of
 * ten, so the search goes by their logarithms, with a step by the last slope, bounded.
 */
final class TimePrice {

    private static final double SLOPE = -0.2;
    private static final double STEP_MOST = 1;
    private static final double SLOPE_LEAST = -0.45;
    private static final double SLOPE_MOST = -0.12;

    /** Smaller moves of the price teach nothing of the slope. */
    private static final double SEEN_OVER = 0.03;

    private final double least;
    private final double most;
    private double logPrice;
    private double slope = SLOPE;
    private double beforePrice = Double.NaN;
    private double beforeTime = Double.NaN;

    TimePrice(double first, double least, double most) {
        this.least = Math.log(least);
        this.most = Math.log(most);
        logPrice = Math.log(first);
    }

    double kgPerS() {
        return Math.exp(logPrice);
    }

    /** Returns true if time is as dear as it can be. */
    boolean dearest() {
        return logPrice >= most;
    }

    /** Moves the price on after a section took one time where another is wanted. */
    void learn(double takenS, double wantedS) {
        double logTime = Math.log(takenS);
        if (!Double.isNaN(beforePrice) && Math.abs(logPrice - beforePrice) > SEEN_OVER) {
            double seen = (logTime - beforeTime) / (logPrice - beforePrice);
            slope = (slope + Math.max(SLOPE_LEAST, Math.min(SLOPE_MOST, seen))) / 2;
        }
        beforePrice = logPrice;
        beforeTime = logTime;
        double step = (Math.log(wantedS) - logTime) / slope;
        logPrice = Math.max(least, Math.min(most, logPrice + Math.max(-STEP_MOST, Math.min(STEP_MOST, step))));
    }
}
