package org.crosshead.bench;

import java.util.concurrent.TimeUnit;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.Planner;
import org.crosshead.kernel.scatter.Bands;
import org.crosshead.kernel.scatter.ScatteredRuns;
import org.crosshead.kernel.scatter.Spread;
import org.crosshead.kernel.units.Units;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of 200 days over 100 km, on all cores. {@link ForecastBenchmark#reference} beside it tells the machine's pace. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 4, time = 3)
public class ScatterBenchmark {

    private static final int DAYS = 200;
    private static final Spread SPREAD = new Spread(0.07, 0.2, 0.12, 0.04, 4, 5, Units.paFromPsi(3), 0.05);

    private final RunRequest request = DemonstrationRoad.stretched(100_000, 8);
    private final Plan plan = Planner.plan(request).orElseThrow();
    private final ForecastBenchmark forecast = new ForecastBenchmark();

    @Benchmark
    public Bands twoHundredDays() {
        return new ScatteredRuns(request, plan.outcome().run(), plan, SPREAD).bands(DAYS);
    }

    @Benchmark
    public double reference() {
        return forecast.reference();
    }
}
