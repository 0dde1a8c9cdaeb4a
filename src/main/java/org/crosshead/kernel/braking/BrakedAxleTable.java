package org.crosshead.kernel.braking;

import java.util.OptionalInt;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * The braked-axle table of a law of 1897: how many of 100 wagon axles of a train on a main line must be braked so that it stops within
 * 700 m, by the fall and the greatest speed. A rule beside this project's own: a railway can see both.
 *
 * <p>Source: [RGBL-1897], Reichs-Gesetzblatt 1897 no. 31, section 13 (read). Between values of the table the larger counts; a fraction of
 * an axle counts as a whole one; an empty goods axle as a half. Where the table is blank no train may run so fast on so steep a fall.
 */
public final class BrakedAxleTable {

    private static final double[] FALLS_PERMILLE = {0, 2.5, 5, 7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25};
    private static final double[] SPEEDS_KMH = {25, 30, 35, 40, 45, 50, 60, 70, 80, 90};
    private static final int[][] PER_HUNDRED = {
        {6, 6, 6, 6, 8, 10, 17, 25, 36, 48},
        {6, 6, 7, 9, 12, 14, 21, 30, 41, 54},
        {6, 7, 9, 12, 14, 18, 25, 35, 46, 59},
        {8, 10, 12, 15, 18, 21, 29, 39, 51},
        {10, 13, 15, 18, 21, 25, 33, 44, 56},
        {13, 15, 18, 21, 25, 29, 38, 48, 59},
        {15, 18, 21, 24, 28, 32, 42, 53},
        {18, 21, 24, 27, 32, 36, 46, 57},
        {20, 23, 27, 31, 35, 39, 50},
        {22, 26, 30, 34, 38, 43, 54},
        {25, 29, 33, 37, 42, 47}
    };

    private static final double HUNDRED = 100;
    /** What arithmetic of gradients and speeds may leave above a value of the table. */
    private static final double EXACT = 1e-6;

    private BrakedAxleTable() {}

    /**
     * Returns how many of a hundred axles must be braked; empty where the table has no figure.
     *
     * @param fall fall as run, rise over run, 0 or more; 0 on the level and on a rise
     * @param speedMps greatest speed on it
     */
    public static OptionalInt perHundred(double fall, double speedMps) {
        Check.within("fall", fall, 0, 0.2);
        Check.notNegative("speedMps", speedMps);
        int row = atLeast(FALLS_PERMILLE, fall * 1000);
        int column = atLeast(SPEEDS_KMH, Units.kmhFromMps(speedMps));
        return row < PER_HUNDRED.length && column < PER_HUNDRED[row].length
                ? OptionalInt.of(PER_HUNDRED[row][column])
                : OptionalInt.empty();
    }

    /**
     * Returns how many axles of a train that is, rounded up.
     *
     * @param axles counted axles; an empty goods axle is a half
     */
    public static int wanted(double axles, int perHundred) {
        Check.notNegative("axles", axles);
        return (int) Math.ceil(axles * perHundred / HUNDRED - EXACT);
    }

    private static int atLeast(double[] values, double wanted) {
        int i = 0;
        while (i < values.length && values[i] < wanted - EXACT) {
            i++;
        }
        return i;
    }
}
