package org.crosshead.briefing.build;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.crosshead.briefing.document.KeyFigure;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.StartingResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.Curves.CurveDrag;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.ResistanceRule;

/** The load that the engines of a train can start again at the worst place of its path: gradient, curves and rail taken together. */
final class RestartLoad {

    private static final double STEP_M = 50;
    private static final double ROUNDED_TO_TONS = 5;

    private final Workings workings;
    private final double startingEngineN;
    private final double engineKg;
    private final double startingPerKgN;
    private final Map<RailState, Double> pulls = new EnumMap<>(RailState.class);

    RestartLoad(Workings workings) {
        this.workings = workings;
        TrainBody body = workings.model().body();
        FormationFigures.Resolved consist = workings.model().consist();
        double loadKg = consist == null ? 0 : consist.massKg();
        double loadN =
                consist == null ? 0 : consist.resistance(ResistanceRule.USUAL).startingN();
        engineKg = body.massKg() - loadKg;
        startingEngineN = body.resistance().startingN() - loadN;
        startingPerKgN = loadKg > 0 ? loadN / loadKg : StartingResistance.perMassN();
    }

    /** What counts at one place. */
    private record Place(double atM, double pullN, double slope, double curveN) {}

    KeyFigure figure() {
        Place worst = worst();
        double tonKg = Units.kgFromLongTons(1);
        double tons = Math.max(0, loadKg(worst)) / tonKg;
        Step load = new Step(
                StepKind.FORMULA,
                "load.restart",
                "max(0, (pull - enginestart - engine * (g * slope + curve)) / (start + g * slope + curve)) / ton",
                List.of(
                        new Input("pull", worst.pullN(), "N", "engine:starting-pull"),
                        new Input("enginestart", startingEngineN, "N", "STARTING-ENGINE"),
                        new Input("engine", engineKg, "kg", "class:mass"),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("slope", worst.slope(), "", "route:gradient"),
                        new Input("curve", worst.curveN(), "N/kg", "route:curve"),
                        new Input("start", startingPerKgN, "N/kg", "HENDERSON"),
                        new Input("ton", tonKg, "kg", "UNITS")),
                tons,
                "tons",
                "BALANCE");
        Step down = new Step(
                StepKind.MARGIN,
                "load.rounded-down",
                "floor(load / five) * five",
                List.of(
                        new Input("load", tons, "tons", "step:load.restart"),
                        new Input("five", ROUNDED_TO_TONS, "tons", "policy:load-step")),
                Math.floor(tons / ROUNDED_TO_TONS) * ROUNDED_TO_TONS,
                "tons",
                "policy:load-step");
        Term term = workings.book().put("load-limit", Figure.of(List.of(load, down)));
        return new KeyFigure(
                "load-limit",
                term,
                List.of(
                        Phrase.of("key-figure.at", workings.place(worst.atM())),
                        Phrase.of("key-figure.load-limit.further")));
    }

    private Place worst() {
        Track track = workings.model().request().road().track();
        double lengthM = workings.model().body().lengthM();
        CurveDrag drag = track.curves().drag(CurveResistance::perMassN);
        double endM = workings.inputs().path().lengthM();
        Place worst = place(track, drag, lengthM, 0);
        for (double atM = STEP_M; atM <= endM; atM += STEP_M) {
            Place here = place(track, drag, lengthM, atM);
            worst = loadKg(here) < loadKg(worst) ? here : worst;
        }
        return worst;
    }

    private Place place(Track track, CurveDrag drag, double lengthM, double atM) {
        return new Place(
                atM,
                pullN(workings.model().request().road().railAt(atM)),
                Math.max(0, track.gradients().meanGradient(atM, lengthM)),
                drag.mean(atM, lengthM));
    }

    /** The mean pull of the engines that work the whole path: a start that takes setting back for the cranks counts. */
    private double pullN(RailState rail) {
        return pulls.computeIfAbsent(rail, state -> {
            double sumN = 0;
            for (int i = 0; i < workings.model().engines().size(); i++) {
                if (TrainModel.isWhole(workings.inputs().engines().get(i).turn())) {
                    sumN += new StartingPull(workings.model().engine(i)).meanN(state);
                }
            }
            return sumN;
        });
    }

    private double loadKg(Place place) {
        double along = Units.GRAVITY_MPS2 * place.slope() + place.curveN();
        return (place.pullN() - startingEngineN - engineKg * along) / (startingPerKgN + along);
    }
}
