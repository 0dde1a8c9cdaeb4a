package org.crosshead.kernel.traction;

import java.util.OptionalDouble;
import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.units.Check;

/**
 * The figures of a class (or engine) that the pull and the boiler need. Masses are in working order.
 *
 * @param adhesiveMassKg mass on the coupled wheels with tank and bunker full
 * @param adhesiveEmptyKg the same with both empty: less on a tank engine, alike on an engine with a tender
 * @param speedMaxMps greatest speed of the class
 */
public record LocomotiveParameters(
        Cylinders cylinders,
        ValveGear valveGear,
        Boiler boiler,
        Fittings fittings,
        double adhesiveMassKg,
        double adhesiveEmptyKg,
        double speedMaxMps) {

    /** A least pressure nearer to the working one than this leaves a crew nothing to work with. */
    private static final double LEAST_SHARE = 0.9;

    public LocomotiveParameters {
        Check.within("adhesiveMassKg", adhesiveMassKg, 1_000, 400_000);
        Check.within("adhesiveEmptyKg", adhesiveEmptyKg, 0.4 * adhesiveMassKg, adhesiveMassKg);
        Check.within("speedMaxMps", speedMaxMps, 1, 90);
    }

    /** With usual fittings, and a weight on the coupled wheels that does not change as coal and water are used. */
    public LocomotiveParameters(
            Cylinders cylinders, ValveGear valveGear, Boiler boiler, double adhesiveMassKg, double speedMaxMps) {
        this(cylinders, valveGear, boiler, Fittings.USUAL, adhesiveMassKg, adhesiveMassKg, speedMaxMps);
    }

    /** Returns the same engine with coal of so much times the heat, 0.4 to 1.3. */
    public LocomotiveParameters burning(double heat) {
        Check.within("heat", heat, 0.4, 1.3);
        return firing(boiler.grateM2(), heat * boiler.coalHeatJPerKg());
    }

    /** Returns the same engine where clinker leaves only a share of the grate to burn on, 0.4 to 1. */
    public LocomotiveParameters onGrate(double share) {
        Check.within("share", share, 0.4, 1);
        return firing(share * boiler.grateM2(), boiler.coalHeatJPerKg());
    }

    private LocomotiveParameters firing(double grateM2, double coalHeatJPerKg) {
        Boiler fired = new Boiler(
                boiler.pressureMaxPa(),
                grateM2,
                boiler.heatingSurfaceM2(),
                boiler.superheaterM2(),
                boiler.waterFullKg(),
                boiler.waterLeastKg(),
                coalHeatJPerKg,
                boiler.injectorKgPerS(),
                boiler.pressureLeastPa());
        return new LocomotiveParameters(
                cylinders, valveGear, fired, fittings, adhesiveMassKg, adhesiveEmptyKg, speedMaxMps);
    }

    /** Returns the same engine with another steady draught of steam, as from heating its train. */
    public LocomotiveParameters drawing(double steadyKgPerS) {
        return new LocomotiveParameters(
                cylinders,
                valveGear,
                boiler,
                new Fittings(fittings.feedHeatedC(), steadyKgPerS),
                adhesiveMassKg,
                adhesiveEmptyKg,
                speedMaxMps);
    }

    /**
     * What uses steam or spares it beside the cylinders.
     *
     * @param feedHeatedC temperature to which exhaust steam heats the feed while the engine is steaming; that of the tank without
     *     an exhaust injector or feed heater
     * @param steadyKgPerS steam taken all the time: leakage of the engine's condition, heating of the train
     */
    public record Fittings(double feedHeatedC, double steadyKgPerS) {

        /** Temperature of the water in the tank, taken for all. */
        public static final double TANK_C = 15;

        /** Live-steam injectors, nothing leaks, nothing is heated. */
        public static final Fittings USUAL = new Fittings(TANK_C, 0);

        public Fittings {
            Check.within("feedHeatedC", feedHeatedC, TANK_C, 120);
            Check.within("steadyKgPerS", steadyKgPerS, 0, 2);
        }
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
     * @param form valve, ports, clearance and blast; the example of the family where the class's own are not known
     */
    public record ValveGear(ValveFamily family, double cutoffFull, double cutoffLeast, CylinderForm form) {

        public ValveGear {
            Check.within("cutoffFull", cutoffFull, 0.3, 0.9);
            Check.within("cutoffLeast", cutoffLeast, 0.05, cutoffFull);
        }

        /** With the valves of the family's example. */
        public ValveGear(ValveFamily family, double cutoffFull, double cutoffLeast) {
            this(family, cutoffFull, cutoffLeast, family.form());
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
     * @param pressureLeastPa least pressure that the class is worked at, less than the working one; empty where none is laid down
     */
    public record Boiler(
            double pressureMaxPa,
            double grateM2,
            double heatingSurfaceM2,
            double superheaterM2,
            double waterFullKg,
            double waterLeastKg,
            double coalHeatJPerKg,
            OptionalDouble injectorKgPerS,
            OptionalDouble pressureLeastPa) {

        /** Where no least pressure is laid down. */
        public Boiler(
                double pressureMaxPa,
                double grateM2,
                double heatingSurfaceM2,
                double superheaterM2,
                double waterFullKg,
                double waterLeastKg,
                double coalHeatJPerKg,
                OptionalDouble injectorKgPerS) {
            this(
                    pressureMaxPa,
                    grateM2,
                    heatingSurfaceM2,
                    superheaterM2,
                    waterFullKg,
                    waterLeastKg,
                    coalHeatJPerKg,
                    injectorKgPerS,
                    OptionalDouble.empty());
        }

        public Boiler {
            Check.within("pressureMaxPa", pressureMaxPa, 1e5, 22e5);
            Check.within("grateM2", grateM2, 0.2, 15);
            Check.within("heatingSurfaceM2", heatingSurfaceM2, 5, 800);
            Check.within("superheaterM2", superheaterM2, 0, 400);
            Check.within("waterFullKg", waterFullKg, 300, 60_000);
            Check.within("waterLeastKg", waterLeastKg, 100, waterFullKg);
            Check.within("coalHeatJPerKg", coalHeatJPerKg, 10e6, 37e6);
            injectorKgPerS.ifPresent(delivery -> Check.within("injectorKgPerS", delivery, 0.05, 15));
            pressureLeastPa.ifPresent(least -> Check.within("pressureLeastPa", least, 0, LEAST_SHARE * pressureMaxPa));
        }

        /** Returns the water between the bottom of the glass and its top, kg; at least 1. */
        public double glassKg() {
            return Math.max(1, waterFullKg - waterLeastKg);
        }

        /** Returns which share of the glass this water fills; below 0 where it is not seen. */
        public double glassShare(double waterKg) {
            return (waterKg - waterLeastKg) / glassKg();
        }
    }
}
