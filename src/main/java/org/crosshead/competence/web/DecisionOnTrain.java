package org.crosshead.competence.web;

import java.util.Optional;
import org.crosshead.competence.Decisions;
import org.crosshead.working.TrainNote;
import org.springframework.stereotype.Component;

/** A train's page: what was decided last on its crew. */
@Component
class DecisionOnTrain implements TrainNote {

    private final Decisions decisions;

    DecisionOnTrain(Decisions decisions) {
        this.decisions = decisions;
    }

    @Override
    public Optional<String> of(long trainId) {
        return decisions
                .latest(trainId)
                .map(decision -> "competence.answer." + decision.permit().answer());
    }
}
