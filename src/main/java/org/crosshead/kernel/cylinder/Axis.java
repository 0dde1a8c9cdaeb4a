package org.crosshead.kernel.cylinder;

/** Nodes of one direction of a table, found without a search. Values beyond the first or last node take that node's. */
final class Axis {

    private final double[] nodes;
    private final double[] perLength;
    /** Interval that holds the beginning of each of many equal bins. */
    private final int[] intervalAtBin;

    private final double binsPerUnit;

    /**
     * @param binWidth so small that no bin holds more than one node
     */
    Axis(double binWidth, double... nodes) {
        this.nodes = nodes.clone();
        perLength = new double[nodes.length - 1];
        for (int i = 0; i + 1 < nodes.length; i++) {
            perLength[i] = 1 / (nodes[i + 1] - nodes[i]);
        }
        binsPerUnit = 1 / binWidth;
        intervalAtBin = new int[(int) Math.ceil(nodes[nodes.length - 1] * binsPerUnit) + 1];
        int interval = 0;
        for (int i = 0; i < intervalAtBin.length; i++) {
            while (interval + 2 < nodes.length && nodes[interval + 1] <= i * binWidth) {
                interval++;
            }
            intervalAtBin[i] = interval;
        }
    }

    int count() {
        return nodes.length;
    }

    double node(int index) {
        return nodes[index];
    }

    /** Returns the interval in which a value lies. */
    int interval(double value) {
        int bin = Math.max(0, Math.min(intervalAtBin.length - 1, (int) (value * binsPerUnit)));
        int interval = intervalAtBin[bin];
        return interval + 2 < nodes.length && nodes[interval + 1] <= value ? interval + 1 : interval;
    }

    /** Returns how far a value lies along an interval, from 0 to 1. */
    double along(int interval, double value) {
        return Math.max(0, Math.min(1, (value - nodes[interval]) * perLength[interval]));
    }
}
