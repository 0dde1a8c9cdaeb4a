package org.crosshead.kernel.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Dynamic programming over speed alone, with prices of time and steam: half the square of speed on a lattice of nodes, moves from
 * node to node, so that the pull follows from the move and nothing is interpolated. From stop to stop, backwards.
 */
final class SpeedProgramme {

    private static final double HALF = 0.5;
    /** Half the square of the least speed between stops. */
    private static final double FLOOR = 0.5;

    private final PlanRoad road;
    private final PlanRoad.Leg leg;

    SpeedProgramme(PlanRoad road, PlanRoad.Leg leg) {
        this.road = road;
        this.leg = leg;
    }

    /**
     * How fine a sweep is.
     *
     * @param cellsMost cells in a stage at most
     * @param step of half the square of speed
     * @param reach nodes on either side of the path before; negative for all
     */
    record Fineness(int cellsMost, double step, int reach) {}

    /** Returns the cheapest path, near the one before where that is given; empty if there is none in reach. */
    Optional<SpeedPath> path(Prices prices, Fineness fineness, @Nullable SpeedPath before) {
        int[] nodes = stages(fineness.cellsMost());
        double[][] half = new double[nodes.length][];
        double[][] speed = new double[nodes.length][];
        for (int k = 0; k < nodes.length; k++) {
            half[k] = lattice(nodes[k], fineness, before);
            speed[k] = Arrays.stream(half[k]).map(h -> Math.sqrt(2 * h)).toArray();
        }
        int[][] next = new int[nodes.length - 1][];
        double[] cost = new double[half[nodes.length - 1].length];
        for (int k = nodes.length - 2; k >= 0; k--) {
            double[] here = new double[half[k].length];
            next[k] = new int[half[k].length];
            Stage stage = new Stage(nodes[k], nodes[k + 1], prices);
            for (int i = 0; i < here.length; i++) {
                double best = Double.POSITIVE_INFINITY;
                int chosen = -1;
                for (int j = 0; j < cost.length; j++) {
                    if (cost[j] < best) {
                        double sum = cost[j] + stage.cost(half[k][i], half[k + 1][j], speed[k][i] + speed[k + 1][j]);
                        if (sum < best) {
                            best = sum;
                            chosen = j;
                        }
                    }
                }
                here[i] = best;
                next[k][i] = chosen;
            }
            cost = here;
        }
        return Double.isFinite(cost[0]) ? Optional.of(traced(nodes, half, next, prices)) : Optional.empty();
    }

    private SpeedPath traced(int[] nodes, double[][] half, int[][] next, Prices prices) {
        int from = leg.fromNode();
        int count = leg.toNode() - from;
        double[] halves = new double[count + 1];
        double[] times = new double[count];
        double[] steam = new double[count];
        int i = 0;
        for (int k = 0; k + 1 < nodes.length; k++) {
            int j = next[k][i];
            Stage stage = new Stage(nodes[k], nodes[k + 1], prices);
            double w0 = half[k][i];
            double w1 = half[k + 1][j];
            double sum = Math.sqrt(2 * w0) + Math.sqrt(2 * w1);
            double steamKg = stage.steamKg(w0, w1, sum);
            for (int cell = nodes[k]; cell < nodes[k + 1]; cell++) {
                double a = (road.nodeM[cell] - road.nodeM[nodes[k]]) / stage.lengthM;
                double b = (road.nodeM[cell + 1] - road.nodeM[nodes[k]]) / stage.lengthM;
                halves[cell - from] = w0 + a * (w1 - w0);
                halves[cell + 1 - from] = w0 + b * (w1 - w0);
                double sumHere = Math.sqrt(2 * halves[cell - from]) + Math.sqrt(2 * halves[cell + 1 - from]);
                times[cell - from] = 2 * (road.nodeM[cell + 1] - road.nodeM[cell]) / sumHere;
                steam[cell - from] = steamKg * (b - a);
            }
            i = j;
        }
        return new SpeedPath(from, halves, times, steam);
    }

