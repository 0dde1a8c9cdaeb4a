package org.crosshead.kernel.plan;

import java.util.Arrays;
import org.crosshead.kernel.motion.Run;

/** How fast the train should be, what the fire should make and the boiler hold along a trip. */
public final class TripPlan {

    private final double[] nodeM;
    private final double[] makingKgPerS;
    private final double[] reserveKg;
    private final double[] pressurePa;
    private final double[] speedMps;

    /**
     * @param nodeM places, n + 1
     * @param makingKgPerS steam to be made from each place to the next, n
     * @param reserveKg steam that could be made out of what the boiler holds, at each place
     * @param pressurePa pressure that goes with it
     * @param speedMps speed at each place
     */
    TripPlan(double[] nodeM, double[] makingKgPerS, double[] reserveKg, double[] pressurePa, double[] speedMps) {
        this.nodeM = nodeM.clone();
        this.makingKgPerS = makingKgPerS.clone();
        this.reserveKg = reserveKg.clone();
        this.pressurePa = pressurePa.clone();
        this.speedMps = speedMps.clone();
    }

    /** Returns the same fire and boiler with no speed to be kept up with. */
    TripPlan withoutSpeeds() {
        return new TripPlan(nodeM, makingKgPerS, reserveKg, pressurePa, new double[speedMps.length]);
    }

    /** Returns the same fire and boiler with the speeds of a run over the whole trip. */
    TripPlan withSpeedsOf(Run run) {
        double[] speeds = new double[nodeM.length];
        for (int i = 0; i < nodeM.length; i++) {
            double atM = Math.max(run.startM(), Math.min(run.endM(), nodeM[i]));
            speeds[i] = run.at(atM).speedMps();
        }
        return new TripPlan(nodeM, makingKgPerS, reserveKg, pressurePa, speeds);
    }

    int cell(double positionM) {
        int found = Arrays.binarySearch(nodeM, positionM);
        return Math.max(0, Math.min(makingKgPerS.length - 1, found >= 0 ? found : -found - 2));
    }

    double making(double positionM) {
        return makingKgPerS[cell(positionM)];
    }

    double reserve(double positionM) {
        return between(reserveKg, positionM);
    }

    double pressure(double positionM) {
        return between(pressurePa, positionM);
    }

    double speed(double positionM) {
        return between(speedMps, positionM);
    }

    private double between(double[] values, double positionM) {
        int cell = cell(positionM);
        double share = (positionM - nodeM[cell]) / (nodeM[cell + 1] - nodeM[cell]);
        return values[cell] + Math.max(0, Math.min(1, share)) * (values[cell + 1] - values[cell]);
    }
}
