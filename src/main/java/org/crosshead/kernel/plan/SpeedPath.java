package org.crosshead.kernel.plan;

/**
 * Speeds of a leg and what they take; squares halved at nodes, the rest on cells.
 *
 * @param fromNode first node
 * @param half half the square of speed at each node from the first on, m2/s2
 * @param timeS time on each cell
 * @param steamKg steam used on each cell
 * @param value cost by the prices, kg of coal
 */
record SpeedPath(int fromNode, double[] half, double[] timeS, double[] steamKg, double value) {

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