    private int[] stages(int cellsMost) {
        int[] nodes = new int[leg.toNode() - leg.fromNode() + 1];
        int count = 0;
        int last = leg.fromNode();
        nodes[count++] = last;
        for (int node = last + 1; node <= leg.toNode(); node++) {
            boolean starting = node - leg.fromNode() <= cellsMost;
            if (node == leg.toNode() || road.edge[node] || node - last >= cellsMost || starting) {
                nodes[count++] = node;
                last = node;
            }
        }
        return Arrays.copyOf(nodes, count);
    }

    private double[] lattice(int node, Fineness fineness, @Nullable SpeedPath before) {
        if (node == leg.fromNode() || node == leg.toNode()) {
            return new double[] {0};
        }
        double most = road.allowed[node] / 2;
        double least = Math.min(FLOOR, HALF * most);
        if (before == null || fineness.reach() < 0) {
            return whole(least, most, fineness.step());
        }
        double centre = Math.max(least, Math.min(most, before.half()[node - before.fromNode()]));
        int below = (int) Math.min(fineness.reach(), (centre - least) / fineness.step());
        int above = (int) Math.min(fineness.reach(), (most - centre) / fineness.step());
        boolean top = above < fineness.reach() && most > centre + above * fineness.step() + 1e-9;
        double[] lattice = new double[below + above + 1 + (top ? 1 : 0)];
        for (int i = -below; i <= above; i++) {
            lattice[i + below] = centre + i * fineness.step();
        }
        if (top) {
            lattice[lattice.length - 1] = most;
        }
        return lattice;
    }

    /** From the most down by even steps, and from the least up by doubling, for a train that starts heavily. */
    private static double[] whole(double least, double most, double step) {
        TreeSet<Double> lattice = new TreeSet<>();
        for (double low = least; low < Math.min(most, step); low *= 2) {
            lattice.add(low);
        }
        for (double high = most; high >= least; high -= step) {
            lattice.add(high);
        }
        return lattice.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** One stage with its sums. */
    private final class Stage {

        private final double lengthM;
        private final double inertiaPerM;
        private final double alongN;
        private final int cell;
        private final int level;
        private final int priced;
        private final Prices prices;
        private final PullTable table;

        Stage(int fromNode, int toNode, Prices prices) {
            lengthM = road.nodeM[toNode] - road.nodeM[fromNode];
            cell = fromNode;
            table = road.table[fromNode];
            double workJ = 0;
            int levels = 0;
            for (int i = fromNode; i < toNode; i++) {
                workJ += road.workJ[i];
                levels += prices.level[i];
            }
            inertiaPerM = road.inertiaKg[fromNode] / lengthM;
            alongN = workJ / lengthM;
            this.prices = prices;
            priced = (fromNode + toNode - 1) / 2;
            level = Math.round((float) levels / (toNode - fromNode));
        }

        double pullN(double w0, double w1, double meanMps) {
            return inertiaPerM * (w1 - w0) + alongN + road.resistanceN(cell, meanMps);
        }

        double cost(double w0, double w1, double speedSum) {
            double meanMps = HALF * speedSum;
            double timeS = lengthM / meanMps;
            double pullN = pullN(w0, w1, meanMps);
            if (pullN <= 0) {
                return -pullN <= road.brakeN(meanMps) ? timeS * prices.kgPerS(priced, 0) : Double.POSITIVE_INFINITY;
            }
            return timeS * prices.kgPerS(priced, table.leastKgPerS(level, meanMps, pullN));
        }

        double steamKg(double w0, double w1, double speedSum) {
            double meanMps = HALF * speedSum;
            double pullN = pullN(w0, w1, meanMps);
            return pullN <= 0 ? 0 : lengthM / meanMps * table.leastKgPerS(level, meanMps, pullN);
        }
    }
}
