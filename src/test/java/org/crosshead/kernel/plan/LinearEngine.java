package org.crosshead.kernel.plan;

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

/**
 * An engine of constant greatest pull whose steam goes with its work and whose coal goes with its steam: the train of the textbooks on
 * running with least energy.
 *
 * @param steamKgPerJ steam for each joule at the rim
 * @param coalKgPerKg coal for each kilogram of steam
 */
record LinearEngine(double forceN, double steamKgPerJ, double coalKgPerKg) implements Engine {

    @Override
    public LocomotiveParameters parameters() {
        return EngineFixtures.express();
    }

    @Override
    public Pull pull(EngineState state, Controls controls, double speedMps, RailState rail) {
        double pull = controls.regulator() > 0 ? forceN : 0;
        return new Pull(pull, pull, Double.POSITIVE_INFINITY, 1e9, steamKgPerJ * pull * speedMps, LimitedBy.CYLINDER);
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
        return 100;
    }

    @Override
    public double coalForSteamKgPerS(double steamKgPerS, double pressurePa) {
        return coalKgPerKg * steamKgPerS;
    }

    @Override
    public double reserveKg(EngineState state) {
        return state.waterKg();
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
}
