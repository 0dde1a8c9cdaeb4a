package org.crosshead.briefing.build;

import java.util.List;
import java.util.OptionalInt;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakedAxleTable;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.route.PathGradient;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationFigures.Vehicle;

/** Holds the train's braked axles against an old law's table, for comparison: how many it would ask for at the worst place of the path. */
final class AxleRule {

    private static final double STEP_M = 20;

    private final TrainModel model;
    private final List<PathGradient> gradients;

    AxleRule(TrainModel model, List<PathGradient> gradients) {
        this.model = model;
        this.gradients = gradients;
    }

    /** Returns the sentence; nothing for a light engine or where axles are not known. */
    List<Phrase> told() {
        FormationFigures.Resolved load = model.consist();
        if (load == null
                || load.vehicles().stream().anyMatch(vehicle -> vehicle.axles().isEmpty())) {
            return List.of();
        }
        OptionalInt worst = worst();
        if (worst.isEmpty()) {
            return List.of(Phrase.of("assumption.axle-table-beyond"));
        }
        double counted = load.vehicles().stream().mapToDouble(AxleRule::counted).sum();
        int braked = load.vehicles().stream()
                .filter(Vehicle::braked)
                .mapToInt(vehicle -> vehicle.axles().orElseThrow())
                .sum();
        int wanted = BrakedAxleTable.wanted(counted, worst.getAsInt());
        return List.of(Phrase.of(
                braked >= wanted ? "assumption.axle-table" : "assumption.axle-table-short",
                Term.number(wanted, ""),
                Term.number(braked, "")));
    }

    /** An empty goods vehicle's axles count half. */
    private static double counted(Vehicle vehicle) {
        boolean goods = !vehicle.family().name().contains("COACH");
        double axles = vehicle.axles().orElseThrow();
        return goods && vehicle.massKg() <= vehicle.tareKg() ? axles / 2 : axles;
    }

    private OptionalInt worst() {
        SpeedLimits limits = model.request().road().track().limits();
        int most = 0;
        for (PathGradient gradient : gradients) {
            double fall = Math.max(0, -gradient.gradient());
            double fastest = greatestMps(limits, gradient);
            OptionalInt asked = BrakedAxleTable.perHundred(fall, fastest);
            if (asked.isEmpty()) {
                return OptionalInt.empty();
            }
            most = Math.max(most, asked.getAsInt());
        }
        return OptionalInt.of(most);
    }

    private double greatestMps(SpeedLimits limits, PathGradient gradient) {
        double greatest = 0;
        for (double atM = gradient.fromM(); atM < gradient.toM(); atM += STEP_M) {
            greatest = Math.max(greatest, limits.limitAt(atM));
        }
        return Math.min(model.speedMaxMps(), greatest);
    }
}
