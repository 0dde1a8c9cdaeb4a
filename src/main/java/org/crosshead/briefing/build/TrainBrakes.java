package org.crosshead.briefing.build;

import java.util.List;
import org.crosshead.kernel.braking.CastIronBlocks;
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

    private TrainBrakes() {}

    static ContinuousBrake of(
            TrainInputs inputs,
            EngineFigures.Resolved engine,
            FormationFigures.@Nullable Resolved consist,
            double lengthM,
            List<RailStretch> poorRail) {
        EngineFigures.EngineBrake own = engine.brake();
        double blockN = own.engineBlockForceN() + own.tenderBlockForceN();
        double brakedKg = blockN > 0 ? engine.massKg() : 0;
        boolean onTrain = false;
        if (consist != null) {
            for (FormationFigures.Vehicle vehicle : consist.vehicles()) {
                if (vehicle.braked()) {
                    onTrain = true;
                    blockN += vehicle.blockForceN();
                    brakedKg += vehicle.massKg();
                }
            }
        }
        double railN = railShare(inputs.content().rail(), poorRail) * brakedKg * Units.GRAVITY_MPS2;
        return new ContinuousBrake(
                means(own, onTrain),
                timing(inputs.content().kind()),
                onTrain ? lengthM : 0,
                new CastIronBlocks(blockN, CastIronBlocks.WET_OR_HOT, railN));
    }

    /** Returns the same brake on a rail that holds another share of the weight on braked wheels. */
    static ContinuousBrake onRail(ContinuousBrake brake, double fromShare, double toShare) {
        CastIronBlocks blocks = brake.blocks();
        return new ContinuousBrake(
                brake.means(),
                brake.timing(),
                brake.lengthM(),
                new CastIronBlocks(
                        blocks.blockForceN(), blocks.frictionShare(), blocks.railForceN() * toShare / fromShare));
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
