package org.crosshead.kernel.scatter;

import org.crosshead.kernel.boiler.Furnace;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.HeatAccount;
import org.crosshead.kernel.traction.LimitedBy;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;

/** An engine on a day with other coal and another rail. What its crew believe of it, they believe of the engine as counted with. */
record ScatteredEngine(Engine counted, double coalHeat, double adhesion) implements Engine {

    @Override
    public LocomotiveParameters parameters() {
        return counted.parameters();
    }

    @Override
    public Pull pull(EngineState state, Controls controls, double speedMps, RailState rail) {
        Pull pull = counted.pull(state, controls, speedMps, rail);
        double railN = adhesion * pull.railForceN();
        double forceN = Math.min(pull.cylinderForceN(), railN);
        double steam = pull.forceN() > 0 ? pull.steamKgPerS() * forceN / pull.forceN() : pull.steamKgPerS();
        LimitedBy limit = LimitedBy.least(pull.cylinderForceN(), pull.boilerForceN(), railN);
        return new Pull(forceN, pull.cylinderForceN(), pull.boilerForceN(), railN, steam, limit);
    }

    @Override
    public Pull cocksOpen(Pull pull, EngineState state, Controls controls) {
        return counted.cocksOpen(pull, state, controls);
    }

    /** Coal of less heat counts as less coal. */
    @Override
    public EngineState after(EngineState state, double steamKgPerS, Firing firing, double durationS) {
        Firing worth = new Firing(
                coalHeat * firing.coalKgPerS(),
                firing.feedKgPerS(),
                firing.blower(),
                firing.dampers(),
                firing.ejectorKgPerS());
        return counted.after(state, steamKgPerS, worth, durationS);
    }

    @Override
    public HeatAccount heat(EngineState before, EngineState after, Work work) {
        return counted.heat(
                before,
                after,
                new Work(
                        work.steamKgPerS(),
                        coalHeat * work.coalKgPerS(),
                        work.feedKgPerS(),
                        work.steaming(),
                        work.durationS()));
    }

    @Override
    public Furnace furnace() {
        return counted.furnace();
    }

    @Override
    public double air(double steamKgPerS, double blower, double dampers) {
        return counted.air(steamKgPerS, blower, dampers);
    }

    @Override
    public double adhesiveKg(EngineState state) {
        return counted.adhesiveKg(state);
    }

    @Override
    public double auxiliaryKgPerS(double blower) {
        return counted.auxiliaryKgPerS(blower);
    }

    @Override
    public double feedMaxKgPerS(double pressurePa) {
        return counted.feedMaxKgPerS(pressurePa);
    }

    @Override
    public double evaporationMaxKgPerS(double pressurePa) {
        return counted.evaporationMaxKgPerS(pressurePa);
    }

    @Override
    public double reserveKg(EngineState state) {
        return counted.reserveKg(state);
    }

    @Override
    public double coalForSteamKgPerS(double steamKgPerS, double pressurePa) {
        return counted.coalForSteamKgPerS(steamKgPerS, pressurePa);
    }
}
