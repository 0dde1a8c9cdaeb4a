package org.crosshead.competence.refresh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Depots of 60 people and 300 trains: what half a minute yields is written down. */
@Tag("slow")
class RefreshVolumeTests {

    @Test
    void planOfALargeDepot() throws IOException {
        List<String> report = new ArrayList<>();
        for (int seed = 1; seed <= 5; seed++) {
            RefreshProblem problem = RefreshSolverTests.depot(seed, 60, 300);
            long greedy = GreedyRefresh.plan(problem).cost();
            long begin = System.nanoTime();
            RefreshPlan plan = RefreshSolver.plan(problem, 30);
            report.add(String.format(
                    Locale.ROOT,
                    "depot %d: %d needs, %d options: %.1f s, cost %d, greedy %d, gap %.2f %%, left open %d",
                    seed,
                    problem.needs().size(),
                    problem.options().size(),
                    (System.nanoTime() - begin) / 1e9,
                    plan.cost(),
                    greedy,
                    100 * plan.gap(),
                    plan.missed().size()));
            assertThat(plan.cost()).isLessThanOrEqualTo(greedy);
        }
        Path file = Path.of("target", "volume-refresh.txt");
        Files.createDirectories(file.getParent());
        Files.write(file, report);
    }
}
