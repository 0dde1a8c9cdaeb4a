package org.crosshead.kernel.cylinder;

import java.util.List;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Point;
import org.crosshead.kernel.units.Check;

/**
 * Unevenness of the pull over a turn of the wheels, from one end's diagram: cranks at a right angle for two cylinders, 120 degrees apart
 * for three, a right angle and opposite ones for four. Rods count as infinitely long, so that both strokes are alike, and the
 * inertia of the moving parts is left out, which evens the pull out as speed rises.
 *
 * @param peakOverMean greatest effort of a turn, as a share of the mean
 * @param leastOverMean least effort of a turn, as a share of the mean
 */
public record TurningEffort(double peakOverMean, double leastOverMean) {

    private static final int ANGLES = 720;

    /**
     * Returns the unevenness of running.
     *
     * @param diagram of one end over a turn, from the beginning of its stroke
     * @param cylinders 2, 3 or 4
     */
    public static TurningEffort of(List<Point> diagram, int cylinders) {
        return over(cylinders, angle -> pressureAt(diagram, angle));
    }

    /**
     * Returns the unevenness of a start: an end open to steam has chest pressure, every other is empty. The least of it is the effort
     * in the worst position of the cranks.
     */
    public static TurningEffort atRest(ValveEvents events, int cylinders) {
        return over(cylinders, angle -> open(events, angle));
    }

    /**
     * Returns the effort of a start in the worst position of the cranks, as a share of what the chest's pressure over the whole stroke
     * of all cylinders would give: an end open to steam has that pressure, every other is empty.
     */
    public static double leastShareAtRest(ValveEvents events, int cylinders) {
        Check.within("cylinders", cylinders, 2, 4);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ANGLES; i++) {
            double effort = 0;
            for (int k = 0; k < cylinders; k++) {
                double angle = 2 * Math.PI * i / ANGLES + crank(cylinders, k);
                effort += (open(events, angle) - open(events, angle + Math.PI)) * Math.sin(angle);
            }
            least = Math.min(least, effort);
        }
        // One double-acting cylinder under constant pressure gives 2/pi of its greatest effort in the mean.
        return least / (cylinders * 2 / Math.PI);
    }

    private static double open(ValveEvents events, double angle) {
        return events.steamArea(events.displacement(Math.cos(angle), Math.sin(angle))) > 0 ? 1 : 0;
    }

    /** Pressure in one end at an angle of its crank. */
    @FunctionalInterface
    private interface Pressure {
        double at(double angle);
    }

    private static TurningEffort over(int cylinders, Pressure pressure) {
        Check.within("cylinders", cylinders, 2, 4);
        double sum = 0;
        double peak = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ANGLES; i++) {
            double effort = 0;
            for (int k = 0; k < cylinders; k++) {
                double angle = 2 * Math.PI * i / ANGLES + crank(cylinders, k);
                effort += (pressure.at(angle) - pressure.at(angle + Math.PI)) * Math.sin(angle);
            }
            sum += effort;
            peak = Math.max(peak, effort);
            least = Math.min(least, effort);
        }
        double mean = sum / ANGLES;
        return new TurningEffort(peak / mean, least / mean);
    }

    private static double crank(int cylinders, int number) {
        return switch (cylinders) {
            case 2 -> number * Math.PI / 2;
            case 3 -> number * 2 * Math.PI / 3;
            default -> number * Math.PI / 2;
        };
    }

    private static double pressureAt(List<Point> diagram, double angle) {
        double turn = angle / (2 * Math.PI);
        double share = turn - Math.floor(turn);
        double swept = (1 - Math.cos(2 * Math.PI * share)) / 2;
        int half = half(diagram);
        int low = share < 0.5 ? 0 : half;
        int high = share < 0.5 ? half : diagram.size() - 1;
        boolean rising = share < 0.5;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (diagram.get(middle).strokeShare() < swept == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return diagram.get(low).pressurePa();
    }

    private static int half(List<Point> diagram) {
        int i = 0;
        while (i + 1 < diagram.size()
                && diagram.get(i + 1).strokeShare() > diagram.get(i).strokeShare()) {
            i++;
        }
        return i;
    }
}
