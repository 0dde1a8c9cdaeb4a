package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;

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

    boolean worksAt(double positionM) {
        return positionM >= assistance.fromM() && positionM < assistance.toM();
    }
}
