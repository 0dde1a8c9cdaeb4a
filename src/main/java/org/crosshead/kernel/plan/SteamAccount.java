package org.crosshead.kernel.plan;

import java.util.Arrays;
import java.util.List;

/**
 * Steam of a whole trip: what the paths use, what the fire must make for it and when, and what steam is worth where. Making is as even
 * as the boiler's bounds let it be; steam is worth what the last kilogram of it costs in coal, more where even the hardest fire does
 * not make enough.
 */
final class SteamAccount {

    private final PlanRoad road;
    private final BoilerBounds bounds;
    private final CoalCurve coal;
    /** What the fire makes on each cell, kg/s. */
    final double[] makingKgPerS;
    /** What the boiler holds at each node. */
    final double[] reserveKg;

    double coalKg;
    /** Greatest making as a share of what the grate can. */
    double hardest;

    SteamAccount(PlanRoad road, CoalCurve coal, BoilerBounds bounds) {
        this.road = road;
        this.bounds = bounds;
        this.coal = coal;
        makingKgPerS = new double[road.cells];
        reserveKg = new double[road.cells + 1];
    }

    /** Returns what the trip should be like along these paths. */
    TripPlan plan(List<SpeedPath> paths) {
        double[] pressures = Arrays.stream(reserveKg).map(bounds::pressurePa).toArray();
        return new TripPlan(road.nodeM, makingKgPerS, reserveKg, pressures, speeds(paths));
    }

    private double[] speeds(List<SpeedPath> paths) {
        double[] speeds = new double[road.cells + 1];
        for (SpeedPath path : paths) {
            for (int i = 0; i <= path.cells(); i++) {
                speeds[path.fromNode() + i] = Math.sqrt(2 * path.half()[i]);
            }
        }
        return speeds;
    }

    /** Draws the account of a trip and sets the prices of steam and the levels of pressure by it. */
    void draw(List<SpeedPath> paths, double[] standingS, Prices prices) {
        int intervals = 0;
        for (SpeedPath path : paths) {
            intervals += path.cells() + 1;
        }
        double[] at = new double[intervals + 1];
        double[] used = new double[intervals + 1];
        double[] fed = new double[intervals + 1];
        int[] cell = new int[intervals];
        int n = 0;
        for (int leg = 0; leg < paths.size(); leg++) {
            SpeedPath path = paths.get(leg);
            double standS = Math.max(1e-3, standingS[leg]);
            cell[n] = -1;
            at[n + 1] = at[n] + standS;
            used[n + 1] = used[n];
            n++;
            for (int i = 0; i < path.cells(); i++) {
                cell[n] = path.fromNode() + i;
                at[n + 1] = at[n] + path.timeS()[i];
                used[n + 1] = used[n] + path.steamKg()[i];
                n++;
            }
        }
        for (int i = 1; i <= n; i++) {
            fed[i] = Prices.FEED_SHARE * used[i];
        }
        double[] slopes = TautString.slopes(at, shifted(fed, bounds.leastKg()), shifted(fed, bounds.fullKg()));
        account(at, used, cell, slopes, prices);
    }

    /** Bounds of the steam made, so that the reserve keeps its own; at the end it is what it was at the start. */
    private double[] shifted(double[] used, double reserve) {
        double[] bound = new double[used.length];
        for (int i = 1; i < used.length; i++) {
            bound[i] = used[i] + reserve - bounds.startKg();
        }
        bound[0] = 0;
        bound[used.length - 1] = used[used.length - 1];
        return bound;
    }

    private void account(double[] at, double[] used, int[] cell, double[] slopes, Prices prices) {
        double reserve = bounds.startKg();
        coalKg = 0;
        hardest = 0;
        double[] worth = feedWorth(at, used, slopes);
        for (int i = 0; i < slopes.length; i++) {
            double durationS = at[i + 1] - at[i];
            double making = making(at, used, slopes, i);
            hardest = Math.max(hardest, making / coal.mostKgPerS());
            coalKg += durationS * coal.coalKgPerS(making);
            double next = reserve + making * durationS - (used[i + 1] - used[i]);
            int c = cell[i];
            if (c >= 0) {
                makingKgPerS[c] = making;
                reserveKg[c] = reserve;
                reserveKg[c + 1] = next;
                prices.feedKgPerKg[c] = worth[i];
                prices.feedingKgPerS[c] = Math.max(0, slopes[i]);
                prices.level[c] = road.table[c].level(bounds.pressurePa((reserve + next) / 2));
            }
            reserve = next;
        }
    }

    private static double making(double[] at, double[] used, double[] slopes, int i) {
        return slopes[i] + (1 - Prices.FEED_SHARE) * (used[i + 1] - used[i]) / (at[i + 1] - at[i]);
    }

    /** What heat for feed is worth: over each stretch of even feeding the mean of what the last kilogram costs there. */
    private double[] feedWorth(double[] at, double[] used, double[] slopes) {
        double[] worth = new double[slopes.length];
        int from = 0;
        while (from < slopes.length) {
            int to = from;
            double sum = 0;
            while (to < slopes.length && slopes[to] == slopes[from]) {
                sum += (at[to + 1] - at[to]) * coal.worth(making(at, used, slopes, to));
                to++;
            }
            Arrays.fill(worth, from, to, sum / (at[to] - at[from]));
            from = to;
        }
        return worth;
    }
}
