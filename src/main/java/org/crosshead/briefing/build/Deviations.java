package org.crosshead.briefing.build;

import java.util.Optional;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.plan.PlanDriver;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.units.Units;

/** What a driver does when the day is not as planned: the two deviations that are likeliest, as the driver of the forecast meets them. */
final class Deviations {

    private static final double PERCENT = 100;
    private static final double TO_THE_NEXT_PSI = 5;
    /** Nothing is told of a speed at which the train has just started or is about to stop. */
    private static final double SLOW_MPS = 4;

    private final Workings workings;

    Deviations(Workings workings) {
        this.workings = workings;
    }

    /**
     * Returns the answer to both.
     *
     * @param sample where the handles are set
     * @return empty where steam is shut, or the run follows no plan
     */
    Optional<Phrase> told(String key, Controls controls, int sample) {
        if (workings.plan() == null || controls.regulator() <= 0) {
            return Optional.empty();
        }
        double slowest = slowest(controls, sample);
        double more = controls.cutoff() + PlanDriver.NOTCH;
        boolean wide = controls.regulator() > Controls.FIRST_VALVE;
        boolean notch = slowest > SLOW_MPS && more <= PlanDriver.LONGEST + 1e-9;
        if (notch && wide) {
            return Optional.of(Phrase.of("if-not.both", below(key, slowest, sample), cutoff(more), low(key)));
        }
        if (notch) {
            return Optional.of(Phrase.of("if-not.slow", below(key, slowest, sample), cutoff(more)));
        }
        return wide ? Optional.of(Phrase.of("if-not.low", low(key))) : Optional.empty();
    }

    /** Returns the least speed of the forecast while the handles stay so. */
    private double slowest(Controls controls, int sample) {
        Run run = workings.run();
        double least = Double.POSITIVE_INFINITY;
        for (int i = sample; i + 1 < run.size(); i++) {
            boolean other = run.regulator(i) <= 0 || Math.abs(run.cutoff(i) - controls.cutoff()) > 1e-6;
            if (other || run.brakeN(i) > 0) {
                break;
            }
            least = Math.min(least, run.speedMps(i));
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    private Term below(String key, double slowestMps, int sample) {
        double atM = workings.run().positionM(sample);
        double shown = workings.speeds().value(PlanDriver.BEHIND * slowestMps, atM);
        return workings.book()
                .given(key + "behind", Math.floor(shown), workings.speeds().unit(atM), "plan:behind");
    }

    private static Term cutoff(double cutoff) {
        return Term.number(PERCENT * cutoff, "%");
    }

    private Term low(String key) {
        double maxPa = workings.model().engine(0).parameters().boiler().pressureMaxPa();
        double psi = Units.psiFromPa(PlanDriver.LOW_SHARE * maxPa);
        return workings.book()
                .given(key + "low", TO_THE_NEXT_PSI * Math.round(psi / TO_THE_NEXT_PSI), "psi", "plan:low");
    }
}
