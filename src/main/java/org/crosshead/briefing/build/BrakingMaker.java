package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.Braking;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathLimit;
import org.crosshead.route.SpeedUnit;
import org.jspecify.annotations.Nullable;

/**
 * Makes a braking point for every stop and every reduction of speed. The distance counts from the greatest speed allowed before it,
 * not from the forecast's, so that it is never too short for a train that runs faster than forecast.
 */
final class BrakingMaker {

    private static final double LESS_MPS = 0.5;
    private static final double BEFORE_M = 30;
    private static final double STARTING_M = 1_000;
    private static final double FASTER = 1.1;
    private static final double FORECAST_REACH_M = 2_000;
    private static final double RECOVERY_STEP_M = 10;

    private final Workings workings;
    private final GradientProfile profile;
    private final SpeedLimits limits;
    private final double margin;
    private final BrakingNeighbours neighbours;
    private final WarningBoards boards;
    private final TramwayRule tramway;

    BrakingMaker(Workings workings) {
        this.workings = workings;
        this.profile = workings.model().request().road().track().gradients();
        this.limits = workings.model().request().road().track().limits();
        this.margin = workings.inputs().policyValue(Policy.BRAKING_MARGIN);
        this.neighbours = new BrakingNeighbours(workings);
        this.boards = new WarningBoards(workings);
        this.tramway = new TramwayRule(workings);
    }

    /** What a row is called in the keys of its figures. */
    private record Label(String letter, int number) {

        String key() {
            return letter + number + ".";
        }
    }

    /** A place where the train must be slower; a stop ends nowhere. */
    private record Target(String kind, String number, double atM, double toMps, Phrase words, double endsM) {}

    List<BrakingRow> rows() {
        List<Target> targets = new ArrayList<>(stops());
        targets.addAll(reductions());
        targets.sort(Comparator.comparingDouble(Target::atM));
        List<BrakingRow> rows = new ArrayList<>();
        for (Target target : targets) {
            Approach approach = approachTo(target);
            if (approach.fromMps() > target.toMps() + LESS_MPS) {
                BrakingRow before = rows.isEmpty() ? null : rows.get(rows.size() - 1);
                rows.add(row(target, approach, before));
            }
        }
        return rows;
    }

    /** Returns a point for each stop signal on the path, from the greatest speed allowed there, without drawings. */
    List<BrakingRow> atDanger() {
        List<BrakingRow> rows = new ArrayList<>();
        for (PathFeature feature : workings.inputs().path().features()) {
            boolean stopSignal = feature.feature().kind() == FeatureKind.SIGNAL
                    && !BrakeSentences.isDistant(feature)
                    && feature.fromM() > BEFORE_M
                    && feature.fromM() <= workings.inputs().path().lengthM();
            if (stopSignal) {
                Target target = new Target(
                        "signal",
                        "",
                        feature.fromM(),
                        0,
                        Phrase.of("braking.signal", Term.text(feature.feature().name())),
                        Double.NaN);
                rows.add(row(target, sinceStop(target), new Label("g", rows.size() + 1), 1));
            }
        }
        return rows;
    }

    /** Soon after a booked stop a train has not yet the speed allowed: a tenth more than the forecast's is counted there. */
    private Approach sinceStop(Target signal) {
        double stopM = workings.model().request().calls().stream()
                .filter(Call::stops)
                .mapToDouble(Call::positionM)
                .filter(atM -> atM < signal.atM())
                .max()
                .orElse(0);
        Approach usual = approachTo(signal);
        if (signal.atM() - stopM > STARTING_M) {
            return usual;
        }
        double reachedMps = 0;
        for (int i = 0; i < workings.run().size(); i++) {
            double atM = workings.run().positionM(i);
            if (atM >= stopM && atM <= signal.atM()) {
                reachedMps = Math.max(reachedMps, workings.run().speedMps(i));
            }
        }
        double countedMps = Math.min(usual.allowedMps(), FASTER * reachedMps);
        return new Approach(countedMps, Math.min(countedMps, reachedMps));
    }

