package org.crosshead.bench;

import java.util.concurrent.TimeUnit;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SteamEngine;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one step of the engine's model, safety valves shut: pull and steam, then fire, feed and boiler over two seconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineStepBenchmark {

    private static final double STEP_S = 2;
    private static final int STEPS = 1_000;
    private static final double RESISTANCE_N = 30_000;
    private static final double MASS_KG = 450_000;

    private final SteamEngine engine = SteamEngine.of(EngineFixtures.express());
    private final EngineState ready = new EngineState(
            0.9 * engine.parameters().boiler().pressureMaxPa(),
            EngineFixtures.ready(engine, 0.9).waterKg(),
            0.9 * engine.furnace().fullKg());
    private final Controls controls = new Controls(1, 0.3);
    private final Firing firing = new Firing(0.25, 1.8);

    @Benchmark
    public Pull pull() {
        return engine.pull(ready, controls, 15, RailState.DRY);
    }

    @Benchmark
    public EngineState boiler() {
        return engine.after(ready, 1.9, firing, STEP_S);
    }

    /** A thousand steps, each from the state that the one before left, with the speed that the pull gives; divide by a thousand. */
    @Benchmark
    public double thousandSteps() {
        EngineState state = ready;
        double speedMps = 10;
        for (int i = 0; i < STEPS; i++) {
            Pull pull = engine.pull(state, controls, speedMps, RailState.DRY);
            state = engine.after(state, pull.steamKgPerS(), firing, STEP_S);
            speedMps += (pull.forceN() - RESISTANCE_N - 40 * speedMps * speedMps) / MASS_KG * STEP_S;
        }
        return speedMps + state.pressurePa();
    }
}
