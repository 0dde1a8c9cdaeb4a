package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * What an engine has in hand.
 *
 * @param pressurePa boiler pressure above the atmosphere (gauge)
 * @param waterKg water in the boiler
 * @param fireKg coal alight on the grate
 * @param blowing whether the safety valves are open
 */
public record EngineState(double pressurePa, double waterKg, double fireKg, boolean blowing) {

    public EngineState {
        Check.notNegative("pressurePa", pressurePa);
        Check.notNegative("waterKg", waterKg);
        Check.notNegative("fireKg", fireKg);
    }

    /** With the safety valves shut. */
    public EngineState(double pressurePa, double waterKg, double fireKg) {
        this(pressurePa, waterKg, fireKg, false);
    }
}
