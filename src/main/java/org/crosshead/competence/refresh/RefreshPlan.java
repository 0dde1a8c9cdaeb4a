package org.crosshead.competence.refresh;

import java.util.ArrayList;
import java.util.List;

/**
 * Chosen turns.
 *
 * @param chosen indexes of options, rising
 * @param missed indexes of needs that are not met, rising; one as often as it lacks turns
 * @param cost minutes of extra duty, and the weight of each turn that is missed
 * @param bound what no plan can be cheaper than; 0 where none is known
 */
public record RefreshPlan(List<Integer> chosen, List<Integer> missed, long cost, double bound) {

    public RefreshPlan {
        chosen = List.copyOf(chosen);
        missed = List.copyOf(missed);
    }

    static RefreshPlan of(RefreshProblem problem, List<Integer> chosen, double bound) {
        int[] hits = new int[problem.needs().size()];
        long cost = 0;
        for (int option : chosen) {
            problem.options().get(option).needs().forEach(need -> hits[need]++);
            cost += problem.options().get(option).minutes();
        }
        List<Integer> missed = new ArrayList<>();
        for (int need = 0; need < hits.length; need++) {
            RefreshProblem.Need one = problem.needs().get(need);
            for (int lacks = hits[need]; lacks < one.count(); lacks++) {
                missed.add(need);
                cost += one.aim().weight();
            }
        }
        return new RefreshPlan(chosen.stream().sorted().toList(), missed, cost, bound);
    }

    /** Returns by how much at most a plan could be cheaper, as a share of its cost; 0 where it is proven to be the best. */
    public double gap() {
        return cost == 0 ? 0 : Math.max(0, (cost - bound) / cost);
    }
}
