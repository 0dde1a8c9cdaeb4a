package org.crosshead.kernel.traction;

import java.util.OptionalDouble;
import org.crosshead.kernel.units.Check;

/**
 * The figures of a class (or engine) that the pull and the boiler need. Masses are in working order.
 *
 * @param adhesiveMassKg mass on the coupled wheels
 * @param speedMaxMps greatest speed of the class
 */
public record LocomotiveParameters(
        Cylinders cylinders, ValveGear valveGear, Boiler boiler, double adhesiveMassKg, double speedMaxMps) {

    public LocomotiveParameters {
        Check.within("adhesiveMassKg", adhesiveMassKg, 1_000, 400_000);
        Check.within("speedMaxMps", speedMaxMps, 1, 90);
    }

    /**
     * Simple-expansion cylinders, all alike, double-acting.
     *
     * @param count from 2 to 4
     */
    public record Cylinders(int count, double boreM, double strokeM, double wheelDiameterM) {

        public Cylinders {
            Check.within("count", count, 2, 4);
            Check.within("boreM", boreM, 0.1, 1.2);
            Check.within("strokeM", strokeM, 0.2, 1.2);
            Check.within("wheelDiameterM", wheelDiameterM, 0.4, 3);
        }

        /** Returns d2 s n / (2 D): rim force for each pascal of mean effective pressure, m2. */
        public double forcePerPressureM2() {
            return boreM * boreM * strokeM * count / (2 * wheelDiameterM);
        }

        /** Returns the mean speed of the pistons at this speed of the train. */
        public double pistonSpeedMps(double speedMps) {
            return 2 * strokeM * speedMps / (Math.PI * wheelDiameterM);
        }
    }

    /**
     * Valve gear as far as the driver notices it.
     *
     * @param cutoffFull cutoff in full gear, commonly 0.75
     * @param cutoffLeast least cutoff that the class is worked at, commonly 0.25
     */
    public record ValveGear(ValveFamily family, double cutoffFull, double cutoffLeast) {

        public ValveGear {
            Check.within("cutoffFull", cutoffFull, 0.3, 0.9);
            Check.within("cutoffLeast", cutoffLeast, 0.05, cutoffFull);
        }
    }

    /**
     * Boiler and grate.
     *
     * @param pressureMaxPa working pressure above the atmosphere, at which the safety valves lift
     * @param superheaterM2 0 for saturated steam
     * @param waterFullKg water when the glass is full
     * @param waterLeastKg water at the least level that the class may be worked at
     * @param coalHeatJPerKg calorific value of the coal
     * @param injectorKgPerS what one injector delivers at working pressure; empty where it is not known
     */
    public record Boiler(
            double pressureMaxPa,
            double grateM2,
            double heatingSurfaceM2,
            double superheaterM2,
            double waterFullKg,
            double waterLeastKg,
            double coalHeatJPerKg,
            OptionalDouble injectorKgPerS) {

        public Boiler {
            Check.within("pressureMaxPa", pressureMaxPa, 1e5, 22e5);
            Check.within("grateM2", grateM2, 0.2, 15);
            Check.within("heatingSurfaceM2", heatingSurfaceM2, 5, 800);
            Check.within("superheaterM2", superheaterM2, 0, 400);
            Check.within("waterFullKg", waterFullKg, 300, 60_000);
            Check.within("waterLeastKg", waterLeastKg, 100, waterFullKg);
            Check.within("coalHeatJPerKg", coalHeatJPerKg, 10e6, 37e6);
            injectorKgPerS.ifPresent(delivery -> Check.within("injectorKgPerS", delivery, 0.05, 15));
        }
    }
}
