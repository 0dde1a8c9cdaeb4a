package org.crosshead.competence;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    record Work(Instant on, Instant off) {

        double hours() {
            return HoursRules.hours(on, off);
        }
    }

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
     * @param around their work on other trains, from {@link TrainDemands#AROUND_DAYS} before to as many after
     * @param zone whose calendar has the days and months
     */
    static List<Bar> bars(long personId, Work work, List<Work> around, KnowledgePolicy.Hours policy, ZoneId zone) {
        List<Work> works = new ArrayList<>(around);
        works.add(work);
        List<Work> turns = turns(works, policy);
        int at = 0;
        while (turns.get(at).off().isBefore(work.off())) {
            at++;
        }
        Work turn = turns.get(at);
        List<Bar> bars = new ArrayList<>();
        most("turn-hours", personId, turn.hours(), policy.turnMost()).ifPresent(bars::add);
        if (at > 0) {
            Work before = turns.get(at - 1);
            least("rest-before", personId, hours(before.off(), turn.on()), rest(before, policy))
                    .ifPresent(bars::add);
            off(personId, turns.subList(0, at), turn, policy.accrued(), zone).ifPresent(bars::add);
        }
        if (at < turns.size() - 1) {
            least("rest-after", personId, hours(turn.off(), turns.get(at + 1).on()), rest(turn, policy))
                    .ifPresent(bars::add);
        }
        List<Work> upTo = turns.subList(0, at + 1);
        most("week-hours", personId, within(upTo, turn.off().minus(WEEK), turn.off()), policy.weekMost())
                .ifPresent(bars::add);
        month(personId, upTo, policy.accrued(), zone).ifPresent(bars::add);
        Instant fortnightFrom = turn.off().minus(FORTNIGHT);
        long count =
                upTo.stream().filter(one -> one.on().isAfter(fortnightFrom)).count();
        most("fortnight-turns", personId, (double) count, policy.turnsMost()).ifPresent(bars::add);
        return bars;
    }

    /** Returns the rest after a turn: more after one of the longest length, where the railway says so. */
    private static double rest(Work turn, KnowledgePolicy.Hours policy) {
        boolean longest = turn.hours() >= policy.turnMost() - CLOSE_H;
        return longest ? Math.max(policy.restLeast(), policy.accrued().longRest()) : policy.restLeast();
    }

    /** Returns how many hours of turns lie within a time. */
    private static double within(List<Work> turns, Instant from, Instant to) {
        return turns.stream()
                .mapToDouble(one -> hours(
                        one.on().isBefore(from) ? from : one.on(), one.off().isAfter(to) ? to : one.off()))
                .filter(hours -> hours > 0)
                .sum();
    }

    /** Counts the calendar months in which the last of some turns begins and ends, each for itself. */
    private static Optional<Bar> month(long personId, List<Work> turns, KnowledgePolicy.Accrued policy, ZoneId zone) {
        if (policy.monthMost() == 0) {
            return Optional.empty();
        }
        Work turn = turns.get(turns.size() - 1);
        double is = Stream.of(turn.on(), turn.off())
                .map(instant -> YearMonth.from(instant.atZone(zone)))
                .mapToDouble(month -> within(
                        turns,
                        month.atDay(1).atStartOfDay(zone).toInstant(),
                        month.plusMonths(1).atDay(1).atStartOfDay(zone).toInstant()))
                .max()
                .orElseThrow();
        return most("month-hours", personId, is, policy.monthMost());
    }

    /** Says whether somebody has had enough time off after days in a row on each of which a turn began. */
    private static Optional<Bar> off(
            long personId, List<Work> before, Work turn, KnowledgePolicy.Accrued policy, ZoneId zone) {
        if (policy.daysMost() == 0) {
            return Optional.empty();
        }
        Work last = before.get(before.size() - 1);
        Set<LocalDate> days =
                before.stream().map(one -> one.on().atZone(zone).toLocalDate()).collect(Collectors.toSet());
        days.remove(turn.on().atZone(zone).toLocalDate());
        LocalDate day = last.on().atZone(zone).toLocalDate();
        int running = 0;
        while (days.contains(day.minusDays(running))) {
            running++;
        }
        return running < policy.daysMost()
                ? Optional.empty()
                : least("days-off", personId, hours(last.off(), turn.on()), policy.offLeast());
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