    private List<Target> stops() {
        List<Target> targets = new ArrayList<>();
        List<Call> calls = workings.model().request().calls();
        for (int i = 1; i < calls.size(); i++) {
            if (calls.get(i).stops()) {
                String name = workings.inputs().content().calls().get(i).place();
                targets.add(new Target(
                        "stop",
                        "",
                        calls.get(i).positionM(),
                        0,
                        Phrase.of("braking.stop", Term.text(name)),
                        Double.NaN));
            }
        }
        return targets;
    }

    private List<Target> reductions() {
        List<Target> targets = new ArrayList<>();
        double lastM = -1;
        for (PathLimit limit : workings.inputs().path().limits()) {
            boolean slower = limit.fromM() > BEFORE_M && limit.limitMps() < approach(limit.fromM()) - LESS_MPS;
            if (slower && limit.fromM() != lastM && isLeast(limit)) {
                lastM = limit.fromM();
                boolean temporary = limit.source() == PathLimit.Source.TEMPORARY;
                Term speed = workings.book()
                        .given(
                                "braked-for-" + Math.round(limit.fromM()),
                                limit.limit(),
                                unit(limit),
                                temporary ? "route:restriction" : "route:limit");
                String kind = temporary ? "temporary" : "permanent";
                targets.add(new Target(
                        kind,
                        temporary ? limit.number() : "",
                        limit.fromM(),
                        limit.limitMps(),
                        Phrase.of("braking." + kind, speed, Term.text(limit.number())),
                        limit.toM()));
            }
        }
        return targets;
    }

    private boolean isLeast(PathLimit limit) {
        return limits.limitAt(limit.fromM() + 1) >= limit.limitMps() - 0.01;
    }

    static String unit(PathLimit limit) {
        return limit.limitUnit() == SpeedUnit.KMH ? "km/h" : "mph";
    }

    private double approach(double atM) {
        double lengthM = workings.model().body().lengthM();
        double tailM = Math.max(0, atM - BEFORE_M - lengthM);
        return Math.min(workings.model().speedMaxMps(), limits.lowestMps(tailM, Math.max(0, atM - BEFORE_M)));
    }

    /**
     * The speeds before a target.
     *
     * @param allowedMps greatest allowed by limits, engines and vehicles
     * @param forecastMps greatest of the forecast over the last two kilometres
     */
    private record Approach(double allowedMps, double forecastMps) {

        double fromMps() {
            return Math.max(allowedMps, forecastMps);
        }
    }

    private Approach approachTo(Target target) {
        double forecastMps = 0;
        for (int i = 0; i < workings.run().size(); i++) {
            double beforeM = target.atM() - workings.run().positionM(i);
            if (beforeM > 0 && beforeM < FORECAST_REACH_M) {
                forecastMps = Math.max(forecastMps, workings.run().speedMps(i));
            }
        }
        return new Approach(
                approach(target.atM()), Math.min(forecastMps, workings.model().speedMaxMps()));
    }

    private BrakingRow row(Target target, Approach approach, @Nullable BrakingRow before) {
        Label label = new Label("b", before == null ? 1 : before.number() + 1);
        OptionalDouble share = before == null ? OptionalDouble.of(1) : shareLeft(target, approach, before);
        BrakingRow row = row(target, approach, label, share.orElse(1));
        List<Phrase> warnings = new ArrayList<>(row.warnings());
        double brakeAtM = row.brakeAt().positionM();
        if (before != null) {
            warnings.addAll(
                    share.isEmpty()
                            ? List.of(Phrase.of("braking.warning.together"))
                            : neighbours.warnings(before, brakeAtM, label.key()));
        }
        return new BrakingRow(
                row.number(),
                row.target(),
                row.targetWords(),
                row.targetPlace(),
                row.targetSpeed(),
                row.brakeAt(),
                row.speed(),
                row.serviceDistance(),
                row.emergencyDistance(),
                warnings,
                openAgain(target),
                new BrakingCurves(workings.model()).from(brakeAtM, approach.fromMps(), target.toMps()));
    }

