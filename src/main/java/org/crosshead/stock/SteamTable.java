package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.cylinder.TurningEffort;
import org.crosshead.kernel.cylinder.ValveEvents;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;

/**
 * What an engine uses: steam in an hour, steam and coal for each horse-power hour at the rim, over speed and cutoff, regulator wide open
 * and pressure at the safety valves; and how unevenly it starts.
 *
 * @param cutoffs shares of the stroke, the greatest first
 * @param rows one a speed
 * @param starting pull of a start in the worst and in the best position of the cranks, as shares of the mean
 */
public record SteamTable(List<Double> cutoffs, List<Row> rows, TurningEffort starting) {

    private static final List<Double> CUTOFFS_BETWEEN = List.of(0.15, 0.25, 0.35, 0.50);
    private static final int SPEED_STEP_MPH = 10;
    private static final double HOUR_S = 3_600;
    private static final double WATTS_PER_HP = 745.7;

    public SteamTable {
        cutoffs = List.copyOf(cutoffs);
        rows = List.copyOf(rows);
    }

    /**
     * One speed.
     *
     * @param cells in the order of the cutoffs
     */
    public record Row(double speedMph, List<Cell> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One speed at one cutoff.
     *
     * @param steamLbPerHour used by the cylinders
     * @param steamLbPerHpHour for each horse-power hour at the rim
     * @param coalLbPerHpHour as the grate makes that steam for good; NaN where it can't
     */
    public record Cell(double steamLbPerHour, double steamLbPerHpHour, double coalLbPerHpHour) {

        /** Returns whether the boiler keeps this up for good. */
        public boolean keptUp() {
            return !Double.isNaN(coalLbPerHpHour);
        }
    }

    public static SteamTable of(Engine engine) {
        LocomotiveParameters parameters = engine.parameters();
        List<Double> cutoffs = cutoffs(parameters);
        List<Row> rows = new ArrayList<>();
        double speedMaxMph = Units.mphFromMps(parameters.speedMaxMps());
        for (int mph = SPEED_STEP_MPH; mph <= speedMaxMph + 1e-9; mph += SPEED_STEP_MPH) {
            double speedMps = Units.mpsFromMph(mph);
            rows.add(new Row(
                    mph,
                    cutoffs.stream()
                            .map(cutoff -> cell(engine, cutoff, speedMps))
                            .toList()));
        }
        return new SteamTable(cutoffs, rows, starting(parameters));
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

    private static Cell cell(Engine engine, double cutoff, double speedMps) {
        LocomotiveParameters.Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(boiler.pressureMaxPa(), boiler.waterFullKg(), 0);
        Pull pull = engine.pull(state, new Controls(1, cutoff), speedMps, RailState.DRY);
        double horsePower = pull.forceN() * speedMps / WATTS_PER_HP;
        boolean keptUp = pull.steamKgPerS() <= engine.evaporationMaxKgPerS(boiler.pressureMaxPa());
        double coalKgPerS = keptUp ? engine.coalForSteamKgPerS(pull.steamKgPerS(), boiler.pressureMaxPa()) : Double.NaN;
        return new Cell(
                Units.lbFromKg(pull.steamKgPerS()) * HOUR_S,
                Units.lbFromKg(pull.steamKgPerS()) * HOUR_S / horsePower,
                Units.lbFromKg(coalKgPerS) * HOUR_S / horsePower);
    }

    private static TurningEffort starting(LocomotiveParameters parameters) {
        CylinderForm form = parameters.valveGear().form();
        return TurningEffort.atRest(
                ValveEvents.at(form.valve(), parameters.valveGear().cutoffFull()),
                parameters.cylinders().count());
    }
}
