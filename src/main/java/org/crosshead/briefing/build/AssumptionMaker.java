package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.build.TrainInputs.Consist;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakeReading;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.PlanCost;
import org.crosshead.kernel.scatter.Spread;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathEstimate;
import org.crosshead.route.PathGeometry;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EstimateUsed;
import org.crosshead.stock.FormationFigures;
import org.jspecify.annotations.Nullable;

/** Says what a briefing rests on: rules, estimates that were accepted, and what is left out. */
final class AssumptionMaker {

    private static final double HOUR_S = 3_600;
    private static final double PER_CENT = 100;

    private final TrainInputs inputs;

    AssumptionMaker(TrainInputs inputs) {
        this.inputs = inputs;
    }

    /**
     * Returns what the briefing rests on.
     *
     * @param workings null where nothing could be computed
     */
    List<Phrase> made(@Nullable Workings workings) {
        List<Phrase> assumptions = new ArrayList<>();
        assumptions.add(Phrase.of(
                "assumption.rail", Term.text("rail." + inputs.content().rail().name())));
        assumptions.add(Phrase.of("assumption.resistance"));
        assumptions.add(Phrase.of("assumption.adhesion"));
        assumptions.add(Phrase.of("assumption.slip"));
        assumptions.add(Phrase.of("assumption.engine"));
        heating(assumptions);
        crown(assumptions);
        assumptions.add(Phrase.of("assumption.brake"));
        reading(assumptions);
        if (workings != null) {
            brakedWeight(workings.model(), assumptions);
            assumptions.addAll(new AxleRule(workings.model(), inputs.path().gradients()).told());
        }
        assumptions.addAll(crew(workings));
        if (workings != null && workings.outcome() instanceof RunOutcome.Arrives) {
            assumptions.add(scatter());
        }
        for (EngineAtTrain engine : inputs.engines()) {
            if (engine.figures() != null) {
                engine.figures().estimates().forEach(used -> assumptions.add(estimate(used)));
            }
        }
        Consist consist = inputs.consist();
        if (consist != null && consist.figures() != null) {
            consist.figures().estimates().forEach(used -> assumptions.add(estimate(used)));
        }
        if (!inputs.path().reversalsM().isEmpty()) {
            assumptions.add(Phrase.of("assumption.reversal"));
        }
        inputs.path().estimates().stream()
                .filter(PathEstimate::accepted)
                .map(estimate -> estimate("assumption", estimate, inputs.path()))
                .forEach(assumptions::add);
        troughs(assumptions);
        return assumptions;
    }

    /** Says by which rules the emergency distances were worked out. */
    private static void brakedWeight(TrainModel model, List<Phrase> assumptions) {
        OptionalDouble percent = model.brakedPercent();
        if (percent.isPresent()) {
            String kind = percent.getAsDouble() < BrakedWeight.PERCENT_LEAST
                    ? "assumption.braked-weight-low"
                    : "assumption.braked-weight";
            assumptions.add(Phrase.of(kind, Term.number(percent.getAsDouble(), "%")));
        } else if (BrakedWeight.applies(model.brake())) {
            assumptions.add(Phrase.of("assumption.braked-weight-unknown"));
        }
    }

    /** Says what the train's heating takes. */
    private void heating(List<Phrase> assumptions) {
        double kgPerS = TrainModel.heatingKgPerS(inputs);
        if (kgPerS > 0) {
            assumptions.add(Phrase.of(
                    "assumption.heating",
                    Term.number(Units.lbFromKg(kgPerS) * HOUR_S, "lb/h"),
                    Term.number(inputs.policyValue(Policy.HEATING_STEAM), "lb/h")));
        }
    }

    /** Says whose handling is forecast: a plan's, with what its few changes cost, or that of the rules of the trade. */
    private static List<Phrase> crew(@Nullable Workings workings) {
        Plan plan = workings == null ? null : workings.plan();
        if (plan == null) {
            return List.of(Phrase.of("assumption.crew"));
        }
        PlanCost cost = plan.cost();
        return List.of(
                Phrase.of("assumption.plan"),
                Phrase.of(
                        "assumption.plan-cost",
                        Term.number(Units.lbFromKg(cost.bareCoalKg()), "lb"),
                        Term.number(PER_CENT * Math.max(0, cost.human()), "%")));
    }

