package org.crosshead.competence.refresh;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.crosshead.competence.refresh.RefreshProblem.Option;

/**
 * Finds the cheapest plan by constraint programming, from the greedy one on, with a bound that says how far from the best it can be. One
 * worker and a fixed seed: the same problem gives the same plan, unless the time runs out.
 */
final class RefreshSolver {

    private static final int WEEK_DAYS = 7;
    private static final int SEED = 1;
    private static final int LINEARIZATION = 2;

    private final RefreshProblem problem;
    private final CpModel model = new CpModel();
    private final List<BoolVar> taken = new ArrayList<>();
    private final List<IntVar> missed = new ArrayList<>();

    static {
        Loader.loadNativeLibraries();
    }

    private RefreshSolver(RefreshProblem problem) {
        this.problem = problem;
    }

    /**
     * Returns the best plan that is found in time; never one that is dearer than the greedy plan.
     *
     * @param seconds the most that is spent, positive
     */
    static RefreshPlan plan(RefreshProblem problem, double seconds) {
        RefreshPlan greedy = GreedyRefresh.plan(problem);
        return problem.needs().isEmpty() ? greedy : new RefreshSolver(problem).solve(greedy, seconds);
    }

    private RefreshPlan solve(RefreshPlan greedy, double seconds) {
        List<Option> options = problem.options();
        options.forEach(option -> taken.add(model.newBoolVar("")));
        for (int need = 0; need < problem.needs().size(); need++) {
            missed.add(model.newIntVar(0, problem.needs().get(need).count(), ""));
            meet(need);
        }
        atMost(Option::trainId, problem.limits().perTrain());
        atMost(Option::teacherId, problem.limits().perTeacher());
        rests();
        weeks();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int i = 0; i < options.size(); i++) {
            cost.addTerm(taken.get(i), options.get(i).minutes());
            model.addHint(taken.get(i), greedy.chosen().contains(i) ? 1 : 0);
        }
        for (int need = 0; need < missed.size(); need++) {
            cost.addTerm(missed.get(need), problem.needs().get(need).aim().weight());
            model.addHint(missed.get(need), Collections.frequency(greedy.missed(), need));
        }
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumSearchWorkers(1)
                .setRandomSeed(SEED)
                .setLinearizationLevel(LINEARIZATION)
                .setMaxTimeInSeconds(seconds)
                .setLogToStdout(false);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        List<Integer> chosen = found
                ? IntStream.range(0, options.size())
                        .filter(i -> solver.booleanValue(taken.get(i)))
                        .boxed()
                        .toList()
                : greedy.chosen();
        RefreshPlan plan = RefreshPlan.of(problem, chosen, solver.bestObjectiveBound());
        return plan.cost() <= greedy.cost()
                ? plan
                : new RefreshPlan(greedy.chosen(), greedy.missed(), greedy.cost(), solver.bestObjectiveBound());
    }

    /** As many turns as are needed, or as many fewer as are missed. */
    private void meet(int need) {
        LinearExprBuilder turns = LinearExpr.newBuilder().add(missed.get(need));
        for (int i = 0; i < problem.options().size(); i++) {
            if (problem.options().get(i).needs().contains(need)) {
                turns.add(taken.get(i));
            }
        }
        model.addGreaterOrEqual(turns, problem.needs().get(need).count());
    }

    private <K> void atMost(Function<Option, K> by, int most) {
        Map<K, List<Integer>> groups = IntStream.range(0, taken.size())
                .boxed()
                .collect(Collectors.groupingBy(i -> by.apply(problem.options().get(i))));
        groups.values().stream().filter(group -> group.size() > most).forEach(group -> limit(group, most));
    }

    private void limit(Collection<Integer> group, int most) {
        model.addLessOrEqual(LinearExpr.sum(group.stream().map(taken::get).toArray(BoolVar[]::new)), most);
    }

    private void rests() {
        List<Option> options = problem.options();
        for (int i = 0; i < options.size(); i++) {
            for (int j = i + 1; j < options.size(); j++) {
                boolean both = options.get(i).personId() != options.get(j).personId()
                        || !problem.limits().exclude(options.get(i), options.get(j));
                if (!both) {
                    limit(List.of(i, j), 1);
                }
            }
        }
    }

    private void weeks() {
        Map<Long, TreeMap<LocalDate, List<Integer>>> people = new TreeMap<>();
        for (int i = 0; i < taken.size(); i++) {
            Option option = problem.options().get(i);
            people.computeIfAbsent(option.personId(), key -> new TreeMap<>())
                    .computeIfAbsent(option.day(), key -> new ArrayList<>())
                    .add(i);
        }
        people.values()
                .forEach(days -> new TreeSet<>(days.keySet()).forEach(first -> {
                    List<Integer> week = days.subMap(first, first.plusDays(WEEK_DAYS)).values().stream()
                            .flatMap(List::stream)
                            .toList();
                    if (week.size() > problem.limits().perWeek()) {
                        limit(week, problem.limits().perWeek());
                    }
                }));
    }
}