    /**
     * Returns the share of its force that the brake has at the latest place where that is enough; none if at no place after it was let go
     * for the point before.
     */
    private OptionalDouble shareLeft(Target target, Approach approach, BrakingRow before) {
        for (double atM = brakeAtM(target, approach, 1); atM > 0; atM -= RECOVERY_STEP_M) {
            if (neighbours.isTogether(before, atM)) {
                return OptionalDouble.empty();
            }
            double share = neighbours.share(before, atM);
            if (share >= 1 || (share > 0 && brakeAtM(target, approach, share) >= atM)) {
                return OptionalDouble.of(share);
            }
        }
        return OptionalDouble.of(1);
    }

    /** Returns where a service application with so much of its force must be decided; 0 where it does not bring the train down. */
    private double brakeAtM(Target target, Approach approach, double share) {
        Distance service = distance(workings.model().service(share), approach.fromMps(), target);
        return service.slows() ? Math.max(0, target.atM() - margin * service.lengthM()) : 0;
    }

    private BrakingRow row(Target target, Approach approach, Label label, double share) {
        String key = label.key();
        double fromMps = approach.fromMps();
        List<Phrase> warnings = new ArrayList<>();
        Distance service = distance(workings.model().service(share), fromMps, target);
        Distance emergency =
                longer(distance(workings.model().emergency(), fromMps, target), byBrakedWeight(fromMps, target));
        double wantedM = service.slows() ? margin * service.lengthM() : 0;
        if (!service.slows()) {
            warnings.add(Phrase.of("braking.warning.not-enough"));
        } else if (wantedM > target.atM()) {
            warnings.add(Phrase.of(
                    target.kind().equals("signal")
                            ? "braking.warning.signal-near"
                            : "braking.warning.begins-before-path"));
        }
        double brakeAtM = Math.max(0, target.atM() - wantedM);
        boolean reduced = target.toMps() > 0;
        if (reduced) {
            boards.warning(key, target.number(), target.atM(), brakeAtM).ifPresent(warnings::add);
        } else if (emergency.slows()) {
            tramway.warning(key, fromMps, emergency.brakedM(), target.atM()).ifPresent(warnings::add);
        }
        return new BrakingRow(
                label.number(),
                target.kind(),
                target.words(),
                workings.placeAt(target.atM()),
                workings.limit(key + "target", target.toMps(), target.atM()),
                workings.placeAt(brakeAtM),
                workings.book().put(key + "speed", speedFigure(approach, target.atM())),
                term(key + "service", service, fromMps, true),
                term(key + "emergency", emergency, fromMps, false),
                warnings,
                null,
                null);
    }

    /** Where the tail has cleared a reduction, if more is allowed from there on. */
    private @Nullable Place openAgain(Target target) {
        double clearM = target.endsM() + workings.model().body().lengthM();
        boolean onPath = clearM < workings.inputs().path().lengthM();
        return onPath && limits.limitAt(target.endsM() + 1) > target.toMps() + LESS_MPS
                ? workings.placeAt(clearM)
                : null;
    }

    private Term term(String key, Distance distance, double fromMps, boolean withMargin) {
        return distance.slows()
                ? workings.book().put(key, figure(distance, fromMps, withMargin))
                : Term.text("braking.unknown");
    }

    /** An application from where it must be decided; null parts where the brake does not bring the train down. */
    private record Distance(Application application, TrainBody body, double startM, Braking braking) {

        boolean slows() {
            return braking instanceof Braking.Slows;
        }

        double lengthM() {
            return ((Braking.Slows) braking).distanceM();
        }

        /** Without the time to act. */
        double brakedM() {
            return lengthM() - ((Braking.Slows) braking).reactionM();
        }
    }

    private Distance distance(Application application, double fromMps, Target target) {
        return distance(application, workings.model().brakingBody(), fromMps, target);
    }

    private Distance distance(Application application, TrainBody body, double fromMps, Target target) {
        double onM = StoppingDistance.brakeOnM(application, body, profile, target.atM(), fromMps, target.toMps());
        double startM = Double.isNaN(onM) ? profile.startM() : onM;
        return new Distance(
                application,
                body,
                startM,
                StoppingDistance.forward(application, body, profile, startM, fromMps, target.toMps()));
    }

