package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakeForce;
import org.crosshead.kernel.braking.Braking;
import org.crosshead.kernel.braking.HeldSpeed;
import org.crosshead.kernel.braking.LongFall;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGradient;

/** Says where the brake does not do what one would take for granted: on a long fall, behind a distant signal, standing on a gradient. */
final class BrakeSentences {

    private static final double FALL = 1.0 / 200;
    private static final double FALL_LEAST_M = 300;
    private static final double SLOWER_MPS = 0.5;
    private static final double SPEED_STEP_MPS = 0.5;
    private static final double STEP_M = 100;
    private static final double WALKING_MPS = Units.mpsFromMph(3);
    /** Shorter falls warm the wheels less than they can take up. */
    private static final double HEATING_M = 2_000;

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
        runaway().ifPresent(found::add);
        pinned().ifPresent(found::add);
        heat().ifPresent(found::add);
        distant().ifPresent(found::add);
        holding().ifPresent(found::add);
        return found;
    }

    /** The fall on which the service brake holds least of the speed allowed. */
    private record Fall(PathGradient gradient, double heldMps, double allowedMps) {}

    private Optional<Phrase> runaway() {
        Fall worst = null;
        BrakeForce force = workings.model().service().force();
        for (PathGradient gradient : longFalls()) {
            double allowedMps =
                    Math.min(workings.model().speedMaxMps(), limits.lowestMps(gradient.fromM(), gradient.toM()));
            double heldMps = HeldSpeed.mps(force, workings.model().brakingBody(), -gradient.gradient(), allowedMps);
            boolean worse = worst == null || heldMps - allowedMps < worst.heldMps() - worst.allowedMps();
            if (heldMps < allowedMps - SLOWER_MPS && worse) {
                worst = new Fall(gradient, heldMps, allowedMps);
            }
        }
        return Optional.ofNullable(worst).map(this::phrase);
    }

    /** Hand brakes that would hold at walking pace a train which its working brake does not. */
    private Optional<Phrase> pinned() {
        BrakeForce force = workings.model().service().force();
        HoldingForces.Hand hand = new HoldingForces(workings).hand();
        if (hand.count() == 0) {
            return Optional.empty();
        }
        double eachN = hand.atSpeedN(WALKING_MPS);
        PathGradient worst = null;
        for (PathGradient gradient : longFalls()) {
            boolean steeper = worst == null || gradient.gradient() < worst.gradient();
            if (pins(gradient, force, eachN) > 0 && steeper) {
                worst = gradient;
            }
        }
        return Optional.ofNullable(worst).map(gradient -> {
            Step step = new Step(
                    StepKind.FORMULA,
                    "fall.pins",
                    "ceil(max(0, driving - brake) / each)",
                    List.of(
                            new Input(
                                    "driving",
                                    LongFall.drivingN(
                                            workings.model().brakingBody(), -gradient.gradient(), WALKING_MPS),
                                    "N",
                                    "fall:gravity"),
                            new Input("brake", force.forceN(WALKING_MPS), "N", "fall:brake"),
                            new Input("each", eachN, "N", "fall:pin")),
                    pins(gradient, force, eachN),
                    "",
                    "BALANCE");
            boolean enough = step.result() <= hand.count();
            return Phrase.of(
                    enough ? "today.pin-down" : "today.pin-down-short",
                    workings.place(gradient.fromM()),
                    workings.place(gradient.toM()),
                    workings.book().put("today.pins", Figure.of(List.of(step))),
                    workings.book().given("today.hand-brakes", hand.count(), "", "formation:hand-brakes"));
        });
    }

    private int pins(PathGradient gradient, BrakeForce force, double eachN) {
        return LongFall.pinned(
                workings.model().brakingBody(), -gradient.gradient(), WALKING_MPS, force.forceN(WALKING_MPS), eachN);
    }

    private List<PathGradient> longFalls() {
        return workings.inputs().path().gradients().stream()
                .filter(gradient -> -gradient.gradient() >= FALL)
                .filter(gradient -> gradient.toM() - gradient.fromM() >= FALL_LEAST_M)
                .toList();
    }

    /** A fall of some length on which the wheels would grow too hot at the speed of the forecast. */
    private Optional<Phrase> heat() {
        int wheels = workings.model().brakedWheels();
        PathGradient worst = null;
        double hottestW = LongFall.WHEEL_W;
        for (PathGradient gradient : longFalls()) {
            if (wheels > 0 && gradient.toM() - gradient.fromM() >= HEATING_M) {
                double speedMps = forecastMps(gradient.fromM(), gradient.toM());
                double heatW =
                        LongFall.heatPerWheelW(workings.model().brakingBody(), -gradient.gradient(), speedMps, wheels);
                if (heatW > hottestW) {
                    hottestW = heatW;
                    worst = gradient;
                }
            }
        }
        return Optional.ofNullable(worst).map(gradient -> heat(gradient, wheels));
    }

    private Phrase heat(PathGradient gradient, int wheels) {
        double speedMps = forecastMps(gradient.fromM(), gradient.toM());
        double drivingN = LongFall.drivingN(workings.model().brakingBody(), -gradient.gradient(), speedMps);
        Step step = new Step(
                StepKind.FORMULA,
                "fall.heat",
                "driving * speed / wheels / 1000",
                List.of(
                        new Input("driving", drivingN, "N", "fall:gravity"),
                        new Input("speed", speedMps, "m/s", "run:speed"),
                        new Input("wheels", wheels, "", "formation:wheels")),
                drivingN * speedMps / wheels / 1000,
                "kW",
                "BALANCE");
        return Phrase.of(
                "today.drag-heat",
                workings.place(gradient.fromM()),
                workings.place(gradient.toM()),
                searched("today.drag-speed", speedMps, gradient.fromM()),
                workings.book().put("today.drag-heat", Figure.of(List.of(step))));
    }

    private Phrase phrase(Fall fall) {
        double fromM = fall.gradient().fromM();
        boolean over = forecastMps(fromM, fall.gradient().toM()) > fall.heldMps();
        Term place = workings.place(fromM);
        Term end = workings.place(fall.gradient().toM());
        return fall.heldMps() <= 0
                ? Phrase.of("today.not-braked-on-fall", place, end)
                : Phrase.of(
                        over ? "today.runaway" : "today.fall-speed",
                        place,
                        end,
                        searched("today.held-speed", fall.heldMps(), fromM));
    }

    private double forecastMps(double fromM, double toM) {
        Run run = workings.run();
        double most = 0;
        for (int i = 0; i < run.size(); i++) {
            if (run.positionM(i) >= fromM && run.positionM(i) <= toM) {
                most = Math.max(most, run.speedMps(i));
            }
        }
        return most;
    }

    /** A speed that was searched for, rounded down. */
    private Term searched(String key, double speedMps, double atM) {
        double value = workings.speeds().value(speedMps, atM);
        String unit = workings.speeds().unit(atM);
        Step found = new Step(
                StepKind.GIVEN,
                "braking.speed-found",
                "found",
                List.of(new Input("found", value, unit, "search:braking-speed")),
                value,
                unit,
                "SEARCH");
        Step down = new Step(
                StepKind.MARGIN,
                "braking.speed-down",
                "floor(speed)",
                List.of(new Input("speed", value, unit, "step:braking.speed-found")),
                Math.floor(value),
                unit,
                "SAFER");
        return workings.book().put(key, Figure.of(List.of(found, down)));
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
        Double sighting = distant.feature().sighting();
        LengthUnit unit = distant.feature().lengthUnit();
        double seenM = sighting == null || unit == null ? 0 : unit.metres(sighting);
        double fromM = Math.max(0, distant.fromM() - seenM);
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
                searched("today.distant-speed", speedMps, worst.distant().fromM()));
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
