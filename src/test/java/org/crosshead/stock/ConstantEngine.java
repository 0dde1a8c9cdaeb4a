package org.crosshead.stock;

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

/** An engine of simple arithmetic, for tests: its cylinders give 100 kN in proportion to cutoff, its boiler keeps up 500 kW. */
public record ConstantEngine(LocomotiveParameters parameters) implements Engine {

    private static final double RAIL_N = 90_000;

    @Override
    public Pull pull(EngineState state, Controls controls, double speedMps, RailState rail) {
        double cylinderN = 100_000 * controls.cutoff();
        double boilerN = speedMps > 0 ? 500_000 / speedMps : Double.POSITIVE_INFINITY;
        return new Pull(Math.min(cylinderN, RAIL_N), cylinderN, boilerN, RAIL_N, 1, LimitedBy.CYLINDER);
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
        return 2;
    }

    @Override
    public double coalForSteamKgPerS(double steamKgPerS, double pressurePa) {
        return steamKgPerS / 8;
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
