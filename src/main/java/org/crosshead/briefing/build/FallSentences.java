package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakeForce;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.ContinuousBrake.Means;
import org.crosshead.kernel.braking.HeldSpeed;
import org.crosshead.kernel.braking.LongFall;
import org.crosshead.kernel.braking.Release;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.PathGradient;
import org.jspecify.annotations.Nullable;

/** Says what the long falls of the path ask of the brake: the speed it holds, hand brakes, heat, and letting it go too often. */
final class FallSentences {

    private static final double FALL = 1.0 / 200;
    private static final double FALL_LEAST_M = 300;
    private static final double SLOWER_MPS = 0.5;
    private static final double WALKING_MPS = Units.mpsFromMph(3);
    /** Shorter falls warm the wheels less than they can take up. */
    private static final double HEATING_M = 2_000;

    private static final double LET_GO_BELOW_MPS = Units.mpsFromMph(5);
    /** Of the brake's force: with so much left nothing is said. */
    private static final double ENOUGH_LEFT = 0.9;

    private static final double PER_CENT = 100;

    private final Workings workings;
    private final SpeedLimits limits;

    FallSentences(Workings workings) {
        this.workings = workings;
        this.limits = workings.model().request().road().track().limits();
    }

    List<Phrase> found() {
        List<Phrase> found = new ArrayList<>();
        runaway().ifPresent(found::add);
        pinned().ifPresent(found::add);
        heat().ifPresent(found::add);
        cycled().ifPresent(found::add);
        return found;
    }

    /** What the railway's own table asks for where the train is left without its engine, told for the steepest length of the path. */
    Optional<Phrase> parked() {
        OwnHandBrakes rule = OwnHandBrakes.standing(workings);
        HoldingForces holding = new HoldingForces(workings);
        HoldingForces.Hand hand = holding.hand();
        PathGradient steepest = workings.inputs().path().gradients().stream()
                .max(Comparator.comparingDouble(gradient -> Math.abs(holding.slope(gradient.toM()))))
                .orElseThrow();
        OptionalInt ruled = rule.brakes(holding.slope(steepest.toM()));
        if (ruled.isEmpty() || hand.count() == 0 || ruled.getAsInt() == 0) {
            return Optional.empty();
        }
        Figure figure = Figure.of(holding.countSteps(steepest.toM(), hand, ruled));
        return Optional.of(Phrase.of(
                figure.value() <= hand.count() ? "today.left-standing" : "today.left-standing-short",
                workings.place(steepest.toM()),
                workings.book().put("today.left-standing", figure),
                workings.book().given("today.left-standing-have", hand.count(), "", "formation:hand-brakes")));
    }

    /** The fall on which the service brake holds least of the speed allowed. */
    private record Fall(PathGradient gradient, double heldMps, double allowedMps) {}

