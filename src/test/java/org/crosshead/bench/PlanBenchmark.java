package org.crosshead.bench;

import java.util.concurrent.TimeUnit;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.PlanCost;
import org.crosshead.kernel.plan.Planner;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of a bare optimum and of a whole plan with its runs through the full model, on roads of 25 to 200 km with a stop every 50 km.
 * {@link ForecastBenchmark#reference} beside them tells the machine's pace.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 4, time = 3)
public class PlanBenchmark {

    @Param({"25", "50", "100", "200"})
    private int lengthKm;

    private final ForecastBenchmark forecast = new ForecastBenchmark();
    private RunRequest request = DemonstrationRoad.stretched(25_000, 8);

    @Setup
    public void lay() {
        request = DemonstrationRoad.stretched(1_000.0 * lengthKm, 8);
    }

    @Benchmark
    public PlanCost bareOptimum() {
        return Planner.bare(request).orElseThrow();
    }

    @Benchmark
    public Plan wholePlan() {
        return Planner.plan(request).orElseThrow();
    }

    @Benchmark
    public double reference() {
        return forecast.reference();
    }
}
