package org.crosshead.kernel.plan;

/** Speeds of a leg and what they take; its arrays are the planner's own and are shared, not copied. */
final class SpeedPath {

    private final int fromNode;
    private final double[] half;
    private final double[] timeS;
    private final double[] steamKg;
    private final double value;

    /**
     * @param fromNode first node
     * @param half half the square of speed at each node from the first on, m2/s2
     * @param timeS time on each cell
     * @param steamKg steam used on each cell
     * @param value cost by the prices, kg of coal
     */
    SpeedPath(int fromNode, double[] half, double[] timeS, double[] steamKg, double value) {
        this.fromNode = fromNode;
        this.half = half;
        this.timeS = timeS;
        this.steamKg = steamKg;
        this.value = value;
    }

    int fromNode() {
        return fromNode;
    }

    double[] half() {
        return half;
    }

    double[] timeS() {
        return timeS;
    }

    double[] steamKg() {
        return steamKg;
    }

    double value() {
        return value;
    }

    int cells() {
        return timeS.length;
    }

    /** Returns the time from one node to another. */
    double timeS(int from, int to) {
        double sum = 0;
        for (int i = from - fromNode; i < to - fromNode; i++) {
            sum += timeS[i];
        }
        return sum;
    }

    double totalSteamKg() {
        double sum = 0;
        for (double kg : steamKg) {
            sum += kg;
        }
        return sum;
    }
}
