package org.crosshead.stock;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.crosshead.kernel.braking.BlockFriction;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.LocomotiveParameters;

/** An engine's stored figures as the kernel wants them, or what is missing for that. */
public sealed interface EngineFigures {

    /**
     * Everything needed is known.
     *
     * @param engineMassKg in working order, without the tender
     * @param tenderMassKg full; 0 for a tank engine
     * @param axles of engine and tender, where known
     * @param supplies what tank and bunker hold when full
     * @param brake its own brake
     * @param figures the figures behind it: the engine's own in place of the class's
     * @param estimates the accepted estimates among them
     */
    record Resolved(
            LocomotiveParameters parameters,
            double engineMassKg,
            double tenderMassKg,
            double lengthM,
            OptionalInt axles,
            Supplies supplies,
            EngineBrake brake,
            List<SourcedFigure> figures,
            List<EstimateUsed> estimates)
            implements EngineFigures {

        public Resolved {
            figures = List.copyOf(figures);
            estimates = List.copyOf(estimates);
        }

        public double massKg() {
            return engineMassKg + tenderMassKg;
        }

        /**
         * Returns as which share of its force each iron block of its own brake counts, one block a wheel: 1 where the axles are not known.
         */
        public double blockShare() {
            double forceN = brake.engineBlockForceN() + brake.tenderBlockForceN();
            return axles.isEmpty() ? 1 : BlockFriction.ironShare(forceN / (2 * axles.getAsInt()));
        }

        /** Returns the force of all blocks of its own brake, with {@link #blockShare}. */
        public double blockForceN() {
            return blockShare() * (brake.engineBlockForceN() + brake.tenderBlockForceN());
        }

        /** Returns the resistance of engine and tender on straight level track. */
        public RunningResistance resistance(ResistanceRule rule) {
            RunningResistance ofEngine = rule.of(ResistanceFamily.LOCOMOTIVE, engineMassKg, OptionalInt.empty());
            return tenderMassKg > 0
                    ? ofEngine.plus(rule.of(ResistanceFamily.TENDER, tenderMassKg, OptionalInt.empty()))
                    : ofEngine;
        }
    }

    /** Some figure is unknown, or an estimate that nobody has accepted. */
    record Missing(List<MissingFigure> missing) implements EngineFigures {

        public Missing {
            missing = List.copyOf(missing);
        }
    }

    /** What the engine carries when full. */
    record Supplies(double tankFullKg, double coalFullKg) {}

    /**
     * The engine's own brake.
     *
     * @param kind brake on engine and tender
     * @param trainBrake brake that it works on its train
     * @param engineBlockForceN sum over the engine's blocks, 0 without a power brake
     * @param tenderBlockForceN sum over the tender's blocks, 0 for a tank engine
     * @param brakedKg braked weight of both as painted, where known
     * @param vacuumPa vacuum that it makes in the train pipe; 21 inches where it is not said
     */
    record EngineBrake(
            BrakeKind kind,
            BrakeKind trainBrake,
            double engineBlockForceN,
            double tenderBlockForceN,
            OptionalDouble brakedKg,
            double vacuumPa) {}
}
