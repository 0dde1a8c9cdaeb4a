package org.crosshead.briefing.build;

import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakeReading;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.FormationFigures;

/**
 * What the driver's gauge shows in a service application as it is counted, for brakes that have a gauge.
 *
 * @param kind {@code vacuum} or {@code air}, the end of a message's key
 * @param terms vacuum left and vacuum made, or pressure taken off the train pipe
 */
record GaugeReading(String kind, List<Term> terms) {

    GaugeReading {
        terms = List.copyOf(terms);
    }

    static Optional<GaugeReading> of(TrainInputs inputs) {
        double share = inputs.policyValue(Policy.SERVICE_SHARE);
        return switch (kind(inputs)) {
            case VACUUM -> {
                double madePa = madePa(inputs);
                yield Optional.of(new GaugeReading(
                        "vacuum", List.of(inches(BrakeReading.vacuumPa(madePa, share)), inches(madePa))));
            }
            case AIR ->
                Optional.of(new GaugeReading(
                        "air", List.of(Term.number(Units.psiFromPa(BrakeReading.airReductionPa(share)), "psi"))));
            default -> Optional.empty();
        };
    }

    /** Returns the brake that is worked: the train's where any vehicle is braked by it, else the engine's own. */
    static BrakeKind kind(TrainInputs inputs) {
        FormationFigures.Resolved load =
                inputs.consist() == null ? null : inputs.consist().figures();
        boolean onTrain = load != null && load.vehicles().stream().anyMatch(FormationFigures.Vehicle::braked);
        return onTrain
                ? inputs.engines().get(0).ofClass().content().trainBrake()
                : inputs.engines().get(0).ofClass().content().engineBrake();
    }

    /** Returns the vacuum that the train engine makes. */
    static double madePa(TrainInputs inputs) {
        EngineFigures.Resolved engine = inputs.engines().get(0).figures();
        return engine == null
                ? BrakeReading.twentyOneInchesPa()
                : engine.brake().vacuumPa();
    }

    static Term inches(double pa) {
        return Term.number(pa / Units.paFromInHg(1), "in");
    }

    Phrase assumption() {
        return new Phrase("assumption.reading-" + kind, terms);
    }

    /** Returns the words of an action with what the gauge shows. */
    Phrase of(String action) {
        return new Phrase("action." + action + "." + kind, List.of(terms.get(0)));
    }
}
