package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.braking.Braking;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.ServiceBrakes;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.cylinder.ColdCylinder;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.ShortMove;
import org.crosshead.kernel.traction.ShortMove.Burst;
import org.crosshead.kernel.traction.ShortMove.Move;
import org.crosshead.kernel.units.Units;

/**
 * What a light engine does on the level when moved a short way: coupling up, turning, watering.
 *
 * @param bursts the first valve opened for a moment and shut again, without brake
 * @param stopM in which the engine's own brake stops it from {@link #WALKING_MPH}, service application, no time to act; empty without a
 *     power brake
 * @param cold what condenses in cold cylinders
 * @param lagM way over which the pull follows the regulator under way, at {@link #LAG_CUTOFF}
 */
public record ShortMoves(List<Row> bursts, OptionalDouble stopM, Cold cold, double lagM) {

    public static final double WALKING_MPH = 3;

    public static final double LAG_CUTOFF = 0.25;
    /** Half a dozen beats when moving off, about. */
    public static final double FIRST_BEATS_S = 12;

    private static final double COLD_K = 288;
    private static final double LONG_S = 3_600;

    private static final double[] SECONDS = {1, 2, 4};
    private static final double LEVEL_M = 5_000;

    public ShortMoves {
        bursts = List.copyOf(bursts);
    }

    /** One burst of steam. */
    public record Row(double openS, boolean cocksOpen, Move move) {}

    /**
     * Water in one cold cylinder, kg; at most.
     *
     * @param firstKg over the first beats, {@link #FIRST_BEATS_S}
     * @param throughKg until it is warm through
     * @param clearanceKg that fills the clearance at one end
     */
    public record Cold(double firstKg, double throughKg, double clearanceKg) {

        static Cold of(LocomotiveParameters parameters) {
            ColdCylinder cylinder = new ColdCylinder(
                    parameters.cylinders().boreM(), parameters.cylinders().strokeM());
            double steamPa = parameters.boiler().pressureMaxPa() + SaturatedSteam.ATMOSPHERE_PA;
            return new Cold(
                    cylinder.condensedKg(steamPa, COLD_K, FIRST_BEATS_S),
                    cylinder.condensedKg(steamPa, COLD_K, LONG_S),
                    cylinder.clearanceKg(parameters.valveGear().form().clearance()));
        }
    }

    public static ShortMoves of(EngineFigures.Resolved engine) {
        RunningResistance resistance = engine.resistance(ResistanceRule.USUAL);
        TrainBody body = new TrainBody(engine.massKg(), StockModel.ROTATING_SHARE, engine.lengthM(), resistance);
        ShortMove.Load load = new ShortMove.Load(
                body.inertiaKg(), Math.max(resistance.startingN(), resistance.constantN()), resistance.constantN());
        List<Row> rows = new ArrayList<>();
        for (boolean cocksOpen : new boolean[] {false, true}) {
            for (double openS : SECONDS) {
                rows.add(new Row(
                        openS,
                        cocksOpen,
                        ShortMove.of(
                                engine.parameters(),
                                engine.parameters().boiler().pressureMaxPa(),
                                load,
                                new Burst(openS, Controls.FIRST_VALVE, cocksOpen))));
            }
        }
        return new ShortMoves(
                rows,
                stopM(engine, body),
                Cold.of(engine.parameters()),
                ShortMove.lagM(engine.parameters(), LAG_CUTOFF));
    }

    private static OptionalDouble stopM(EngineFigures.Resolved engine, TrainBody body) {
        EngineFigures.EngineBrake own = engine.brake();
        double blockN = engine.blockForceN();
        if (blockN <= 0) {
            return OptionalDouble.empty();
        }
        ContinuousBrake.Means means = switch (own.kind()) {
            case AIR -> ContinuousBrake.Means.AIR;
            case VACUUM -> ContinuousBrake.Means.VACUUM;
            default -> ContinuousBrake.Means.STEAM;
        };
        double railN = CastIronBlocks.RAIL_SHARE * engine.massKg() * Units.GRAVITY_MPS2;
        ContinuousBrake brake = new ContinuousBrake(
                means,
                ContinuousBrake.Timing.PASSENGER,
                0,
                new CastIronBlocks(blockN, CastIronBlocks.WET_OR_HOT, railN));
        GradientProfile level = GradientProfile.of(new double[] {0, LEVEL_M}, new double[] {0});
        Braking braking = StoppingDistance.forward(
                ServiceBrakes.service(brake, 0), body, level, 0, Units.mpsFromMph(WALKING_MPH), 0);
        return braking instanceof Braking.Slows slows ? OptionalDouble.of(slows.distanceM()) : OptionalDouble.empty();
    }
}
