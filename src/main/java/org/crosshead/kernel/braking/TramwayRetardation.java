package org.crosshead.kernel.braking;

import java.util.List;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Least mean retardation that a tramway ordinance asks of a vehicle's brake, by the speed from which it stops on the level: key STRABVO
 * in docs/sources.md, read, the data being under CC BY 4.0. Between two printed speeds the straight line, below the least the value of
 * the least. For light railways that work by such a rule.
 *
 * @param printedMps2 from 20 km/h up, every 10 km/h
 */
public record TramwayRetardation(List<Double> printedMps2) {

    /** Table 1 of its schedule, printed from 20 to 100 km/h. */
    public static final TramwayRetardation TABLE_1 =
            new TramwayRetardation(List.of(0.77, 0.87, 0.95, 1.03, 1.06, 1.07, 1.07, 1.08, 1.09));

    /** Table 2, printed from 20 to 70 km/h. */
    public static final TramwayRetardation TABLE_2 =
            new TramwayRetardation(List.of(1.71, 2.04, 2.29, 2.47, 2.57, 2.73));

    private static final double FIRST_KMH = 20;
    private static final double STEP_KMH = 10;
    private static final double CLOSE_MPS = 1e-9;

    public TramwayRetardation {
        printedMps2 = List.copyOf(printedMps2);
        Check.that(printedMps2.size() > 1, "printedMps2 must hold two values or more");
    }

    /** Returns the greatest speed that the table prints. */
    public double greatestMps() {
        return Units.mpsFromKmh(FIRST_KMH + STEP_KMH * (printedMps2.size() - 1));
    }

    /**
     * Returns the least mean retardation, m/s2.
     *
     * @param speedMps from 0 to {@link #greatestMps}
     */
    public double leastMps2(double speedMps) {
        Check.within("speedMps", speedMps, 0, greatestMps() + CLOSE_MPS);
        double at = Math.max(0, (Units.kmhFromMps(speedMps) - FIRST_KMH) / STEP_KMH);
        int below = Math.min(printedMps2.size() - 2, (int) at);
        double low = printedMps2.get(below);
        return low + (at - below) * (printedMps2.get(below + 1) - low);
    }

    /** Returns in which distance on the level a vehicle must stop that has no more than the least retardation, m. */
    public double stopsInM(double speedMps) {
        return stopsInM(speedMps, 0);
    }

    /**
     * Returns in which distance on a slope a vehicle stops whose brake gives no more than the least retardation on the level, m;
     * infinite where that brake would not stop it. The ordinance prints the level alone; the slope is own reckoning.
     *
     * @param slope rise over run, rise positive, from -0.2 to 0.2
     */
    public double stopsInM(double speedMps, double slope) {
        Check.within("slope", slope, -0.2, 0.2);
        double retardationMps2 = leastMps2(speedMps) + Units.GRAVITY_MPS2 * Units.sineOfGradient(slope);
        return retardationMps2 <= 0 ? Double.POSITIVE_INFINITY : speedMps * speedMps / (2 * retardationMps2);
    }
}
