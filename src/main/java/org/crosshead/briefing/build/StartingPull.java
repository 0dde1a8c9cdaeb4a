package org.crosshead.briefing.build;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.cylinder.TurningEffort;
import org.crosshead.kernel.cylinder.ValveEvents;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.TractiveEffort;

/**
 * What an engine pulls at rest: full gear, regulator wide, the boiler at nine tenths of its pressure, tank and bunker empty, never
 * more than the rail holds.
 */
final class StartingPull {

    /** Boiler pressure taken for a start on a bank, as a share of working pressure: an estimate on the safe side. */
    static final double PRESSURE_SHARE = 0.9;

    private final LocomotiveParameters parameters;
    private final double chestPa;
    private final double leastShare;
    private final Engine engine;
    private final EngineState atRest;
    private final Map<RailState, Pull> pulls = new EnumMap<>(RailState.class);

    StartingPull(Engine engine) {
        this.engine = engine;
        parameters = engine.parameters();
        Boiler boiler = parameters.boiler();
        chestPa = PRESSURE_SHARE * boiler.pressureMaxPa();
        atRest = new EngineState(chestPa, boiler.waterLeastKg(), 0).carrying(0);
        LocomotiveParameters.ValveGear gear = parameters.valveGear();
        leastShare = Math.min(
                TractiveEffort.CUSTOMARY_SHARE,
                TurningEffort.leastShareAtRest(
                        ValveEvents.at(gear.form().valve(), gear.cutoffFull()),
                        parameters.cylinders().count()));
    }

    /** Returns the mean over a turn. */
    double meanN(RailState rail) {
        return pull(rail).forceN();
    }

    /** Returns the pull in the worst position of the cranks. */
    double leastN(RailState rail) {
        return Math.min(least(), pull(rail).railForceN());
    }

    private double least() {
        return leastShare * chestPa * parameters.cylinders().forcePerPressureM2();
    }

    private Pull pull(RailState rail) {
        return pulls.computeIfAbsent(
                rail,
                state -> engine.pull(
                        atRest, new Controls(1, parameters.valveGear().cutoffFull()), 0, state));
    }

    /** Returns the pull in the worst position as a step. */
    Step leastStep(String name, RailState rail) {
        return new Step(
                StepKind.FORMULA,
                name,
                "min(share * chest * size, rail)",
                List.of(
                        new Input("share", leastShare, "", "class:turning-effort"),
                        new Input("chest", chestPa, "Pa", "class:pressure"),
                        new Input("size", parameters.cylinders().forcePerPressureM2(), "m2", "class:cylinders"),
                        new Input("rail", pull(rail).railForceN(), "N", "ADHESION")),
                leastN(rail),
                "N",
                "BALANCE");
    }
}
