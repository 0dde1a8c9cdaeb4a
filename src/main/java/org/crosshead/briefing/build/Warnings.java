package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.PathCurve;
import org.crosshead.route.PathLimit;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.figure.ClassFigure;

/** What must stand before everything else: water, coal and brakes that do not suffice. */
final class Warnings {

    private static final double UNCOVERED_M = 30;
    private static final double CURVE_READ_M = 0.5;

    private final Workings workings;
    private final Run run;

    Warnings(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
    }

    List<Phrase> found() {
        List<Phrase> found = new ArrayList<>();
        List<EngineAtWork> engines = workings.model().request().train().engines();
        for (int i = 0; i < engines.size(); i++) {
            String number = workings.inputs().engines().get(i).turn().engineNumber();
            boiler(found, engines.get(i), i, number);
            tank(found, engines.get(i), i, number);
            if (run.coalTotalKg(i) > engines.get(i).supply().coalKg()) {
                found.add(Phrase.of("today.no-coal", Term.text(number)));
            }
        }
        new CrownMaker(workings).sentence().ifPresent(found::add);
        curves(found);
        brakes(found);
        limits(found);
        if (workings.needsMomentum()) {
            found.add(Phrase.of("today.momentum"));
        }
        return found;
    }

    private void boiler(List<Phrase> found, EngineAtWork engine, int index, String number) {
        Boiler boiler = engine.engine().parameters().boiler();
        int lowest = run.lowestWater(index);
        if (run.waterKg(lowest, index) < boiler.waterLeastKg()) {
            found.add(Phrase.of("today.low-water", Term.text(number), workings.place(run.positionM(lowest))));
        }
        int lowestPressure = run.lowestPressure(index);
        double pressurePa = run.pressurePa(lowestPressure, index);
        boiler.pressureLeastPa().ifPresent(leastPa -> {
            if (pressurePa < leastPa) {
                String key = "today.low-pressure" + index;
                found.add(Phrase.of(
                        "today.low-pressure",
                        Term.text(number),
                        workings.book().pressure(key, run, lowestPressure, index),
                        workings.place(run.positionM(lowestPressure)),
                        workings.book()
                                .given(key + ".least", Units.psiFromPa(leastPa), "psi", "class:pressure-least")));
            }
        });
    }

    private void tank(List<Phrase> found, EngineAtWork engine, int index, String number) {
        int lowest = run.lowestTankWater(index);
        double leftKg = run.tankWaterKg(lowest, index);
        double reserveKg = workings.inputs().policyValue(Policy.WATER_RESERVE)
                * engine.supply().tankFullKg();
        if (leftKg <= 0) {
            found.add(Phrase.of("today.tank-empty", Term.text(number), workings.place(run.positionM(lowest))));
        } else if (leftKg < reserveKg) {
            found.add(Phrase.of(
                    "today.tank-reserve",
                    Term.text(number),
                    workings.place(run.positionM(lowest)),
                    gallons("today.tank-left-" + number, leftKg, "run:supplies"),
                    gallons("today.tank-reserve-" + number, reserveKg, "policy:water.reserve-share")));
        }
    }

    private Term gallons(String key, double kg, String source) {
        double gallonKg = Units.kgFromGallons(1);
        Step step = new Step(
                StepKind.FORMULA,
                "water.gallons",
                "water / gallon",
                List.of(new Input("water", kg, "kg", source), new Input("gallon", gallonKg, "kg for 1 gal", "UNITS")),
                kg / gallonKg,
                "gal",
                "UNITS");
        return workings.book().put(key, Figure.of(List.of(step)));
    }

    /** Says which engine meets a curve sharper than the least of its class, at the sharpest of them. */
    private void curves(List<Phrase> found) {
        Optional<PathCurve> sharpest =
                workings.inputs().path().curves().stream().min(Comparator.comparingDouble(PathCurve::radiusM));
        if (sharpest.isEmpty()) {
            return;
        }
        PathCurve curve = sharpest.get();
        for (EngineAtTrain engine : workings.inputs().engines()) {
            StockModel.known(engine.ofClass(), engine.engine())
                    .si(ClassFigure.MIN_CURVE)
                    .filter(leastM -> curve.radiusM() < leastM - CURVE_READ_M)
                    .ifPresent(leastM -> found.add(Phrase.of(
                            "today.curve",
                            Term.text(engine.turn().engineNumber()),
                            workings.place(curve.fromM()),
                            radius("today.curve", curve.radiusM(), curve, "route:curve"),
                            radius(
                                    "today.curve-least-" + engine.turn().engineNumber(),
                                    leastM,
                                    curve,
                                    "class:min-curve"))));
        }
    }

    private Term radius(String key, double radiusM, PathCurve curve, String source) {
        return curve.radiusUnit() == LengthUnit.METRES
                ? workings.book().given(key, radiusM, "m", source)
                : workings.book().given(key, Units.chainsFromMetres(radiusM), "chains", source);
    }

    private void brakes(List<Phrase> found) {
        TrainInputs.Consist consist = workings.inputs().consist();
        if (consist == null) {
            return;
        }
        BrakeKind vehicles = StockModel.trainBrake(consist.formation().content(), consist.kinds());
        BrakeKind engine =
                workings.inputs().engines().get(0).ofClass().content().trainBrake();
        if (vehicles != BrakeKind.NONE && vehicles != engine) {
            found.add(Phrase.of("today.brake-mismatch"));
            return;
        }
        TrainKind kind = workings.inputs().content().kind();
        boolean wantsBrake = kind == TrainKind.PASSENGER || kind == TrainKind.FITTED_GOODS;
        FormationFigures.Resolved figures = consist.figures();
        if (wantsBrake && figures != null) {
            double unbraked = (double) figures.vehicles().stream()
                    .filter(vehicle -> !vehicle.braked())
                    .count();
            if (unbraked > 0) {
                found.add(Phrase.of("today.not-braked", Term.number(unbraked, "")));
            }
        }
    }

    /** Says where the road has no limit laid down: unknown is told, not taken for free. */
    private void limits(List<Phrase> found) {
        List<PathLimit> limits = workings.inputs().path().limits();
        double coveredM = 0;
        for (PathLimit limit : limits) {
            if (limit.fromM() > coveredM + UNCOVERED_M) {
                break;
            }
            coveredM = Math.max(coveredM, limit.toM());
        }
        if (coveredM < workings.inputs().path().lengthM() - UNCOVERED_M) {
            double fromM = coveredM;
            double next = limits.stream()
                    .mapToDouble(PathLimit::fromM)
                    .filter(from -> from > fromM)
                    .min()
                    .orElse(workings.inputs().path().lengthM());
            found.add(Phrase.of("today.no-limit", workings.place(fromM), workings.place(next)));
        }
    }
}
