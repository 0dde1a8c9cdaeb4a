package org.crosshead.briefing.build;

import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.cylinder.IndicatorDiagram;
import org.crosshead.kernel.cylinder.TurningEffort;
import org.crosshead.kernel.cylinder.ValveEvents;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SlipChance;
import org.crosshead.kernel.units.Units;

/** Where the train engine's wheels are most likely to slip on this run. */
final class SlipMaker {

    /** From this chance on it is told. */
    private static final double TOLD = 0.05;

    private static final double PER_CENT = 100;
    /** A diagram at a crawl: the unevenness that counts is that of slow, hard pulling. */
    private static final IndicatorDiagram.Ends SLOW = new IndicatorDiagram.Ends(1.4e6, 0.14, 1, 1.06e5);

    private static final IndicatorDiagram.Pace CRAWL = new IndicatorDiagram.Pace(1.45, 2);
    private static final double STEPS_OF_CUTOFF = 20;

    private final Workings workings;
    private final LocomotiveParameters parameters;

    SlipMaker(Workings workings) {
        this.workings = workings;
        this.parameters = workings.model().engine(0).parameters();
    }

    /** Returns the sentence; empty where no place is worth one. */
    Optional<Phrase> told() {
        Run run = workings.run();
        RunRoad road = workings.model().request().road();
        double[] peaks = peaks();
        int worst = -1;
        double greatest = TOLD;
        for (int i = 0; i + 1 < run.size(); i++) {
            if (run.regulator(i) <= 0 || run.pullN(i) <= 0) {
                continue;
            }
            RailState rail = road.railAt(run.positionM(i));
            double chance = SlipChance.of(demand(run, i, peaks), rail, run.speedMps(i));
            if (chance > greatest) {
                greatest = chance;
                worst = i;
            }
        }
        return worst < 0 ? Optional.empty() : Optional.of(phrase(run, worst, peaks));
    }

    private SlipChance.Demand demand(Run run, int sample, double[] peaks) {
        long working = workings.model().request().train().engines().stream()
                .filter(engine -> engine.worksAt(run.positionM(sample)))
                .count();
        return new SlipChance.Demand(
                run.pullN(sample) / Math.max(1, working), peak(peaks, run.cutoff(sample)), weightN(run, sample));
    }

    /** What stands on the coupled wheels of the train engine, with the coal and water left there. */
    private double weightN(Run run, int sample) {
        return workings.model().engine(0).adhesiveKg(run.state(sample, 0)) * Units.GRAVITY_MPS2;
    }

    /** Returns peak over mean of the turning effort at each twentieth of cutoff. */
    private double[] peaks() {
        CylinderForm form = parameters.valveGear().form();
        double[] peaks = new double[(int) STEPS_OF_CUTOFF];
        for (int i = 1; i < peaks.length - 1; i++) {
            List<IndicatorDiagram.Point> diagram =
                    IndicatorDiagram.trace(form, ValveEvents.at(form.valve(), i / STEPS_OF_CUTOFF), SLOW, CRAWL);
            peaks[i] = TurningEffort.of(diagram, parameters.cylinders().count()).peakOverMean();
        }
        return peaks;
    }

    private static double peak(double[] peaks, double cutoff) {
        int at = (int) Math.round(cutoff * STEPS_OF_CUTOFF);
        return peaks[Math.max(1, Math.min(peaks.length - 2, at))];
    }

    private Phrase phrase(Run run, int sample, double[] peaks) {
        double atM = run.positionM(sample);
        RailState rail = workings.model().request().road().railAt(atM);
        SlipChance.Demand demand = demand(run, sample, peaks);
        double wanted = demand.meanPullN() * demand.peakOverMean() / demand.adhesiveWeightN();
        Step asked = new Step(
                StepKind.FORMULA,
                "slip.asked",
                "pull * peak / weight",
                List.of(
                        new Input("pull", demand.meanPullN(), "N", "run:pull"),
                        new Input("peak", demand.peakOverMean(), "", "class:turning-effort"),
                        new Input("weight", demand.adhesiveWeightN(), "N", "class:adhesive-weight")),
                wanted,
                "",
                "ARITHMETIC");
        double percent = PER_CENT * SlipChance.of(demand, rail, run.speedMps(sample));
        Step chance = new Step(
                StepKind.GIVEN,
                "slip.chance",
                "chance",
                List.of(new Input("chance", percent, "%", "rail:scatter")),
                percent,
                "%",
                "SLIP");
        return Phrase.of(
                "today.slip",
                workings.place(atM),
                workings.book().put("today.slip", Figure.of(List.of(asked, chance))));
    }
}