    /** Says how the days differ by which it is told how sure the forecast is. */
    private Phrase scatter() {
        Spread spread = SurenessMaker.spread(inputs);
        return Phrase.of(
                "assumption.scatter",
                Term.number(PER_CENT * spread.coalHeat(), "%"),
                Term.number(PER_CENT * spread.adhesion(), "%"),
                Term.number(PER_CENT * spread.resistance(), "%"),
                Term.number(PER_CENT * spread.load(), "%"),
                Term.number(Units.mphFromMps(spread.windMps()), "mph"),
                Term.number(spread.actionS(), "sec"),
                Term.number(Units.psiFromPa(spread.pressurePa()), "psi"),
                Term.number(PER_CENT * spread.glassShare(), "%"));
    }

    /** Says what the gauge shows in a service application as it is counted. */
    private void reading(List<Phrase> assumptions) {
        GaugeReading.of(inputs).ifPresent(reading -> assumptions.add(reading.assumption()));
        FormationFigures.Resolved load =
                inputs.consist() == null ? null : inputs.consist().figures();
        if (load != null && GaugeReading.kind(inputs) == BrakeKind.VACUUM) {
            higherVacuum(load, GaugeReading.madePa(inputs), assumptions);
        }
    }

    /** Vehicles made for more vacuum than the engine makes press less, and may still hold the vacuum of another engine. */
    private static void higherVacuum(FormationFigures.Resolved load, double madePa, List<Phrase> assumptions) {
        load.vehicles().stream()
                .filter(FormationFigures.Vehicle::braked)
                .mapToDouble(vehicle -> vehicle.vacuumPa().orElse(madePa))
                .max()
                .ifPresent(mostPa -> {
                    if (mostPa > madePa) {
                        assumptions.add(Phrase.of(
                                "assumption.vacuum-higher",
                                GaugeReading.inches(mostPa),
                                GaugeReading.inches(madePa),
                                Term.number(PER_CENT * BrakeReading.vacuumShare(mostPa, madePa, 0), "%")));
                    }
                });
    }

    private void crown(List<Phrase> assumptions) {
        List<String> lacking = CrownMaker.lacking(inputs);
        if (lacking.isEmpty()) {
            assumptions.add(Phrase.of("assumption.crown"));
        }
        String number = inputs.engines().get(0).turn().engineNumber();
        lacking.forEach(
                key -> assumptions.add(Phrase.of("assumption.crown-unknown", Term.text(number), Term.text(key))));
    }

    /** Water from a trough is not in the forecast: what a scoop takes hangs on speed and on how long it is down. */
    private void troughs(List<Phrase> assumptions) {
        inputs.path().features().stream()
                .filter(feature -> feature.feature().kind() == FeatureKind.WATER_TROUGH)
                .map(feature -> Phrase.of(
                        "assumption.trough", Term.text(feature.feature().name())))
                .forEach(assumptions::add);
    }

    /**
     * Says what on the road nobody measured, and where.
     *
     * @param group of the phrase: {@code assumption} for what counts, {@code missing} for what waits to be accepted
     */
    static Phrase estimate(String group, PathEstimate estimate, PathGeometry path) {
        Double toM = estimate.toM();
        return Phrase.of(
                group + "." + estimate.kind().name().toLowerCase(Locale.ROOT) + "-estimated",
                Term.text(path.at(estimate.fromM()).measureText()),
                Term.text(toM == null ? "" : path.at(toM).measureText()),
                Term.text(estimate.name()),
                Term.text(estimate.routeCode()));
    }

    private static Phrase estimate(EstimateUsed used) {
        Double value = used.figure().value();
        return Phrase.of(
                "assumption.estimate",
                Term.text(used.subject()),
                Term.text(used.figure().key()),
                Term.number(value == null ? 0 : value, used.figure().unit()),
                Term.text(used.figure().note()));
    }
}