    /** The same by the standard's rule, where it can be used. */
    private Optional<Distance> byBrakedWeight(double fromMps, Target target) {
        OptionalDouble percent = workings.model().brakedPercent();
        TrainBody body = BrakedWeight.body(workings.model().body());
        return percent.isEmpty()
                ? Optional.empty()
                : Optional.of(distance(
                        BrakedWeight.emergency(workings.model().emergency(), percent.getAsDouble(), body),
                        body,
                        fromMps,
                        target));
    }

    /** Where two rules differ, the longer counts. */
    private static Distance longer(Distance own, Optional<Distance> other) {
        boolean otherLonger = other.isPresent()
                && own.slows()
                && (!other.get().slows() || other.get().lengthM() > own.lengthM());
        return otherLonger ? other.get() : own;
    }

    private Figure speedFigure(Approach approach, double atM) {
        double toShown = workings.speeds().value(1, atM);
        Step step = new Step(
                StepKind.FORMULA,
                "braking.from-speed",
                "max(allowed, forecast) * unit",
                List.of(
                        new Input("allowed", approach.allowedMps(), "m/s", "route:limit"),
                        new Input("forecast", approach.forecastMps(), "m/s", "run:speed"),
                        new Input("unit", toShown, workings.speeds().unit(atM) + " per m/s", "UNITS")),
                approach.fromMps() * toShown,
                workings.speeds().unit(atM),
                "SAFER");
        return Figure.of(List.of(step));
    }

    /** Returns the distance as it is told there, with its parts; with the margin for a service application, bare for an emergency. */
    private Figure figure(Distance distance, double fromMps, boolean withMargin) {
        Braking.Slows slows = (Braking.Slows) distance.braking();
        List<Step> steps = new ArrayList<>();
        steps.add(deceleration(distance, fromMps));
        double sumM = slows.reactionM() + slows.buildUpM() + slows.fullM();
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.sum",
                "acting + building + braked",
                List.of(
                        new Input("acting", slows.reactionM(), "m", "policy:" + Policy.REACTION_TIME),
                        new Input("building", slows.buildUpM(), "m", "integration:build-up"),
                        new Input("braked", slows.fullM(), "m", "integration:braking")),
                sumM,
                "m",
                "INTEGRATION"));
        double shownM = withMargin ? margin * sumM : sumM;
        if (withMargin) {
            steps.add(new Step(
                    StepKind.MARGIN,
                    "braking.margin",
                    "sum * margin",
                    List.of(
                            new Input("sum", sumM, "m", "step:braking.sum"),
                            new Input("margin", margin, "", "policy:" + Policy.BRAKING_MARGIN)),
                    shownM,
                    "m",
                    "policy:" + Policy.BRAKING_MARGIN));
        }
        String before = withMargin ? "braking.margin" : "braking.sum";
        double unitM = workings.speeds().distanceUnitM(distance.startM());
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.told",
                "distance / unit",
                List.of(new Input("distance", shownM, "m", "step:" + before), new Input("unit", unitM, "m", "UNITS")),
                shownM / unitM,
                workings.speeds().distanceUnit(distance.startM()),
                "UNITS"));
        return Figure.of(steps);
    }

    private Step deceleration(Distance distance, double fromMps) {
        TrainBody body = distance.body();
        boolean own = !body.resistance().equals(RunningResistance.NONE);
        double brakeN = distance.application().force().forceN(fromMps);
        double resistanceN = body.resistance().forceN(fromMps);
        double gravityN = body.massKg() * Units.GRAVITY_MPS2 * profile.meanGradient(distance.startM(), body.lengthM());
        return new Step(
                StepKind.FORMULA,
                "braking.deceleration",
                "(brake + resistance + gravity) / inertia",
                List.of(
                        new Input("brake", brakeN, "N", own ? "F1" : "SUBSET-026-3"),
                        new Input("resistance", resistanceN, "N", own ? "RESISTANCE" : "own:in-deceleration"),
                        new Input("gravity", gravityN, "N", "route:gradient"),
                        new Input("inertia", body.inertiaKg(), "kg", "formation:mass")),
                (brakeN + resistanceN + gravityN) / body.inertiaKg(),
                "m/s2",
                "BALANCE");
    }
}
