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

    /** Returns an engine that works from end to end and whose mass the train's body includes. */
    public static EngineAtWork throughout(Engine engine, EngineState start, Supply supply) {
        return new EngineAtWork(engine, start, supply, Assistance.THROUGHOUT);
    }

    /** Returns these handles as this engine can follow them: its cutoff not below its own least nor above its full gear. */
    Controls handles(Controls controls) {
        LocomotiveParameters.ValveGear gear = engine.parameters().valveGear();
        double cutoff = Math.max(gear.cutoffLeast(), Math.min(gear.cutoffFull(), controls.cutoff()));
        return cutoff == controls.cutoff() ? controls : new Controls(controls.regulator(), cutoff);
    }

    /** Returns true where this engine works. */
    public boolean worksAt(double positionM) {
        return positionM >= assistance.fromM() && positionM < assistance.toM();
    }
}
