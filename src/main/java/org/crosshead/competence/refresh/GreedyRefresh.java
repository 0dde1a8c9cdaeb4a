package org.crosshead.competence.refresh;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.crosshead.competence.refresh.RefreshProblem.Option;

/** Takes again and again the turn that meets most for an hour of duty: a first plan, and what a better one is measured by. */
final class GreedyRefresh {

    private static final int WEEK_DAYS = 7;

    private final RefreshProblem problem;
    private final List<Integer> chosen = new ArrayList<>();
    private final int[] hits;

    private GreedyRefresh(RefreshProblem problem) {
        this.problem = problem;
        hits = new int[problem.needs().size()];
    }

    static RefreshPlan plan(RefreshProblem problem) {
        GreedyRefresh greedy = new GreedyRefresh(problem);
        int next = greedy.best();
        while (next >= 0) {
            greedy.chosen.add(next);
            problem.options().get(next).needs().forEach(need -> greedy.hits[need]++);
            next = greedy.best();
        }
        return RefreshPlan.of(problem, greedy.chosen, 0);
    }

    private int best() {
        int best = -1;
        double most = 0;
        for (int i = 0; i < problem.options().size(); i++) {
            Option option = problem.options().get(i);
            int fresh = option.needs().stream()
                    .filter(need -> hits[need] < problem.needs().get(need).count())
                    .mapToInt(need -> problem.needs().get(need).aim().weight())
                    .sum();
            double worth = (double) fresh / option.minutes();
            if (worth > most && fresh > option.minutes() && fits(option)) {
                most = worth;
                best = i;
            }
        }
        return best;
    }

    private boolean fits(Option option) {
        int onTrain = 0;
        int underTeacher = 0;
        boolean excluded = false;
        List<LocalDate> days = new ArrayList<>(List.of(option.day()));
        for (int index : chosen) {
            Option other = problem.options().get(index);
            onTrain += other.trainId() == option.trainId() ? 1 : 0;
            underTeacher += other.teacherId() == option.teacherId() ? 1 : 0;
            if (other.personId() == option.personId()) {
                excluded |= problem.limits().exclude(option, other);
                days.add(other.day());
            }
        }
        return onTrain < problem.limits().perTrain()
                && underTeacher < problem.limits().perTeacher()
                && !excluded
                && mostInAWeek(days) <= problem.limits().perWeek();
    }

    private static long mostInAWeek(List<LocalDate> days) {
        return days.stream()
                .mapToLong(first -> days.stream()
                        .filter(day -> !day.isBefore(first) && day.isBefore(first.plusDays(WEEK_DAYS)))
                        .count())
                .max()
                .orElse(0);
    }
}
