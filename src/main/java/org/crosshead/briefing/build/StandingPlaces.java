package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.standing.Restart;
import org.crosshead.kernel.track.Curves.CurveDrag;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.ResistanceRule;

/** Whether and how the train can be started again where it stands, anywhere on its path, by the engines that work there. */
final class StandingPlaces {

    private final TrainModel model;
    private final Track track;
    private final CurveDrag drag;
    private final List<StartingPull> pulls;
    /** What resists once the couplings are slack: for a loose-coupled train less than at once. */
    private final RunningResistance setBack;

    StandingPlaces(TrainModel model, TrainKind kind) {
        this.model = model;
        track = model.request().road().track();
        drag = track.curves().drag(CurveResistance::perMassN);
        pulls = model.engines().stream().map(StartingPull::new).toList();
        FormationFigures.Resolved load = model.consist();
        RunningResistance whole = model.body().resistance();
        setBack = load == null || kind != TrainKind.UNFITTED_GOODS
                ? whole
                : loose(
                        whole,
                        load.resistance(ResistanceRule.USUAL),
                        load.vehicles().size());
    }

    private static RunningResistance loose(RunningResistance whole, RunningResistance load, int count) {
        double sparedN = load.startingN() - Restart.fromSlack(load, count).startingN();
        return new RunningResistance(
                whole.constantN(), whole.linearNPerMps(), whole.quadraticNPerMps2(), whole.startingN() - sparedN);
    }

    /** The forces of a start at one place. */
    record Start(double atM, Restart.Way way, Restart.Balance solid, Restart.Balance sanded) {}

    Start at(double atM) {
        double rise = Units.sineOfGradient(
                track.gradients().meanGradient(atM, model.body().lengthM()));
        double curve = drag.mean(atM, model.body().lengthM());
        RailState rail = model.request().road().railAt(atM);
        double leastN = 0;
        double meanN = 0;
        double sandedN = 0;
        for (int i = 0; i < pulls.size(); i++) {
            if (engine(i).worksAt(atM)) {
                leastN += pulls.get(i).leastN(rail);
                meanN += pulls.get(i).meanN(rail);
                sandedN += pulls.get(i).meanN(RailState.SANDED);
            }
        }
        Restart.Balance solid = Restart.under(body(atM, model.body().resistance()), rise, curve, leastN);
        TrainBody slack = body(atM, setBack);
        Restart.Balance sanded = Restart.under(slack, rise, curve, Math.max(meanN, sandedN));
        Restart.Way way = Restart.way(solid, Restart.under(slack, rise, curve, meanN), sanded);
        return new Start(atM, way, solid, sanded);
    }

    /** Returns what must be overcome to start the whole train at once, in tons of force, with its steps. */
    Figure needed(Start start) {
        TrainBody body = body(start.atM(), model.body().resistance());
        double slope = Units.sineOfGradient(track.gradients().meanGradient(start.atM(), body.lengthM()));
        double curve = drag.mean(start.atM(), body.lengthM());
        Step step = new Step(
                StepKind.FORMULA,
                "standing.needed",
                "start + mass * (g * slope + curve)",
                List.of(
                        new Input("start", body.resistance().startingN(), "N", "STARTING-ENGINE"),
                        new Input("mass", body.massKg(), "kg", "formation:mass"),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("slope", slope, "", "route:gradient"),
                        new Input("curve", curve, "N/kg", "route:curve")),
                start.solid().neededN(),
                "N",
                "BALANCE");
        return Figure.of(List.of(
                step, tons(List.of("standing.needed"), List.of(start.solid().neededN()))));
    }

    /** Returns the pull in the worst position of the cranks, in tons of force, with its steps. */
    Figure pull(Start start) {
        RailState rail = model.request().road().railAt(start.atM());
        List<Step> steps = new ArrayList<>();
        List<String> names = new ArrayList<>();
        List<Double> forces = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            if (engine(i).worksAt(start.atM())) {
                Step step = pulls.get(i).leastStep("standing.pull-" + (i + 1), rail);
                steps.add(step);
                names.add(step.name());
                forces.add(step.result());
            }
        }
        steps.add(tons(names, forces));
        return Figure.of(steps);
    }

    /** Returns what is lacking with sand and after setting back, in tons of force. */
    Figure lacking(Start start) {
        Step step = new Step(
                StepKind.FORMULA,
                "standing.lacking",
                "needed - pull",
                List.of(
                        new Input("needed", start.sanded().neededN(), "N", "BALANCE"),
                        new Input("pull", start.sanded().pullN(), "N", "engine:starting-pull")),
                -start.sanded().spareN(),
                "N",
                "BALANCE");
        return Figure.of(List.of(step, tons(List.of("standing.lacking"), List.of(step.result()))));
    }

    private static Step tons(List<String> names, List<Double> forces) {
        List<Input> inputs = new ArrayList<>();
        StringBuilder sum = new StringBuilder("(0");
        double total = 0;
        for (int i = 0; i < names.size(); i++) {
            String symbol = "force" + (char) ('a' + i);
            sum.append(" + ").append(symbol);
            inputs.add(new Input(symbol, forces.get(i), "N", "step:" + names.get(i)));
            total += forces.get(i);
        }
        double tonN = Units.newtonsFromLongTonsForce(1);
        inputs.add(new Input("ton", tonN, "N", "UNITS"));
        return new Step(
                StepKind.FORMULA,
                "standing.tons",
                sum.append(") / ton").toString(),
                inputs,
                total / tonN,
                "tonf",
                "UNITS");
    }

    private EngineAtWork engine(int index) {
        return model.request().train().engines().get(index);
    }

    /** The train with the engines that assist at this place. */
    private TrainBody body(double atM, RunningResistance own) {
        RunningResistance resistance = own;
        for (EngineAtWork engine : model.request().train().engines()) {
            if (engine.worksAt(atM)) {
                resistance = resistance.plus(engine.assistance().resistance());
            }
        }
        return new TrainBody(
                model.massKg(atM), model.body().rotatingShare(), model.body().lengthM(), resistance);
    }
}
