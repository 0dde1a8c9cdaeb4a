package org.crosshead.briefing.build;

import java.util.List;
import java.util.Map;
import org.crosshead.briefing.HandPoint;
import org.crosshead.briefing.Policy.PolicyFigure;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.Restriction;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.jspecify.annotations.Nullable;

/**
 * Everything read for one briefing.
 *
 * @param missing what keeps it from being computed; empty when nothing is missing
 * @param revisions ids of the revisions read, by kind and code
 * @param byHand what an inspector changed in the plan, in the order in which it was entered
 */
record TrainInputs(
        Train train,
        PathGeometry path,
        List<Restriction> restrictions,
        List<EngineAtTrain> engines,
        @Nullable Consist consist,
        Map<String, String> people,
        Map<String, PolicyFigure> policy,
        List<Phrase> missing,
        Map<String, Long> revisions,
        List<HandPoint> byHand,
        String zone) {

    TrainInputs {
        restrictions = List.copyOf(restrictions);
        engines = List.copyOf(engines);
        people = Map.copyOf(people);
        policy = Map.copyOf(policy);
        missing = List.copyOf(missing);
        revisions = Map.copyOf(revisions);
        byHand = List.copyOf(byHand);
    }

    /** An engine of the train with its class; figures null while any is missing. */
    record EngineAtTrain(
            EngineTurn turn, EngineRevision engine, ClassRevision ofClass, EngineFigures.@Nullable Resolved figures) {}

    /** What the train hauls; figures null while any is missing. */
    record Consist(
            FormationRevision formation,
            Map<String, VehicleKindRevision> kinds,
            FormationFigures.@Nullable Resolved figures) {}

    TrainDraft content() {
        return train.content();
    }

    double policyValue(String key) {
        PolicyFigure figure = policy.get(key);
        if (figure == null) {
            throw new IllegalStateException("policy figure " + key + " is not laid down");
        }
        return figure.value();
    }
}
