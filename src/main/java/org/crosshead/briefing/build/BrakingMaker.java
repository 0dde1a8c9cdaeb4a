package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.units.Units;
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
    private static final double FORECAST_REACH_M = 2_000;

    private final Workings workings;
    private final GradientProfile profile;
    private final SpeedLimits limits;
    private final double margin;

    BrakingMaker(Workings workings) {
        this.workings = workings;
        this.profile = workings.model().request().road().track().gradients();
        this.limits = workings.model().request().road().track().limits();
        this.margin = workings.inputs().policyValue(Policy.BRAKING_MARGIN);
    }

    /** A place where the train must be slower; a stop ends nowhere. */
    private record Target(String kind, double atM, double toMps, Phrase words, double endsM) {}

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

    private List<Target> stops() {
        List<Target> targets = new ArrayList<>();
        List<Call> calls = workings.model().request().calls();
        for (int i = 1; i < calls.size(); i++) {
            if (calls.get(i).stops()) {
                String name = workings.inputs().content().calls().get(i).place();
                targets.add(new Target(
                        "stop", calls.get(i).positionM(), 0, Phrase.of("braking.stop", Term.text(name)), Double.NaN));
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
        int number = before == null ? 1 : before.number() + 1;
        String key = "b" + number + ".";
        double fromMps = approach.fromMps();
        List<Phrase> warnings = new ArrayList<>();
        Distance service = distance(workings.model().service(), fromMps, target);
        Distance emergency = distance(workings.model().emergency(), fromMps, target);
        double wantedM = service.slows() ? margin * service.lengthM() : 0;
        if (!service.slows()) {
            warnings.add(Phrase.of("braking.warning.not-enough"));
        } else if (wantedM > target.atM()) {
            warnings.add(Phrase.of("braking.warning.begins-before-path"));
        }
        double brakeAtM = Math.max(0, target.atM() - wantedM);
        if (before != null) {
            new BrakingNeighbours(workings).warnings(before, brakeAtM, key).forEach(warnings::add);
        }
        return new BrakingRow(
                number,
                target.kind(),
                target.words(),
                workings.placeAt(target.atM()),
                workings.limit("b" + number + ".target", target.toMps(), target.atM()),
                workings.placeAt(brakeAtM),
                workings.book().put(key + "speed", speedFigure(approach, target.atM())),
                term(key + "service", service, fromMps, true),
                term(key + "emergency", emergency, fromMps, false),
                warnings,
                openAgain(target),
                new BrakingCurves(workings.model()).from(brakeAtM, fromMps, target.toMps()));
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
    private record Distance(Application application, double startM, Braking braking) {

        boolean slows() {
            return braking instanceof Braking.Slows;
        }

        double lengthM() {
            return ((Braking.Slows) braking).distanceM();
        }
    }

    private Distance distance(Application application, double fromMps, Target target) {
        double onM = StoppingDistance.brakeOnM(
                application, workings.model().brakingBody(), profile, target.atM(), fromMps, target.toMps());
        double startM = Double.isNaN(onM) ? profile.startM() : onM;
        return new Distance(
                application,
                startM,
                StoppingDistance.forward(
                        application, workings.model().brakingBody(), profile, startM, fromMps, target.toMps()));
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

    /** Returns the distance in yards with its parts; with the margin for a service application, bare for an emergency. */
    private Figure figure(Distance distance, double fromMps, boolean withMargin) {
        Braking.Slows slows = (Braking.Slows) distance.braking();
        List<Step> steps = new ArrayList<>();
        steps.add(deceleration(distance.application(), fromMps, distance.startM()));
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
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.yards",
                "distance / yard",
                List.of(
                        new Input("distance", shownM, "m", "step:" + before),
                        new Input("yard", Units.metresFromYards(1), "m", "UNITS")),
                shownM / Units.metresFromYards(1),
                "yd",
                "UNITS"));
        return Figure.of(steps);
    }

    private Step deceleration(Application application, double fromMps, double atM) {
        double brakeN = application.force().forceN(fromMps);
        double resistanceN = workings.model().brakingBody().resistance().forceN(fromMps);
        double gravityN = workings.model().body().massKg()
                * Units.GRAVITY_MPS2
                * profile.meanGradient(atM, workings.model().body().lengthM());
        double inertiaKg = workings.model().body().inertiaKg();
        return new Step(
                StepKind.FORMULA,
                "braking.deceleration",
                "(brake + resistance + gravity) / inertia",
                List.of(
                        new Input("brake", brakeN, "N", "F1"),
                        new Input("resistance", resistanceN, "N", "RESISTANCE"),
                        new Input("gravity", gravityN, "N", "route:gradient"),
                        new Input("inertia", inertiaKg, "kg", "formation:mass")),
                (brakeN + resistanceN + gravityN) / inertiaKg,
                "m/s2",
                "BALANCE");
    }
}