    private Optional<Phrase> runaway() {
        Fall worst = null;
        BrakeForce force = workings.model().heldLong();
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

    /**
     * Hand brakes that would hold at walking pace a train which its working brake does not, or that the railway's own table asks for
     * before a fall, whichever is more.
     */
    private Optional<Phrase> pinned() {
        BrakeForce force = workings.model().heldLong();
        HoldingForces.Hand hand = new HoldingForces(workings).hand();
        OwnHandBrakes rule = OwnHandBrakes.pinned(workings);
        PathGradient worst = steepestPinned(gradient -> ruled(rule, gradient) > 0
                || (hand.count() > 0 && pins(gradient, force, hand.heldLongN(WALKING_MPS)) > 0));
        if (worst == null) {
            return Optional.empty();
        }
        if (hand.count() == 0) {
            return Optional.of(Phrase.of(
                    "today.pin-down-ruled",
                    workings.place(worst.fromM()),
                    workings.place(worst.toM()),
                    workings.book().given("today.pins", ruled(rule, worst), "", "policy:pinned-wagons")));
        }
        double eachN = hand.heldLongN(WALKING_MPS);
        Step balance = new Step(
                StepKind.FORMULA,
                "fall.pins",
                "ceil(max(0, driving - brake) / each)",
                List.of(
                        new Input(
                                "driving",
                                LongFall.drivingN(workings.model().brakingBody(), -worst.gradient(), WALKING_MPS),
                                "N",
                                "fall:gravity"),
                        new Input("brake", force.forceN(WALKING_MPS), "N", "fall:brake"),
                        new Input("each", eachN, "N", "fall:pin")),
                pins(worst, force, eachN),
                "",
                "BALANCE");
        List<Step> steps = new ArrayList<>(List.of(balance));
        rule.brakes(worst.gradient()).ifPresent(brakes -> steps.add(OwnHandBrakes.step(balance, brakes)));
        Figure figure = Figure.of(steps);
        String needed = balance.result() > 0 ? "today.pin-down" : "today.pin-down-rule";
        return Optional.of(Phrase.of(
                figure.value() <= hand.count() ? needed : "today.pin-down-short",
                workings.place(worst.fromM()),
                workings.place(worst.toM()),
                workings.book().put("today.pins", figure),
                workings.book().given("today.hand-brakes", hand.count(), "", "formation:hand-brakes")));
    }

    private @Nullable PathGradient steepestPinned(Predicate<PathGradient> pinned) {
        return longFalls().stream()
                .filter(pinned)
                .min(Comparator.comparingDouble(PathGradient::gradient))
                .orElse(null);
    }

    private static int ruled(OwnHandBrakes rule, PathGradient gradient) {
        return rule.brakes(gradient.gradient()).orElse(0);
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
                workings.slowEnough("today.drag-speed", speedMps, gradient.fromM()),
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
                        workings.slowEnough("today.held-speed", fall.heldMps(), fromM));
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

    /** A long fall on which letting the brake go and applying it again would use it up. */
    private Optional<Phrase> cycled() {
        ContinuousBrake brake = workings.model().brake();
        boolean keepsReserve = brake.means() != Means.VACUUM && brake.means() != Means.AIR;
        PathGradient worst = null;
        LongFall.Cycling least = null;
        for (PathGradient gradient : keepsReserve ? List.<PathGradient>of() : longFalls()) {
            double highMps = forecastMps(gradient.fromM(), gradient.toM());
            if (gradient.toM() - gradient.fromM() < HEATING_M || highMps <= 2 * LET_GO_BELOW_MPS) {
                continue;
            }
            LongFall.Cycling cycling = LongFall.cycling(
                            workings.model().brakingBody(),
                            -gradient.gradient(),
                            gradient.toM() - gradient.fromM(),
                            workings.model().heldLong(),
                            workings.inputs().policyValue(Policy.SERVICE_SHARE),
                            new LongFall.Speeds(highMps - LET_GO_BELOW_MPS, highMps),
                            Release.recoverS(brake))
                    .orElse(null);
            boolean worse = cycling != null && (least == null || cycling.shareLeft() < least.shareLeft());
            if (worse) {
                least = cycling;
                worst = gradient;
            }
        }
        return least == null || worst == null || least.shareLeft() > ENOUGH_LEFT
                ? Optional.empty()
                : Optional.of(cycled(worst, least, Release.recoverS(brake)));
    }

    private Phrase cycled(PathGradient gradient, LongFall.Cycling cycling, double recoverS) {
        return Phrase.of(
                "today.drag-cycle",
                workings.place(gradient.fromM()),
                workings.place(gradient.toM()),
                given("off", cycling.offS(), "sec"),
                given("recover", recoverS, "sec"),
                given("applications", cycling.applications(), ""),
                given("left", PER_CENT * cycling.shareLeft(), "%"));
    }

    private Term given(String what, double value, String unit) {
        return workings.book().given("today.cycle-" + what, value, unit, "own:cycling");
    }
}
