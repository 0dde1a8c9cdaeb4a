package org.crosshead.briefing.document;

import java.util.List;
import java.util.Map;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.working.TrainDraft;

/**
 * Everything the computation read: with it the same figures come out again.
 *
 * @param train the train as entered
 * @param revisions ids of the revisions used, by kind and code, for example {@code route:MAIN -> 12}
 * @param restrictions temporary restrictions in force
 * @param policy policy figures used, by key, for example {@code braking.margin-factor -> 1.10}
 */
public record Inputs(
        TrainDraft train,
        Map<String, Long> revisions,
        List<RestrictionDraft> restrictions,
        Map<String, Double> policy) {

    public Inputs {
        revisions = Map.copyOf(revisions);
        restrictions = List.copyOf(restrictions);
        policy = Map.copyOf(policy);
    }
}
