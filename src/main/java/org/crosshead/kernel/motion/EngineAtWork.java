package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;

/**
 * One engine of a run.
 *
 * @param start its boiler where it begins to work
 * @param assistance from where to where it works
 */
public record EngineAtWork(Engine engine, EngineState start, Supply supply, Assistance assistance) {

    private static final double PRESSURE_LOW = 0.6;
    private static final double PRESSURE_RANGE = 0.1;
    private static final double GLASS_LOW = 0.1;

    /** Returns an engine that works from end to end and whose mass the train's body includes. */
    public static EngineAtWork throughout(Engine engine, EngineState start, Supply supply) {
        return new EngineAtWork(engine, start, supply, Assistance.THROUGHOUT);
    }

    /** Returns these handles as this engine can follow them: its cutoff not below its own least nor above its full gear. */
    public Controls handles(Controls controls) {
        LocomotiveParameters.ValveGear gear = engine.parameters().valveGear();
        double cutoff = Math.max(gear.cutoffLeast(), Math.min(gear.cutoffFull(), controls.cutoff()));
        return cutoff == controls.cutoff() ? controls : new Controls(controls.regulator(), cutoff);
    }

    /**
     * Returns these handles as the crew of an engine behind or beside the train engine follow them: within its own gear, and with
     * the regulator eased towards the first valve as its own boiler runs low in pressure or water. Where the rail would not hold,
     * they ease it further: the pull is then what the rail holds. An estimate of common practice.
     */
    public Controls followed(Controls told, EngineState state) {
        LocomotiveParameters.Boiler boiler = engine.parameters().boiler();
        double pressure = (state.pressurePa() / boiler.pressureMaxPa() - PRESSURE_LOW) / PRESSURE_RANGE;
        double glass = boiler.glassShare(state.waterKg());
        double spare = Math.max(0, Math.min(1, Math.min(pressure, glass / GLASS_LOW)));
        double widest = Controls.FIRST_VALVE + (1 - Controls.FIRST_VALVE) * spare;
        Controls own = handles(told);
        return own.regulator() <= widest ? own : new Controls(widest, own.cutoff());
    }

    /** Returns true where this engine works. */
    public boolean worksAt(double positionM) {
        return positionM >= assistance.fromM() && positionM < assistance.toM();
    }
}
