package org.crosshead.briefing.build;

import java.util.List;
import org.crosshead.kernel.braking.BlockFriction;
import org.crosshead.kernel.braking.BrakeReading;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.braking.CombinedBrake;
import org.crosshead.kernel.braking.CompositionBlocks;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.ContinuousBrake.Means;
import org.crosshead.kernel.braking.ContinuousBrake.Timing;
import org.crosshead.kernel.motion.RailStretch;
import org.crosshead.kernel.traction.Adhesion;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.FormationFigures;
import org.jspecify.annotations.Nullable;

/**
 * The working brake of a train, on the safe side: blocks wet or hot, the rail in the worst state of the path, and only vehicles
 * that the engine's brake reaches.
 */
final class TrainBrakes {

    /** Two blocks a wheel, as on coaches and fitted wagons: an estimate. */
    private static final double BLOCKS_FOR_EACH_AXLE = 4;

    private TrainBrakes() {}

    static ContinuousBrake of(
            TrainInputs inputs,
            EngineFigures.Resolved engine,
            FormationFigures.@Nullable Resolved consist,
            double lengthM,
            List<RailStretch> poorRail) {
        EngineFigures.EngineBrake own = engine.brake();
        double ironN = engine.blockForceN();
        double ironKg = ironN > 0 ? engine.massKg() : 0;
        double compositionN = 0;
        double compositionKg = 0;
        boolean onTrain = false;
        if (consist != null) {
            for (FormationFigures.Vehicle vehicle : consist.vehicles()) {
                if (vehicle.braked()) {
                    onTrain = true;
                    double share = vehicle.compositionShare();
                    double forceN = pressedN(vehicle, engine.brake());
                    double eachN = blockN(vehicle, forceN);
                    ironN += (1 - share) * BlockFriction.ironShare(eachN) * forceN;
                    ironKg += (1 - share) * vehicle.massKg();
                    compositionN += share * BlockFriction.compositionShare(eachN) * forceN;
                    compositionKg += share * vehicle.massKg();
                }
            }
        }
        double railNPerKg = railShare(inputs.content().rail(), poorRail) * Units.GRAVITY_MPS2;
        CastIronBlocks iron = new CastIronBlocks(ironN, CastIronBlocks.WET_OR_HOT, railNPerKg * ironKg);
        CompositionBlocks composition =
                new CompositionBlocks(compositionN, CompositionBlocks.WET, railNPerKg * compositionKg);
        return new ContinuousBrake(
                means(own, onTrain),
                timing(inputs.content().kind()),
                onTrain ? lengthM : 0,
                compositionN > 0 ? CombinedBrake.of(iron, composition) : iron);
    }

    /** Returns the force of one block, two blocks a wheel; 0, the friction whatever the force, where the axles are not known. */
    private static double blockN(FormationFigures.Vehicle vehicle, double forceN) {
        return vehicle.axles().isEmpty()
                ? 0
                : forceN / (BLOCKS_FOR_EACH_AXLE * vehicle.axles().getAsInt());
    }

    /** A vacuum brake presses in proportion to the vacuum that the engine makes, where it is made for more. */
    private static double pressedN(FormationFigures.Vehicle vehicle, EngineFigures.EngineBrake engine) {
        boolean less = vehicle.brake() == BrakeKind.VACUUM
                && vehicle.vacuumPa().isPresent()
                && engine.vacuumPa() < vehicle.vacuumPa().getAsDouble();
        return less
                ? vehicle.blockForceN()
                        * BrakeReading.vacuumShare(vehicle.vacuumPa().getAsDouble(), engine.vacuumPa(), 0)
                : vehicle.blockForceN();
    }

    /** Returns the same brake on a rail that holds another share of the weight on braked wheels. */
    static ContinuousBrake onRail(ContinuousBrake brake, double fromShare, double toShare) {
        return new ContinuousBrake(
                brake.means(), brake.timing(), brake.lengthM(), brake.blocks().onRail(toShare / fromShare));
    }

    static double railShare(RailState rail, List<RailStretch> poorRail) {
        double worst = Math.min(CastIronBlocks.RAIL_SHARE, Adhesion.coefficient(rail, 0));
        for (RailStretch stretch : poorRail) {
            worst = Math.min(worst, Adhesion.coefficient(stretch.state(), 0));
        }
        return worst;
    }

    private static Timing timing(TrainKind kind) {
        return kind == TrainKind.PASSENGER || kind == TrainKind.LIGHT_ENGINE ? Timing.PASSENGER : Timing.GOODS;
    }

    private static Means means(EngineFigures.EngineBrake own, boolean onTrain) {
        BrakeKind kind = onTrain ? own.trainBrake() : own.kind();
        return switch (kind) {
            case AIR -> Means.AIR;
            case VACUUM -> Means.VACUUM;
            case STEAM -> Means.STEAM;
            default -> Means.HAND;
        };
    }
}
