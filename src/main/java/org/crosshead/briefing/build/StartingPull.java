package org.crosshead.briefing.build;

import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.RailState;

/** What an engine pulls at rest: full gear, regulator wide, the boiler at nine tenths of its pressure, never more than the rail holds. */
final class StartingPull {

    /** Boiler pressure taken for a start on a bank, as a share of working pressure: an estimate on the safe side. */
    static final double PRESSURE_SHARE = 0.9;

    private StartingPull() {}

    static double ofN(Engine engine, RailState rail) {
        Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(PRESSURE_SHARE * boiler.pressureMaxPa(), boiler.waterLeastKg(), 0);
        return engine.pull(
                        state, new Controls(1, engine.parameters().valveGear().cutoffFull()), 0, rail)
                .forceN();
    }
}
