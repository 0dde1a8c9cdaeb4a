package org.crosshead.competence.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.crosshead.competence.Subject;
import org.crosshead.competence.refresh.RefreshProblem.Limits;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans of invented depots, checked by counting anew. */
class RefreshSolverTests {

    private static final LocalDate FIRST = LocalDate.of(2030, 5, 6);

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 20);
    }

    /** A depot: trains over two or three neighbouring sections of twelve, drivers who hold some, people with one to three needs. */
    static RefreshProblem depot(int seed, int people, int trains) {
        Random random = new Random(seed);
        List<Need> needs = new ArrayList<>();
        for (long person = 1; person <= people; person++) {
            int count = 1 + random.nextInt(3);
            Set<Integer> sections = new HashSet<>();
            for (int i = 0; i < count; i++) {
                int section = random.nextInt(12);
                boolean added = sections.add(section);
                if (added && person % 10 == 7) {
                    Subject subject = new Subject(Subject.Kind.SECTION, "S" + section);
                    needs.add(new Need(person, subject, FIRST.plusDays(55), 6, RefreshProblem.Aim.COVER));
                } else if (added && person % 4 == 0) {
                    Subject subject = new Subject(Subject.Kind.SECTION, "S" + section);
                    needs.add(new Need(person, subject, FIRST.plusDays(55), 3, RefreshProblem.Aim.TRIPS));
                    needs.add(new Need(person, subject, FIRST.plusDays(55), 1, RefreshProblem.Aim.DARK_TRIPS));
                } else if (sections.contains(section)) {
                    Subject subject = new Subject(Subject.Kind.SECTION, "S" + section);
                    needs.add(new Need(person, subject, FIRST.plusDays(10 + random.nextInt(46))));
                }
            }
        }
        List<Option> options = new ArrayList<>();
        for (long train = 1; train <= trains; train++) {
            LocalDate day = FIRST.plusDays(random.nextInt(56));
            int first = random.nextInt(11);
            int last = Math.min(11, first + 1 + random.nextInt(2));
            long teacher = 1_000L + random.nextInt(Math.max(2, people / 4));
            Instant from = day.atTime(5 + random.nextInt(16), 0).toInstant(ZoneOffset.UTC);
            Instant to = from.plus(Duration.ofMinutes(120 + 30 * random.nextInt(12)));
            for (long person = 1; person <= people; person++) {
                List<Integer> met = new ArrayList<>();
                for (int need = 0; need < needs.size(); need++) {
                    Need one = needs.get(need);
                    int section = Integer.parseInt(one.subject().code().substring(1));
                    boolean over = section >= first && section <= last;
                    boolean light = one.aim() != RefreshProblem.Aim.DARK_TRIPS
                            || from.atZone(ZoneOffset.UTC).getHour() >= 17;
                    if (one.personId() == person && over && light && !day.isAfter(one.last())) {
                        met.add(need);
                    }
                }
                if (!met.isEmpty() && random.nextInt(4) != 0) {
                    options.add(new Option(person, train, day, from, to, teacher, met));
                }
            }
        }
        return new RefreshProblem(needs, options, Limits.COMMON);
    }

    private static void keepsEveryLimit(RefreshProblem problem, RefreshPlan plan) {
        List<Option> chosen = plan.chosen().stream().map(problem.options()::get).toList();
        Map<Integer, Integer> met = new HashMap<>();
        for (Option option : chosen) {
            option.needs().forEach(need -> met.merge(need, 1, Integer::sum));
            assertThat(chosen.stream()
                            .filter(one -> one.trainId() == option.trainId())
                            .count())
                    .isLessThanOrEqualTo(problem.limits().perTrain());
            assertThat(chosen.stream()
                            .filter(one -> one.teacherId() == option.teacherId())
                            .count())
                    .isLessThanOrEqualTo(problem.limits().perTeacher());
            List<Option> own = chosen.stream()
                    .filter(one -> one.personId() == option.personId())
                    .toList();
            for (Option other : own) {
                boolean rested = other.equals(option)
                        || !other.from().isBefore(option.to().plus(Duration.ofHours(12)))
                        || !option.from().isBefore(other.to().plus(Duration.ofHours(12)));
                assertThat(rested).as("%s and %s", option, other).isTrue();
            }
            assertThat(own.stream()
                            .filter(one -> !one.day().isBefore(option.day())
                                    && one.day().isBefore(option.day().plusDays(7)))
                            .count())
                    .isLessThanOrEqualTo(problem.limits().perWeek());
            option.needs().forEach(need -> {
                assertThat(problem.needs().get(need).personId()).isEqualTo(option.personId());
                assertThat(problem.needs().get(need).last()).isAfterOrEqualTo(option.day());
            });
        }
        long missed = 0;
        for (int need = 0; need < problem.needs().size(); need++) {
            Need one = problem.needs().get(need);
            int lacks = Math.max(0, one.count() - met.getOrDefault(need, 0));
            assertThat(Collections.frequency(plan.missed(), need)).isEqualTo(lacks);
            missed += lacks * (one.aim() == RefreshProblem.Aim.REFRESH ? 6_000L : 1_500L);
        }
        assertThat(plan.cost())
                .isEqualTo(chosen.stream().mapToLong(Option::minutes).sum() + missed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void beatsOrEqualsTheGreedyPlanAndKeepsEveryLimit(int seed) {
        RefreshProblem problem = depot(seed, 12, 60);
        RefreshPlan greedy = GreedyRefresh.plan(problem);
        RefreshPlan plan = RefreshSolver.plan(problem, 20);
        keepsEveryLimit(problem, greedy);
        keepsEveryLimit(problem, plan);
        assertThat(plan.cost()).isLessThanOrEqualTo(greedy.cost());
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.cost() + 1e-6);
        assertThat(plan.gap()).isLessThan(0.02);
        assertThat(RefreshSolver.plan(problem, 20)).isEqualTo(plan);
    }

    /** Small enough to try everything: the best of all sets of options is what is found. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isTheBestOfAllPlansOfASmallDepot(int seed) {
        RefreshProblem problem = depot(100 + seed, 3, 14);
        int count = Math.min(14, problem.options().size());
        RefreshProblem small =
                new RefreshProblem(problem.needs(), problem.options().subList(0, count), problem.limits());
        long best = Long.MAX_VALUE;
        for (int mask = 0; mask < 1 << count; mask++) {
            List<Integer> chosen = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                if ((mask & 1 << i) != 0) {
                    chosen.add(i);
                }
            }
            RefreshPlan plan = RefreshPlan.of(small, chosen, 0);
            if (plan.cost() < best && isAllowed(small, chosen)) {
                best = plan.cost();
            }
        }
        assertThat(RefreshSolver.plan(small, 20).cost()).isEqualTo(best);
    }

    private static boolean isAllowed(RefreshProblem problem, List<Integer> chosen) {
        try {
            keepsEveryLimit(problem, RefreshPlan.of(problem, chosen, 0));
            return true;
        } catch (AssertionError ex) {
            return false;
        }
    }

    /** Three trips of which one in the dark: two by day and one by night are enough, and cheaper than four. */
    @Test
    void learnerGetsAsManyTripsAsTheyLackAndNoMore() {
        Subject road = new Subject(Subject.Kind.SECTION, "S1");
        List<Need> needs = List.of(
                new Need(1, road, FIRST.plusDays(50), 3, RefreshProblem.Aim.TRIPS),
                new Need(1, road, FIRST.plusDays(50), 1, RefreshProblem.Aim.DARK_TRIPS));
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            LocalDate day = FIRST.plusDays(8L * i);
            boolean dark = i == 5;
            Instant from = day.atTime(dark ? 20 : 9, 0).toInstant(ZoneOffset.UTC);
            Instant to = from.plus(Duration.ofMinutes(dark ? 300 : 120));
            options.add(new Option(1, i, day, from, to, 9, dark ? List.of(0, 1) : List.of(0)));
        }
        RefreshPlan plan = RefreshSolver.plan(new RefreshProblem(needs, options, Limits.COMMON), 5);
        assertThat(plan.chosen()).hasSize(3).contains(5);
        assertThat(plan.missed()).isEmpty();
        assertThat(plan.cost()).isEqualTo(120 + 120 + 300);
    }

    @Test
    void nothingToDoIsAnEmptyPlan() {
        RefreshPlan plan = RefreshSolver.plan(new RefreshProblem(List.of(), List.of(), Limits.COMMON), 1);
        assertThat(plan.chosen()).isEmpty();
        assertThat(plan.cost()).isZero();
        assertThat(plan.gap()).isZero();
    }

    @Test
    void whatCannotBeMetIsMissedAndSaid() {
        Need need = new Need(1, new Subject(Subject.Kind.SECTION, "S1"), FIRST.plusDays(3));
        RefreshPlan plan = RefreshSolver.plan(new RefreshProblem(List.of(need), List.of(), Limits.COMMON), 1);
        assertThat(plan.missed()).containsExactly(0);
        assertThat(plan.cost()).isEqualTo(6_000);
    }
}
