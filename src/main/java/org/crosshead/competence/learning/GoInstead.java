package org.crosshead.competence.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.competence.Permit;
import org.crosshead.competence.learning.LearningPlans.Ahead;
import org.crosshead.competence.learning.LearningPlans.Step;
import org.springframework.stereotype.Component;

/** Who could go in place of somebody who may not, with what each would need first; those who need least stand first. */
@Component
public class GoInstead {

    private static final int SHOWN = 5;

    /** More than any acts that are left. */
    private static final int BARRED = 100;

    private final LearningPlans plans;

    GoInstead(LearningPlans plans) {
        this.plans = plans;
    }

    /**
     * Somebody who could go.
     *
     * @param needs for each road or class that they lack; empty where they lack nothing
     */
    public record Row(long insteadOf, long personId, List<Ahead> needs) {

        public Row {
            needs = List.copyOf(needs);
        }

        /** How much it takes: what is lacked, then trips, then acts that are left. */
        private int trips() {
            return needs.stream().mapToInt(Ahead::trips).sum();
        }

        private int acts() {
            return needs.stream().map(Ahead::step).mapToInt(Row::acts).sum();
        }

        private static int acts(Step step) {
            return switch (step) {
                case HELD -> 0;
                case AUTHORISE -> 1;
                case ASSESS -> 2;
                case DECLARE, TRIPS -> 3;
                case BARRED -> BARRED;
            };
        }
    }

    /** Returns at most five for each place, those who need least first. */
    public List<Row> of(Permit permit) {
        Map<Long, List<Row>> byPlace = new LinkedHashMap<>();
        permit.instead()
                .forEach(one -> byPlace.computeIfAbsent(one.insteadOf(), key -> new ArrayList<>())
                        .add(row(one)));
        return byPlace.values().stream()
                .flatMap(rows -> rows.stream()
                        .sorted(Comparator.comparingInt((Row row) -> row.needs().size())
                                .thenComparingInt(Row::trips)
                                .thenComparingInt(Row::acts)
                                .thenComparing(Row::personId))
                        .limit(SHOWN))
                .toList();
    }

    private Row row(Permit.Candidate one) {
        return new Row(
                one.insteadOf(),
                one.personId(),
                one.lacks().stream()
                        .map(subject -> plans.ahead(one.personId(), subject))
                        .toList());
    }
}
