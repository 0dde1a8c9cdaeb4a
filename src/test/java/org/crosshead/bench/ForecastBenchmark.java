package org.crosshead.bench;

import java.util.concurrent.TimeUnit;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of a run of 100 km without regard to booked times, and of one that keeps to them. Beside them a loop of fixed work tells a
 * loaded machine from a slow forecast: compare the ratio of the two, not the milliseconds, between machines.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class ForecastBenchmark {

    private static final int REFERENCE_TURNS = 1_000_000;

    private final RunRequest unbooked = DemonstrationRoad.express(8, false);
    private final RunRequest booked = DemonstrationRoad.express(8, true);
    private final RuleDriver driver = new RuleDriver();
    private final RuleFireman fireman = new RuleFireman();

    @Benchmark
    public RunOutcome unhurried() {
        return Forecast.unhurried(unbooked, driver, fireman);
    }

    @Benchmark
    public RunOutcome timed() {
        return Forecast.timed(booked, driver, fireman);
    }

    /** A million square roots, each of which waits for the one before. */
    @Benchmark
    public double reference() {
        double sum = 1;
        for (int i = 0; i < REFERENCE_TURNS; i++) {
            sum = Math.sqrt(sum + i);
        }
        return sum;
    }
}
