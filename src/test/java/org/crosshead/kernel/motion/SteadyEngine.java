package org.crosshead.kernel.motion;

import org.crosshead.kernel.boiler.Furnace;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.HeatAccount;
import org.crosshead.kernel.traction.LimitedBy;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;

/** An engine that pulls with one force whenever its regulator is open, for closed forms. */
record SteadyEngine(double forceN) implements Engine {

    @Override
    public LocomotiveParameters parameters() {
        return EngineFixtures.express();
    }

    @Override
    public Pull pull(EngineState state, Controls controls, double speedMps, RailState rail) {
        double pull = controls.regulator() > 0 ? forceN : 0;
        return new Pull(pull, pull, Double.POSITIVE_INFINITY, 1e9, 0, LimitedBy.CYLINDER);
    }

    @Override
    public EngineState after(EngineState state, double steamKgPerS, Firing firing, double durationS) {
        return state;
    }

    @Override
    public HeatAccount heat(EngineState before, EngineState after, Work work) {
        return new HeatAccount(0, 0, 0, 0, 0);
    }

    @Override
    public double evaporationMaxKgPerS(double pressurePa) {
        return 3;
    }

    @Override
    public double coalForSteamKgPerS(double steamKgPerS, double pressurePa) {
        return 0.1;
    }

    @Override
    public Furnace furnace() {
        return new Furnace(2, 100, 30e6);
    }

    @Override
    public double air(double steamKgPerS, double blower, double dampers) {
        return 1;
    }

    @Override
    public double adhesiveKg(EngineState state) {
        return parameters().adhesiveMassKg();
    }

    @Override
    public Pull cocksOpen(Pull pull, EngineState state, Controls controls) {
        return pull;
    }

    @Override
    public double auxiliaryKgPerS(double blower) {
        return 0;
    }

    @Override
    public double feedMaxKgPerS(double pressurePa) {
        return 5;
    }

    @Override
    public double reserveKg(EngineState state) {
        return 1_000;
    }
}
