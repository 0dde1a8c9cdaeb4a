package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * The scales that all panels of a strip share.
 *
 * @param heightsM height above the start at each place where the gradient changes
 * @param reliefM greatest difference of height within one panel
 */
record Scales(
        double speedMax,
        double speedStep,
        double pressureMinPsi,
        double pressureMaxPsi,
        List<Double> placesM,
        List<Double> heightsM,
        double reliefM) {

    private static final double RELIEF_LEAST_M = 20;
    private static final double PRESSURE_STEP_PSI = 20;

    static Scales of(StripModel model, List<Double> breaks) {
        List<Double> placesM = new ArrayList<>(List.of(0.0));
        List<Double> heightsM = new ArrayList<>(List.of(0.0));
        double heightM = 0;
        for (StripModel.Slope slope : model.slopes()) {
            heightM += slope.gradient() * (slope.toM() - slope.fromM());
            placesM.add(slope.toM());
            heightsM.add(heightM);
        }
        double fastest = Math.max(
                max(model.run().speed(), 1),
                model.limits().stream()
                        .mapToDouble(StripModel.Limit::speed)
                        .max()
                        .orElse(1));
        double step = fastest > 110 ? 40 : fastest > 25 ? 20 : 10;
        List<Double> pressures = new ArrayList<>(model.run().pressurePsi());
        pressures.addAll(model.run().bands().pressureLow());
        pressures.addAll(model.run().bands().pressureHigh());
        double lowest = pressures.stream()
                .mapToDouble(p -> p)
                .filter(Double::isFinite)
                .min()
                .orElse(PRESSURE_STEP_PSI);
        return new Scales(
                Math.ceil(fastest / step) * step,
                step,
                Math.floor((lowest - 5) / PRESSURE_STEP_PSI) * PRESSURE_STEP_PSI,
                Math.ceil((max(pressures, PRESSURE_STEP_PSI) + 1) / PRESSURE_STEP_PSI) * PRESSURE_STEP_PSI,
                placesM,
                heightsM,
                relief(new Polyline(placesM, heightsM), breaks));
    }

    Polyline profile() {
        return new Polyline(placesM, heightsM);
    }

    /** Returns the lowest height between two places. */
    double lowestM(double fromM, double toM) {
        return heights(profile(), fromM, toM).stream().mapToDouble(h -> h).min().orElse(0);
    }

    private static double relief(Polyline profile, List<Double> breaks) {
        double relief = RELIEF_LEAST_M;
        for (int i = 1; i < breaks.size(); i++) {
            List<Double> heights = heights(profile, breaks.get(i - 1), breaks.get(i));
            double low = heights.stream().mapToDouble(h -> h).min().orElse(0);
            relief = Math.max(relief, max(heights, low) - low);
        }
        return relief;
    }

    private static List<Double> heights(Polyline profile, double fromM, double toM) {
        List<Double> heights = new ArrayList<>();
        for (double end : new double[] {fromM, toM}) {
            double height = profile.yAt(end);
            if (!Double.isNaN(height)) {
                heights.add(height);
            }
        }
        for (int i = 0; i < profile.size(); i++) {
            if (profile.x().get(i) > fromM && profile.x().get(i) < toM) {
                heights.add(profile.y().get(i));
            }
        }
        return heights;
    }

    private static double max(List<Double> values, double atLeast) {
        return Math.max(
                atLeast,
                values.stream()
                        .mapToDouble(v -> v)
                        .filter(Double::isFinite)
                        .max()
                        .orElse(atLeast));
    }
}
