package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Check;

/**
 * What a plan may ask of the train engine's boiler, as steam that it could make out of the heat it holds, kg. While there is heat the
 * fireman keeps the pressure and lets the glass fall; once it is low the pressure falls. Rule of this
 * project.
 */
final class BoilerBounds {

    private static final double FULL_GLASS = 0.9;
    /** A plan keeps the water no lower than this share of the glass: a rule of this project. */
    static final double LOW_GLASS = 0.35;

    private static final double WORKING_PRESSURE = 0.96;

    private final double fullKg;
    private final double workingKg;
    private final double leastKg;
    private final double startKg;
    private final double workingPa;
    private final double leastPa;

    /**
     * @param pressureLeastPa below which the plan never lets the pressure fall, less than the working pressure
     */
    BoilerBounds(Engine engine, EngineState start, double pressureLeastPa) {
        Boiler boiler = engine.parameters().boiler();
        leastPa = Check.within("pressureLeastPa", pressureLeastPa, 0, WORKING_PRESSURE * boiler.pressureMaxPa());
        workingPa = WORKING_PRESSURE * boiler.pressureMaxPa();
        fullKg = engine.reserveKg(state(boiler, boiler.pressureMaxPa(), FULL_GLASS));
        workingKg = engine.reserveKg(state(boiler, workingPa, LOW_GLASS));
        leastKg = engine.reserveKg(state(boiler, leastPa, LOW_GLASS));
        startKg = Math.max(leastKg, Math.min(fullKg, engine.reserveKg(start)));
    }

    private static EngineState state(Boiler boiler, double pressurePa, double glass) {
        double waterKg = boiler.waterLeastKg() + glass * boiler.glassKg();
        return new EngineState(pressurePa, waterKg, 0);
    }

    double fullKg() {
        return fullKg;
    }

    double leastKg() {
        return leastKg;
    }

    double startKg() {
        return startKg;
    }

    /** Returns the pressure that goes with a reserve. */
    double pressurePa(double reserveKg) {
        double share = Math.max(0, Math.min(1, (reserveKg - leastKg) / Math.max(1e-9, workingKg - leastKg)));
        return leastPa + share * (workingPa - leastPa);
    }
}
