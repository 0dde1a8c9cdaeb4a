package org.crosshead.bench;

import java.util.concurrent.TimeUnit;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.Braking;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.ServiceBrakes;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.standing.Restart;
import org.crosshead.kernel.track.Curves.CurveDrag;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.units.Units;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one stopping distance from 60 mph, of the braking points of a road of 100 km with one every 5 km, service and emergency, and
 * of asking every 20 m of it whether the train starts again. {@link ForecastBenchmark#reference} beside them tells the machine's pace.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class BrakingBenchmark {

    private static final double SIXTY_MPS = Units.mpsFromMph(60);
    private static final double APART_M = 5_000;
    private static final double PLACES_M = 20;

    private final RunRequest request = DemonstrationRoad.express(8, false);
    private final Track track = request.road().track();
    private final GradientProfile profile = track.gradients();
    private final TrainBody body = request.train().body();
    private final CurveDrag drag = track.curves().drag(CurveResistance::perMassN);
    private final Application service;
    private final Application emergency;

    public BrakingBenchmark() {
        ContinuousBrake brake = new ContinuousBrake(
                ContinuousBrake.Means.VACUUM,
                ContinuousBrake.Timing.PASSENGER,
                body.lengthM(),
                CastIronBlocks.dry(0.7 * body.massKg() * Units.GRAVITY_MPS2, body.massKg()));
        service = ServiceBrakes.service(brake, 4);
        emergency = ServiceBrakes.emergency(brake, 4);
    }

    @Benchmark
    public Braking oneStop() {
        return StoppingDistance.forward(service, body, profile, 50_000, SIXTY_MPS, 0);
    }

    @Benchmark
    public double brakingPoints() {
        double sum = 0;
        for (double atM = APART_M; atM < profile.endM(); atM += APART_M) {
            sum += StoppingDistance.brakeOnM(service, body, profile, atM, SIXTY_MPS, 0);
            sum += StoppingDistance.brakeOnM(emergency, body, profile, atM, SIXTY_MPS, 0);
        }
        return sum;
    }

    @Benchmark
    public int standing() {
        int starts = 0;
        for (double atM = 0; atM < profile.endM(); atM += PLACES_M) {
            double rise = Units.sineOfGradient(profile.meanGradient(atM, body.lengthM()));
            double curve = drag.mean(atM, body.lengthM());
            Restart.Balance solid = Restart.under(body, rise, curve, 60_000);
            Restart.Balance setBack = Restart.under(body, rise, curve, 90_000);
            starts += Restart.way(solid, setBack, setBack) == Restart.Way.STARTS ? 1 : 0;
        }
        return starts;
    }
}
