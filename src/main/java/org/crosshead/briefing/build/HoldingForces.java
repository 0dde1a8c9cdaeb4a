package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.standing.Holding;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.FormationFigures;

/**
 * What holds the train where it stands: the train engine's own brake, and hand brakes where their force is known. Brakes of assisting
 * engines are not counted on.
 */
final class HoldingForces {

    private final Workings workings;
    private final GradientProfile profile;
    private final EngineFigures.Resolved engine;
    private final CastIronBlocks blocks;

    HoldingForces(Workings workings) {
        this.workings = workings;
        profile = workings.model().request().road().track().gradients();
        engine = Objects.requireNonNull(workings.inputs().engines().get(0).figures());
        blocks = new CastIronBlocks(
                engine.blockForceN(),
                CastIronBlocks.WET_OR_HOT,
                CastIronBlocks.RAIL_SHARE * engine.massKg() * Units.GRAVITY_MPS2);
    }

    /** Returns the mean slope under the train, rise over run. */
    double slope(double atM) {
        return profile.meanGradient(atM, workings.model().body().lengthM());
    }

    boolean engineHolds(double atM) {
        return balance(atM).holds();
    }

    double neededN(double atM) {
        return balance(atM).neededN();
    }

    private Holding.Balance balance(double atM) {
        return Holding.balance(workings.model().massKg(atM), slope(atM), blocks.forceN(0), Holding.SAFETY);
    }

    Step neededStep(double atM) {
        double massKg = workings.model().massKg(atM);
        double slope = Math.abs(Units.sineOfGradient(slope(atM)));
        return new Step(
                StepKind.FORMULA,
                "holding.needed",
                "mass * g * slope * safety",
                List.of(
                        new Input("mass", massKg, "kg", "formation:mass"),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("slope", slope, "", "route:gradient"),
                        new Input("safety", Holding.SAFETY, "", "own:holding-safety")),
                massKg * Units.GRAVITY_MPS2 * slope * Holding.SAFETY,
                "N",
                "BALANCE");
    }

    Step engineStep() {
        return blocksStep("holding.engine", blocks, engine.massKg(), "class:mass", "class:brake-force");
    }

    private static Step blocksStep(
            String name, CastIronBlocks blocks, double massKg, String massSource, String forceSource) {
        return new Step(
                StepKind.FORMULA,
                name,
                "min(rail * mass * g, wet * friction * blocks)",
                List.of(
                        new Input("rail", CastIronBlocks.RAIL_SHARE, "", "own:rail-share"),
                        new Input("mass", massKg, "kg", massSource),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("wet", CastIronBlocks.WET_OR_HOT, "", "own:wet-blocks"),
                        new Input("friction", CastIronBlocks.friction(0), "", "F1"),
                        new Input("blocks", blocks.blockForceN(), "N", forceSource)),
                blocks.forceN(0),
                "N",
                "BALANCE");
    }

    /**
     * Hand brakes on the vehicles.
     *
     * @param count vehicles whose hand brake is known; 0 for none, and step then holds nothing
     * @param weakest blocks of the weakest of them
     * @param step its force at rest
     */
    record Hand(int count, CastIronBlocks weakest, Step step) {

        /** Returns the force of the weakest at a speed where it is held for long. */
        double heldLongN(double speedMps) {
            return weakest.times(CastIronBlocks.HELD_LONG_OF_WET).forceN(speedMps);
        }
    }

    /** Returns the hand brakes of the vehicles, counted with the weakest: which of them are screwed down is not known. */
    Hand hand() {
        FormationFigures.Resolved load = workings.model().consist();
        CastIronBlocks weakest = null;
        double weakestKg = 0;
        int count = 0;
        for (FormationFigures.Vehicle vehicle : load == null ? List.<FormationFigures.Vehicle>of() : load.vehicles()) {
            OptionalDouble forceN = vehicle.handBlockForceN();
            if (forceN.isPresent() && forceN.getAsDouble() > 0) {
                CastIronBlocks hand = new CastIronBlocks(
                        forceN.getAsDouble(),
                        CastIronBlocks.WET_OR_HOT,
                        CastIronBlocks.RAIL_SHARE * vehicle.tareKg() * Units.GRAVITY_MPS2);
                if (weakest == null || hand.forceN(0) < weakest.forceN(0)) {
                    weakest = hand;
                    weakestKg = vehicle.tareKg();
                }
                count++;
            }
        }
        CastIronBlocks counted = weakest == null ? new CastIronBlocks(0, 1, 0) : weakest;
        return new Hand(
                count,
                counted,
                blocksStep("holding.hand-each", counted, weakestKg, "formation:tare", "vehicle:hand-brake"));
    }

    /** Returns the steps to the number of hand brakes that are wanted at a place: the balance of forces, or the railway's rule if more. */
    List<Step> countSteps(double atM, Hand hand, OptionalInt ruled) {
        Step each = hand.step();
        Step count = new Step(
                StepKind.FORMULA,
                "holding.hand-count",
                "ceil(needed / each)",
                List.of(
                        new Input("needed", neededN(atM), "N", "holding:needed"),
                        new Input("each", each.result(), "N", "step:" + each.name())),
                Math.ceil(neededN(atM) / each.result()),
                "",
                "BALANCE");
        List<Step> steps = new ArrayList<>(List.of(each, count));
        ruled.ifPresent(brakes -> steps.add(OwnHandBrakes.step(count, brakes)));
        return steps;
    }

    Term force(String key, Step step) {
        double tonN = Units.newtonsFromLongTonsForce(1);
        Step tons = new Step(
                StepKind.FORMULA,
                "holding.tons",
                "force / ton",
                List.of(
                        new Input("force", step.result(), "N", "step:" + step.name()),
                        new Input("ton", tonN, "N", "UNITS")),
                step.result() / tonN,
                "tonf",
                "UNITS");
        return workings.book().put(key, Figure.of(List.of(step, tons)));
    }
}
