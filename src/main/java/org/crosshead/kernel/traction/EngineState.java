package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;

/**
 * What an engine has in hand.
 *
 * @param pressurePa boiler pressure above the atmosphere (gauge)
 * @param waterKg water in the boiler
 * @param fireKg coal alight on the grate
 * @param blowing whether the safety valves are open
 * @param suppliesShare what is left in tank and bunker, as a share of both full
 */
public record EngineState(double pressurePa, double waterKg, double fireKg, boolean blowing, double suppliesShare) {

    public EngineState {
        Check.notNegative("pressurePa", pressurePa);
        Check.notNegative("waterKg", waterKg);
        Check.notNegative("fireKg", fireKg);
        Check.within("suppliesShare", suppliesShare, 0, 1);
    }

    /** With the safety valves shut, tank and bunker full. */
    public EngineState(double pressurePa, double waterKg, double fireKg) {
        this(pressurePa, waterKg, fireKg, false, 1);
    }

    /** Returns this with what is left in tank and bunker. */
    public EngineState carrying(double share) {
        return new EngineState(pressurePa, waterKg, fireKg, blowing, share);
    }
}
