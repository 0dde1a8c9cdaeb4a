package org.crosshead.kernel.plan;

/** Speeds of a leg and what they take; its arrays are the planner's own and are shared, not copied. */
final class SpeedPath {

    private final int fromNode;
    private final double[] half;
    private final double[] timeS;
    private final double[] steamKg;

    /**
     * @param fromNode first node
     * @param half half the square of speed at each node from the first on, m2/s2
     * @param timeS time on each cell
     * @param steamKg steam used on each cell
     */
    SpeedPath(int fromNode, double[] half, double[] timeS, double[] steamKg) {
        this.fromNode = fromNode;
        this.half = half;
        this.timeS = timeS;
        this.steamKg = steamKg;
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
}
