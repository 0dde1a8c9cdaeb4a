package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.Phrase;
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

/**
 * Makes a braking point for every stop and every reduction of speed. The distance counts from the greatest speed allowed before it,
 * not from the forecast's, so that it is never too short for a train that runs faster than forecast.
 */
final class BrakingMaker {

    private static final double LESS_MPS = 0.5;
    private static final double BEFORE_M = 30;

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

    /** A place where the train must be slower. */
    private record Target(String kind, double atM, double toMps, Phrase words) {}

    List<BrakingRow> rows() {
        List<Target> targets = new ArrayList<>(stops());
        targets.addAll(reductions());
        targets.sort(java.util.Comparator.comparingDouble(Target::atM));
        List<BrakingRow> rows = new ArrayList<>();
        for (Target target : targets) {
            double fromMps = approachMps(target);
            if (fromMps > target.toMps() + LESS_MPS) {
                rows.add(row(target, fromMps, rows.size() + 1));
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
                targets.add(
                        new Target("stop", calls.get(i).positionM(), 0, Phrase.of("braking.stop", Term.text(name))));
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
                Term speed = Term.number(limit.limit(), unit(limit));
                String kind = limit.source() == PathLimit.Source.TEMPORARY ? "temporary" : "permanent";
                targets.add(new Target(
                        kind,
                        limit.fromM(),
                        limit.limitMps(),
                        Phrase.of("braking." + kind, speed, Term.text(limit.number()))));
            }
        }
        return targets;
    }

    private boolean isLeast(PathLimit limit) {
        return limits.limitAt(limit.fromM() + 1) >= limit.limitMps() - 0.01;
    }

    static String unit(PathLimit limit) {
        return limit.limitUnit() == org.crosshead.route.SpeedUnit.KMH ? "km/h" : "mph";
    }

    private double approach(double atM) {
        double lengthM = workings.model().body().lengthM();
        double tailM = Math.max(0, atM - BEFORE_M - lengthM);
        return Math.min(workings.model().speedMaxMps(), limits.lowestMps(tailM, Math.max(0, atM - BEFORE_M)));
    }

    private double approachMps(Target target) {
        double forecastMps = 0;
        for (int i = 0; i < workings.run().size(); i++) {
            double beforeM = target.atM() - workings.run().positionM(i);
            if (beforeM > 0 && beforeM < 2_000) {
                forecastMps = Math.max(forecastMps, workings.run().speedMps(i));
            }
        }
        return Math.max(
                approach(target.atM()), Math.min(forecastMps, workings.model().speedMaxMps()));
    }

    private BrakingRow row(Target target, double fromMps, int number) {
        Application service = workings.model().service();
        Application emergency = workings.model().emergency();
        String key = "b" + number + ".";
        double onM = StoppingDistance.brakeOnM(
                service, workings.model().body(), profile, target.atM(), fromMps, target.toMps());
        List<Phrase> warnings = new ArrayList<>();
        double bareM = Double.isNaN(onM) ? target.atM() : target.atM() - onM;
        if (Double.isNaN(onM)) {
            warnings.add(Phrase.of("braking.warning.not-enough"));
        }
        double brakeAtM = Math.max(0, target.atM() - margin * bareM);
        if (target.atM() - margin * bareM < 0) {
            warnings.add(Phrase.of("braking.warning.begins-before-path"));
        }
        Term serviceTerm = workings.book().put(key + "service", figure(service, onM, fromMps, target, true));
        Term emergencyTerm = workings.book().put(key + "emergency", figure(emergency, onM, fromMps, target, false));
        double forecastMps = workings.run().endM() > brakeAtM
                ? workings.run().at(Math.max(workings.run().startM(), brakeAtM)).speedMps()
                : 0;
        return new BrakingRow(
                number,
                target.kind(),
                target.words(),
                workings.placeAt(target.atM()),
                workings.speedOf(target.toMps(), target.atM()),
                workings.placeAt(brakeAtM),
                workings.book().put(key + "speed", speedFigure(fromMps, forecastMps, target.atM())),
                serviceTerm,
                emergencyTerm,
                List.of(
                        Phrase.of("braking.assumption.from", workings.speedOf(fromMps, target.atM())),
                        Phrase.of("braking.assumption.forecast", workings.speedOf(forecastMps, target.atM()))),
                warnings);
    }

