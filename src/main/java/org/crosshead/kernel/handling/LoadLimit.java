package org.crosshead.kernel.handling;

import org.crosshead.kernel.motion.Driver;
import org.crosshead.kernel.motion.Fireman;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;

/**
 * What would clear a road that a train does not: the greatest load that the same run is made with, and the least steady help that
 * this load needs.
 *
 * @param greatestLoadKg trailing mass, rounded down to the search's step; 0 if even the engine alone stalls
 * @param assistanceN steady pull from outside from end to end, rounded up to the search's step; infinite if none is found
 */
public record LoadLimit(double greatestLoadKg, double assistanceN) {

    private static final int ROUNDS = 8;
    private static final double MORE_LOAD = 2;
    private static final double MOST_HELP_N = 400e3;

    /** Returns the greatest load for a run, which may be greater than the train's own, and no help if the train makes it. */
    public static LoadLimit of(RunRequest request, Driver driver, Fireman fireman) {
        boolean arrives = arrives(request, 1, 0, driver, fireman);
        double low = arrives ? 1 : 0;
        double high = arrives ? MORE_LOAD : 1;
        if (arrives && arrives(request, high, 0, driver, fireman)) {
            return new LoadLimit(high * request.train().trailing().massKg(), 0);
        }
        for (int i = 0; i < ROUNDS; i++) {
            double middle = (low + high) / 2;
            if (arrives(request, middle, 0, driver, fireman)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double help = arrives ? 0 : leastHelpN(request, driver, fireman);
        return new LoadLimit(low * request.train().trailing().massKg(), help);
    }

    private static double leastHelpN(RunRequest request, Driver driver, Fireman fireman) {
        if (!arrives(request, 1, MOST_HELP_N, driver, fireman)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = MOST_HELP_N;
        for (int i = 0; i < ROUNDS + 1; i++) {
            double middle = (low + high) / 2;
            if (arrives(request, 1, middle, driver, fireman)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean arrives(RunRequest request, double share, double helpN, Driver driver, Fireman fireman) {
        RunRequest tried = request.withTrailing(share).withHelp(helpN);
        return Forecast.unhurried(tried, driver, fireman) instanceof RunOutcome.Arrives;
    }
}
