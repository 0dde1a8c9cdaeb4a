package org.crosshead.competence;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.competence.Permit.Bar;

/**
 * Whether the hours of a turn and of those around it keep to the railway's limits. Hours are counted by instants, so that a night on which
 * the clocks change has as many as it has.
 */
final class HoursRules {

    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration FORTNIGHT = Duration.ofDays(14);
    private static final double HOUR_S = 3600;
    private static final double CLOSE_H = 1e-9;

    private HoursRules() {}

    /** Work on one train. */
    record Work(Instant on, Instant off) {}

    /** Returns the turns: work with no longer pause between it than ends a turn. */
    static List<Work> turns(List<Work> works, KnowledgePolicy.Hours policy) {
        List<Work> turns = new ArrayList<>();
        for (Work work : works.stream().sorted(Comparator.comparing(Work::on)).toList()) {
            Work last = turns.isEmpty() ? null : turns.get(turns.size() - 1);
            if (last != null && hours(last.off(), work.on()) <= policy.breakMost() + CLOSE_H) {
                Instant off = last.off().isAfter(work.off()) ? last.off() : work.off();
                turns.set(turns.size() - 1, new Work(last.on(), off));
            } else {
                turns.add(work);
            }
        }
        return turns;
    }

    /**
     * Returns what stands in the way of a person's work on a train.
     *
     * @param work on this train
     * @param around their work on other trains, from a fortnight before to a fortnight after
     */
    static List<Bar> bars(long personId, Work work, List<Work> around, KnowledgePolicy.Hours policy) {
        List<Work> works = new ArrayList<>(around);
        works.add(work);
        List<Work> turns = turns(works, policy);
        int at = 0;
        while (turns.get(at).off().isBefore(work.off())) {
            at++;
        }
        Work turn = turns.get(at);
        List<Bar> bars = new ArrayList<>();
        most("turn-hours", personId, hours(turn.on(), turn.off()), policy.turnMost())
                .ifPresent(bars::add);
        if (at > 0) {
            least("rest-before", personId, hours(turns.get(at - 1).off(), turn.on()), policy.restLeast())
                    .ifPresent(bars::add);
        }
        if (at < turns.size() - 1) {
            least("rest-after", personId, hours(turn.off(), turns.get(at + 1).on()), policy.restLeast())
                    .ifPresent(bars::add);
        }
        Instant weekFrom = turn.off().minus(WEEK);
        double week = turns.stream()
                .filter(one -> !one.on().isAfter(turn.on()) && one.off().isAfter(weekFrom))
                .mapToDouble(one -> hours(one.on().isBefore(weekFrom) ? weekFrom : one.on(), one.off()))
                .sum();
        most("week-hours", personId, week, policy.weekMost()).ifPresent(bars::add);
        Instant fortnightFrom = turn.off().minus(FORTNIGHT);
        long count = turns.stream()
                .filter(one -> !one.on().isAfter(turn.on()) && one.on().isAfter(fortnightFrom))
                .count();
        most("fortnight-turns", personId, (double) count, policy.turnsMost()).ifPresent(bars::add);
        return bars;
    }

    private static Optional<Bar> most(String code, long personId, double is, double most) {
        return is > most + CLOSE_H ? Optional.of(new Bar(personId, code, List.of(is, most))) : Optional.empty();
    }

    private static Optional<Bar> least(String code, long personId, double is, double least) {
        return is < least - CLOSE_H ? Optional.of(new Bar(personId, code, List.of(is, least))) : Optional.empty();
    }

    private static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / (1000 * HOUR_S);
    }
}
