package org.crosshead.kernel.plan;

import java.util.Arrays;

/**
 * What the fire should make and the boiler hold along a trip.
 *
 * @param nodeM places, n + 1
 * @param makingKgPerS steam to be made from each place to the next, n
 * @param reserveKg steam that could be made out of what the boiler holds, at each place
 * @param pressurePa pressure that goes with it
 */
public record SteamPlan(double[] nodeM, double[] makingKgPerS, double[] reserveKg, double[] pressurePa) {

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

    private double between(double[] values, double positionM) {
        int cell = cell(positionM);
        double share = (positionM - nodeM[cell]) / (nodeM[cell + 1] - nodeM[cell]);
        return values[cell] + Math.max(0, Math.min(1, share)) * (values[cell + 1] - values[cell]);
    }
}
