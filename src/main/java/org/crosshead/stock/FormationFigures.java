package org.crosshead.stock;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.RunningResistance;

/** A formation's stored figures as the kernel wants them, or what is missing for that. */
public sealed interface FormationFigures {

    /**
     * Everything needed is known.
     *
     * @param vehicles front first
     * @param estimates accepted estimates that count in it
     */
    record Resolved(List<Vehicle> vehicles, List<EstimateUsed> estimates) implements FormationFigures {

        public Resolved {
            vehicles = List.copyOf(vehicles);
            estimates = List.copyOf(estimates);
        }

        public double massKg() {
            return vehicles.stream().mapToDouble(Vehicle::massKg).sum();
        }

        public double lengthM() {
            return vehicles.stream().mapToDouble(Vehicle::lengthM).sum();
        }

        /** Returns the resistance of all vehicles on straight level track. */
        public RunningResistance resistance(ResistanceRule rule) {
            return vehicles.stream()
                    .map(vehicle -> rule.of(vehicle.family(), vehicle.massKg(), vehicle.axles()))
                    .reduce(RunningResistance.NONE, RunningResistance::plus);
        }
    }

    /** Some figure is unknown, or an estimate that nobody has accepted. */
    record Missing(List<MissingFigure> missing) implements FormationFigures {

        public Missing {
            missing = List.copyOf(missing);
        }
    }

    /**
     * One vehicle with its load.
     *
     * @param tareKg without load
     * @param massKg with load
     * @param blockForceN sum over its blocks, full application; 0 where it has no power brake
     * @param braked whether its brake works and the train pipe reaches it from the front
     */
    record Vehicle(
            String kindCode,
            String number,
            ResistanceFamily family,
            double tareKg,
            double massKg,
            double lengthM,
            OptionalInt axles,
            BrakeKind brake,
            double blockForceN,
            OptionalDouble handBlockForceN,
            OptionalDouble brakedKg,
            OptionalDouble vacuumPa,
            double compositionShare,
            boolean braked) {}
}
