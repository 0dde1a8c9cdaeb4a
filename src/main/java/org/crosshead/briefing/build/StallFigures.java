package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.handling.LoadLimit;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.ResistanceRule;

/** What clears a road on which a train stalls: the greatest load, and the help that this load needs; of two ways the greater help. */
final class StallFigures {

    private static final double LOAD_STEP_TONS = 5;
    private static final double HELP_STEPS_PER_TON = 10;

    private final Workings workings;
    private final RunOutcome.Stalls stalls;
    private final LoadLimit limit;

    StallFigures(Workings workings, RunOutcome.Stalls stalls) {
        this.workings = workings;
        this.stalls = stalls;
        this.limit = LoadLimit.of(workings.model().request(), new RuleDriver(), new RuleFireman());
    }

    Phrase sentence() {
        Term place = workings.place(stalls.positionM());
        Term load = workings.book().put("limit.load", load());
        return Double.isInfinite(limit.assistanceN())
                ? Phrase.of("today.stalls-no-help", place, load)
                : Phrase.of("today.stalls", place, load, workings.book().put("limit.help", help()));
    }

    private Step balance() {
        return FigureBook.balance(stalls.run(), Math.max(0, stalls.run().size() - 2));
    }

    private Figure load() {
        double tons = Units.longTonsFromKg(limit.greatestLoadKg());
        Step found = new Step(
                StepKind.GIVEN,
                "limit.load-found",
                "found",
                List.of(new Input("found", tons, "tons", "search:load")),
                tons,
                "tons",
                "SEARCH");
        Step down = new Step(
                StepKind.MARGIN,
                "load.rounded-down",
                "floor(load / five) * five",
                List.of(
                        new Input("load", tons, "tons", "step:limit.load-found"),
                        new Input("five", LOAD_STEP_TONS, "tons", "policy:load-step")),
                Math.floor(tons / LOAD_STEP_TONS) * LOAD_STEP_TONS,
                "tons",
                "policy:load-step");
        return Figure.of(List.of(balance(), found, down));
    }

    private Figure help() {
        List<Step> steps = new ArrayList<>(List.of(balance()));
        double foundN = limit.assistanceN();
        steps.add(new Step(
                StepKind.GIVEN,
                "limit.help-found",
                "found",
                List.of(new Input("found", foundN, "N", "search:help")),
                foundN,
                "N",
                "SEARCH"));
        Step surplus = surplus();
        steps.add(surplus);
        double tonN = Units.newtonsFromLongTonsForce(1);
        double tons = Math.max(foundN, surplus.result()) / tonN;
        steps.add(new Step(
                StepKind.FORMULA,
                "limit.help-greater",
                "max(found, surplus) / ton",
                List.of(
                        new Input("found", foundN, "N", "step:limit.help-found"),
                        new Input("surplus", surplus.result(), "N", "step:limit.help-surplus"),
                        new Input("ton", tonN, "N for 1 ton of pull", "UNITS")),
                tons,
                "tons of pull",
                "SAFER"));
        steps.add(new Step(
                StepKind.MARGIN,
                "limit.help-rounded-up",
                "ceil(help * tenths) / tenths",
                List.of(
                        new Input("help", tons, "tons of pull", "step:limit.help-greater"),
                        new Input("tenths", HELP_STEPS_PER_TON, "", "policy:load-step")),
                Math.ceil(tons * HELP_STEPS_PER_TON) / HELP_STEPS_PER_TON,
                "tons of pull",
                "policy:load-step"));
        return Figure.of(steps);
    }

    /** What the load above the greatest takes to start on the gradient where the train stalls. */
    private Step surplus() {
        FormationFigures.Resolved consist = workings.model().consist();
        double massKg = consist == null ? 0 : consist.massKg();
        double perKgN =
                consist == null ? 0 : consist.resistance(ResistanceRule.USUAL).startingN() / massKg;
        double slope = Math.max(
                0,
                workings.model()
                        .request()
                        .road()
                        .track()
                        .gradients()
                        .meanGradient(
                                stalls.positionM(), workings.model().body().lengthM()));
        return new Step(
                StepKind.FORMULA,
                "limit.help-surplus",
                "max(0, mass - greatest) * (g * slope + start)",
                List.of(
                        new Input("mass", massKg, "kg", "formation:mass"),
                        new Input("greatest", limit.greatestLoadKg(), "kg", "search:load"),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("slope", slope, "", "route:gradient"),
                        new Input("start", perKgN, "N/kg", "HENDERSON")),
                Math.max(0, massKg - limit.greatestLoadKg()) * (Units.GRAVITY_MPS2 * slope + perKgN),
                "N",
                "BALANCE");
    }
}
