package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.EngineState;

/**
 * How a crew reads pressure gauge and glass.
 *
 * @param pressurePa by which the pressure is read too high
 * @param waterKg by which the water is read too high
 */
public record Gauges(double pressurePa, double waterKg) {

    /** Read as they are. */
    public static final Gauges TRUE = new Gauges(0, 0);

    EngineState read(EngineState state) {
        return equals(TRUE)
                ? state
                : new EngineState(
                        Math.max(0, state.pressurePa() + pressurePa),
                        Math.max(0, state.waterKg() + waterKg),
                        state.fireKg(),
                        state.blowing(),
                        state.suppliesShare());
    }
}