    private Figure speedFigure(double fromMps, double forecastMps, double atM) {
        double toShown = workings.speeds().value(1, atM);
        Step step = new Step(
                StepKind.FORMULA,
                "braking.from-speed",
                "max(allowed, forecast) * unit",
                List.of(
                        new Input("allowed", fromMps, "m/s", "route:limit"),
                        new Input("forecast", Math.min(fromMps, forecastMps), "m/s", "run:speed"),
                        new Input("unit", toShown, workings.speeds().unit(atM) + " per m/s", "UNITS")),
                Math.max(fromMps, Math.min(fromMps, forecastMps)) * toShown,
                workings.speeds().unit(atM),
                "SAFER");
        return Figure.of(List.of(step));
    }

    /** Returns the distance in yards with its parts; with the margin for a service application, bare for an emergency. */
    private Figure figure(Application application, double onM, double fromMps, Target target, boolean withMargin) {
        double startM = Double.isNaN(onM) ? target.atM() : onM;
        Braking braking = StoppingDistance.forward(
                application, workings.model().body(), profile, startM, fromMps, target.toMps());
        double reactionM = application.reactionS() * fromMps;
        double restM = braking instanceof Braking.Slows slows
                ? slows.distanceM() - reactionM
                : ((Braking.DoesNotSlow) braking).positionM();
        List<Step> steps = new ArrayList<>();
        steps.add(deceleration(application, fromMps, startM));
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.reaction",
                "speed * reaction",
                List.of(
                        new Input("speed", fromMps, "m/s", "route:limit"),
                        new Input("reaction", application.reactionS(), "s", "policy:" + Policy.REACTION_TIME)),
                reactionM,
                "m",
                "KINEMATICS"));
        double sumM = reactionM + restM;
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.sum",
                "reactionM + brakedM",
                List.of(
                        new Input("reactionM", reactionM, "m", "step:braking.reaction"),
                        new Input("brakedM", restM, "m", "integration:braking")),
                sumM,
                "m",
                "INTEGRATION"));
        double marginM = withMargin ? margin * sumM : sumM;
        if (withMargin) {
            steps.add(new Step(
                    StepKind.MARGIN,
                    "braking.margin",
                    "sum * margin",
                    List.of(
                            new Input("sum", sumM, "m", "step:braking.sum"),
                            new Input("margin", margin, "", "policy:" + Policy.BRAKING_MARGIN)),
                    marginM,
                    "m",
                    "policy:" + Policy.BRAKING_MARGIN));
        }
        String before = withMargin ? "braking.margin" : "braking.sum";
        steps.add(new Step(
                StepKind.FORMULA,
                "braking.yards",
                "distance / yard",
                List.of(
                        new Input("distance", marginM, "m", "step:" + before),
                        new Input("yard", Units.metresFromYards(1), "m", "UNITS")),
                marginM / Units.metresFromYards(1),
                "yd",
                "UNITS"));
        return Figure.of(steps);
    }

    private Step deceleration(Application application, double fromMps, double atM) {
        double brakeN = application.force().forceN(fromMps);
        double resistanceN = workings.model().body().resistance().forceN(fromMps);
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
                        new Input("resistance", resistanceN, "N", "DAVIS"),
                        new Input("gravity", gravityN, "N", "route:gradient"),
                        new Input("inertia", inertiaKg, "kg", "formation:mass")),
                (brakeN + resistanceN + gravityN) / inertiaKg,
                "m/s2",
                "BALANCE");
    }
}
