package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.Braking;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;

/** Says where the brake does not do what one would take for granted: on a long fall, behind a distant signal, standing on a gradient. */
final class BrakeSentences {

    private static final double SPEED_STEP_MPS = 0.5;
    private static final double STEP_M = 100;

    private static final String DISTANT = "distant";

    private final Workings workings;
    private final GradientProfile profile;
    private final SpeedLimits limits;

    BrakeSentences(Workings workings) {
        this.workings = workings;
        this.profile = workings.model().request().road().track().gradients();
        this.limits = workings.model().request().road().track().limits();
    }

    List<Phrase> found() {
        List<Phrase> found = new ArrayList<>();
        found.addAll(new FallSentences(workings).found());
        distant().ifPresent(found::add);
        holding().ifPresent(found::add);
        return found;
    }

    /** A distant signal, the next signal behind it, and what lies between being seen and passing that. */
    private record Warned(PathFeature distant, double signalM, double availableM, double speedMps, double neededM) {

        double lackingM() {
            return neededM - availableM;
        }
    }

    private Optional<Phrase> distant() {
        Warned worst = null;
        int count = 0;
        List<PathFeature> signals = workings.inputs().path().features().stream()
                .filter(feature -> feature.feature().kind() == FeatureKind.SIGNAL)
                .toList();
        for (int i = 0; i + 1 < signals.size(); i++) {
            if (!isDistant(signals.get(i)) || isDistant(signals.get(i + 1))) {
                continue;
            }
            Warned warned = warned(signals.get(i), signals.get(i + 1).fromM());
            if (warned.lackingM() > 0) {
                count++;
                worst = worst == null || warned.lackingM() > worst.lackingM() ? warned : worst;
            }
        }
        return worst == null ? Optional.empty() : Optional.of(phrase(worst, count));
    }

    /** Returns whether a train passes this signal at caution rather than stop at it. */
    static boolean isDistant(PathFeature signal) {
        return signal.feature().detail().toLowerCase(Locale.ROOT).contains(DISTANT);
    }

    private Warned warned(PathFeature distant, double signalM) {
        double fromM = Math.max(0, distant.fromM() - distant.sightingM().orElse(0));
        double speedMps = Math.min(workings.model().speedMaxMps(), limits.limitAt(Math.max(0, fromM)));
        return new Warned(distant, signalM, signalM - fromM, speedMps, neededM(signalM, speedMps));
    }

    private double neededM(double atM, double fromMps) {
        double onM = StoppingDistance.brakeOnM(
                workings.model().service(), workings.model().brakingBody(), profile, atM, fromMps, 0);
        double startM = Double.isNaN(onM) ? profile.startM() : onM;
        Braking braking = StoppingDistance.forward(
                workings.model().service(), workings.model().brakingBody(), profile, startM, fromMps, 0);
        return braking instanceof Braking.Slows slows
                ? slows.distanceM() * workings.inputs().policyValue(Policy.BRAKING_MARGIN)
                : Double.POSITIVE_INFINITY;
    }

    private Phrase phrase(Warned worst, int count) {
        double speedMps = worst.speedMps();
        while (speedMps > SPEED_STEP_MPS && neededM(worst.signalM(), speedMps) > worst.availableM()) {
            speedMps -= SPEED_STEP_MPS;
        }
        double atM = worst.distant().fromM();
        double unitM = workings.speeds().distanceUnitM(atM);
        Step step = new Step(
                StepKind.FORMULA,
                "braking.seen",
                "distance / unit",
                List.of(
                        new Input("distance", worst.availableM(), "m", "route:sighting"),
                        new Input("unit", unitM, "m", "UNITS")),
                worst.availableM() / unitM,
                workings.speeds().distanceUnit(atM),
                "UNITS");
        return Phrase.of(
                "today.distant",
                workings.book().given("today.distant-count", count, "", "route:signals"),
                Term.text(worst.distant().feature().name()),
                workings.place(worst.distant().fromM()),
                workings.book().put("today.distant-seen", Figure.of(List.of(step))),
                workings.slowEnough(
                        "today.distant-speed", speedMps, worst.distant().fromM()));
    }

    private Optional<Phrase> holding() {
        HoldingForces holding = new HoldingForces(workings);
        double worstM = Double.NaN;
        double worstN = 0;
        for (double atM = 0; atM <= workings.inputs().path().lengthM(); atM += STEP_M) {
            double neededN = holding.neededN(atM);
            if (!holding.engineHolds(atM) && neededN > worstN) {
                worstM = atM;
                worstN = neededN;
            }
        }
        return Double.isNaN(worstM)
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "today.engine-brake-alone",
                        workings.place(worstM),
                        holding.force("today.hold-needed", holding.neededStep(worstM)),
                        holding.force("today.hold-engine", holding.engineStep())));
    }
}
