package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.Engine;

/**
 * Coal burnt, and water at what it is worth, at a rate of making steam for good, at working pressure, tabulated; beyond the greatest
 * rate ever dearer, so that a plan in the making can be led back from there.
 */
final class CoalCurve {

    private static final int NODES = 128;
    private static final double BEYOND = 2;
    private static final double DEARER = 25;

    private final double mostKgPerS;
    private final double perStep;
    private final double[] coalKgPerS = new double[NODES + 1];

    /** @param waterKgPerKg what a kilogram of water is worth besides */
    CoalCurve(Engine engine, double waterKgPerKg) {
        double pressurePa = engine.parameters().boiler().pressureMaxPa();
        mostKgPerS = engine.evaporationMaxKgPerS(pressurePa);
        double step = BEYOND * mostKgPerS / NODES;
        perStep = 1 / step;
        double last = 0;
        double slope = 0;
        for (int i = 0; i <= NODES; i++) {
            double making = i * step;
            if (making <= mostKgPerS) {
                coalKgPerS[i] = engine.coalForSteamKgPerS(making, pressurePa) + waterKgPerKg * making;
                slope = i == 0 ? 0 : (coalKgPerS[i] - last) / step;
            } else {
                slope *= 1 + DEARER / NODES;
                coalKgPerS[i] = last + slope * step;
            }
            last = coalKgPerS[i];
        }
    }

    double mostKgPerS() {
        return mostKgPerS;
    }

    /** Returns the coal rate. */
    double coalKgPerS(double makingKgPerS) {
        double at = Math.max(0, makingKgPerS * perStep);
        int low = Math.min((int) at, NODES - 1);
        return coalKgPerS[low] + (at - low) * (coalKgPerS[low + 1] - coalKgPerS[low]);
    }

    /** Returns what the last kilogram of steam costs at a rate, kg of coal. */
    double worth(double makingKgPerS) {
        int low = (int) Math.max(0, Math.min(makingKgPerS * perStep, NODES - 1.0));
        return (coalKgPerS[low + 1] - coalKgPerS[low]) * perStep;
    }
}
