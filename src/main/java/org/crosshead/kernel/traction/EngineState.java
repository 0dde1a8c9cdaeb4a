package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * What an engine has in hand.
 *
 * @param pressurePa boiler pressure above the atmosphere (gauge)
 * @param waterKg water in the boiler
 * @param fireW heat that the fire is giving to the boiler's water
 */
public record EngineState(double pressurePa, double waterKg, double fireW) {

    public EngineState {
        Check.notNegative("pressurePa", pressurePa);
        Check.notNegative("waterKg", waterKg);
        Check.notNegative("fireW", fireW);
    }
}
