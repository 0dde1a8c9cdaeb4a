package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;

/**
 * For a pull at the rim and a speed, the regulator and cutoff that use least steam, boiler at its working pressure and rail dry.
 *
 * @param pullsTons heads of the columns, long tons force
 * @param rows one a speed
 */
public record BestHandles(List<Double> pullsTons, List<Row> rows) {

    private static final double[] SHARES = {0.15, 0.3, 0.45, 0.6, 0.75};
    private static final int SPEED_STEP_MPH = 10;
    private static final double CUTOFF_STEP = 0.01;
    private static final int REGULATOR_STEPS = 20;
    private static final int REGULATOR_LEAST = 4;
    private static final double HOUR_S = 3_600;

    public BestHandles {
        pullsTons = List.copyOf(pullsTons);
        rows = List.copyOf(rows);
    }

    /**
     * One speed.
     *
     * @param cells in the order of the pulls; empty where the engine does not give it or the boiler does not keep it up
     */
    public record Row(double speedMph, List<Optional<Cell>> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** What gives one pull at one speed. */
    public record Cell(Controls controls, double steamLbPerHpHour) {}

    public static BestHandles of(Engine engine) {
        EngineState state = state(engine);
        double full = engine.parameters().valveGear().cutoffFull();
        double startN =
                engine.pull(state, new Controls(1, full), 0, RailState.DRY).forceN();
        List<Double> pulls = new ArrayList<>();
        for (double share : SHARES) {
            pulls.add(Math.max(0.5, Math.rint(2 * Units.longTonsFromKg(share * startN / Units.GRAVITY_MPS2)) / 2));
        }
        List<Row> rows = new ArrayList<>();
        double speedMaxMph = Units.mphFromMps(engine.parameters().speedMaxMps());
        for (int mph = SPEED_STEP_MPH; mph <= speedMaxMph + 1e-9; mph += SPEED_STEP_MPH) {
            double speedMps = Units.mpsFromMph(mph);
            rows.add(new Row(
                    mph,
                    pulls.stream()
                            .map(tons -> best(engine, state, Units.newtonsFromLongTonsForce(tons), speedMps))
                            .toList()));
        }
        return new BestHandles(pulls, rows);
    }

    private static EngineState state(Engine engine) {
        return new EngineState(
                engine.parameters().boiler().pressureMaxPa(),
                engine.parameters().boiler().waterFullKg(),
                0);
    }

    private static Optional<Cell> best(Engine engine, EngineState state, double pullN, double speedMps) {
        double evaporation = engine.evaporationMaxKgPerS(state.pressurePa());
        Cell best = null;
        for (int step = REGULATOR_LEAST; step <= REGULATOR_STEPS; step++) {
            double regulator = (double) step / REGULATOR_STEPS;
            Optional<Double> cutoff = cutoff(engine, state, regulator, pullN, speedMps);
            if (cutoff.isEmpty()) {
                continue;
            }
            Controls controls = new Controls(regulator, cutoff.get());
            Pull pull = engine.pull(state, controls, speedMps, RailState.DRY);
            double rate = Units.lbFromKg(pull.steamKgPerS()) * HOUR_S / Units.hpFromWatts(pull.forceN() * speedMps);
            if (pull.steamKgPerS() <= evaporation && (best == null || rate < best.steamLbPerHpHour())) {
                best = new Cell(controls, rate);
            }
        }
        return Optional.ofNullable(best);
    }

    /** The shortest cutoff, by hundredths from the least working one, that gives the pull and no more than a tenth beyond it. */
    private static Optional<Double> cutoff(
            Engine engine, EngineState state, double regulator, double pullN, double speedMps) {
        double least = engine.parameters().valveGear().cutoffLeast();
        double full = engine.parameters().valveGear().cutoffFull();
        for (double cutoff = least; cutoff <= full + 1e-9; cutoff += CUTOFF_STEP) {
            double given = engine.pull(state, new Controls(regulator, Math.min(full, cutoff)), speedMps, RailState.DRY)
                    .forceN();
            if (given >= pullN) {
                return given <= 1.1 * pullN ? Optional.of(Math.min(full, cutoff)) : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
