package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;

/**
 * What an engine pulls at the rim against speed: regulator wide open, pressure at the safety valves, glass full, rail dry.
 *
 * @param cutoffs shares of the stroke, the greatest first
 * @param rows one a speed, rising from 0
 */
public record PullTable(List<Double> cutoffs, List<Row> rows) {

    /** Cutoffs shown between full gear and the least. */
    private static final List<Double> CUTOFFS_BETWEEN = List.of(0.15, 0.25, 0.35, 0.45, 0.60);

    private static final int SPEED_STEP_MPH = 5;

    public PullTable {
        cutoffs = List.copyOf(cutoffs);
        rows = List.copyOf(rows);
    }

    /**
     * One speed.
     *
     * @param cylinderLbf what the cylinders give at each cutoff, in the order of the cutoffs
     * @param boilerLbf what the boiler can keep up for good at the best of these cutoffs; infinite at rest
     * @param railLbf what the dry rail holds
     * @param drawbarLbf what is left at the drawbar on straight level track of the most that is kept up for good: the least of cylinders
     *     in full gear, boiler and rail, less the resistance of engine and tender
     */
    public record Row(double speedMph, List<Double> cylinderLbf, double boilerLbf, double railLbf, double drawbarLbf) {

        public Row {
            cylinderLbf = List.copyOf(cylinderLbf);
        }
    }

    /**
     * Returns the table.
     *
     * @param own resistance of engine and tender
     */
    public static PullTable of(Engine engine, RunningResistance own) {
        List<Double> cutoffs = cutoffs(engine.parameters());
        List<Row> rows = new ArrayList<>();
        int speedMaxMph = (int) Math.floor(Units.mphFromMps(engine.parameters().speedMaxMps()) + 1e-9);
        for (int speedMph = 0; speedMph <= speedMaxMph; speedMph += SPEED_STEP_MPH) {
            rows.add(row(engine, own, cutoffs, speedMph));
        }
        return new PullTable(cutoffs, rows);
    }

    private static List<Double> cutoffs(LocomotiveParameters parameters) {
        double full = parameters.valveGear().cutoffFull();
        double least = parameters.valveGear().cutoffLeast();
        TreeSet<Double> cutoffs = new TreeSet<>(List.of(full, least));
        CUTOFFS_BETWEEN.stream()
                .filter(cutoff -> cutoff > least && cutoff < full)
                .forEach(cutoffs::add);
        return List.copyOf(cutoffs.descendingSet());
    }

    private static Row row(Engine engine, RunningResistance own, List<Double> cutoffs, double speedMph) {
        LocomotiveParameters.Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(boiler.pressureMaxPa(), boiler.waterFullKg(), 0);
        List<Pull> pulls = cutoffs.stream()
                .map(cutoff -> engine.pull(state, new Controls(1, cutoff), Units.mpsFromMph(speedMph), RailState.DRY))
                .toList();
        double boilerN = pulls.stream().mapToDouble(Pull::boilerForceN).max().orElseThrow();
        double railN = pulls.get(0).railForceN();
        double keptUpN = Math.min(pulls.get(0).cylinderForceN(), Math.min(boilerN, railN));
        double ownN =
                speedMph > 0 ? own.forceN(Units.mpsFromMph(speedMph)) : Math.max(own.startingN(), own.constantN());
        return new Row(
                speedMph,
                pulls.stream()
                        .map(pull -> Units.lbfFromNewtons(pull.cylinderForceN()))
                        .toList(),
                Units.lbfFromNewtons(boilerN),
                Units.lbfFromNewtons(railN),
                Units.lbfFromNewtons(Math.max(0, keptUpN - ownN)));
    }
}
