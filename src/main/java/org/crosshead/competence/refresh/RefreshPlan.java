package org.crosshead.competence.refresh;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Chosen turns.
 *
 * @param chosen indexes of options, rising
 * @param missed indexes of needs that no chosen turn meets, rising
 * @param cost minutes of extra duty, and {@value #MISS} for each need that is missed
 * @param bound what no plan can be cheaper than; 0 where none is known
 */
public record RefreshPlan(List<Integer> chosen, List<Integer> missed, long cost, double bound) {

    /** A lapse weighs as much as a hundred hours of extra duty: own rule. */
    public static final long MISS = 6_000;

    public RefreshPlan {
        chosen = List.copyOf(chosen);
        missed = List.copyOf(missed);
    }

    static RefreshPlan of(RefreshProblem problem, List<Integer> chosen, double bound) {
        Set<Integer> met = new HashSet<>();
        long minutes = 0;
        for (int option : chosen) {
            met.addAll(problem.options().get(option).needs());
            minutes += problem.options().get(option).minutes();
        }
        List<Integer> missed = IntStream.range(0, problem.needs().size())
                .filter(need -> !met.contains(need))
                .boxed()
                .toList();
        return new RefreshPlan(chosen.stream().sorted().toList(), missed, minutes + MISS * missed.size(), bound);
    }

    /** Returns by how much at most a plan could be cheaper, as a share of its cost; 0 where it is proven to be the best. */
    public double gap() {
        return cost == 0 ? 0 : Math.max(0, (cost - bound) / cost);
    }
}
