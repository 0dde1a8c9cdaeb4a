package org.crosshead.kernel.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No run can cost less than this: the least work at that time, at the best steam for a joule that the cylinders reach anywhere, made at an
 * even rate. The square of 1/v is convex in the resistance, so an even speed is the least (Jensen's inequality); coal for steam is convex,
 * so an even rate is. Derived here, other code than the planner's.
 */
class LowerBoundTests {

    private static final double HIGHEST_MPS = 28;
    private static final double FAR = 1.3;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 24);
    }

    private static double leastCoalKg(RunRequest request, double timeS) {
        double lengthM = request.endM() - request.startM();
        double trainM = request.train().body().lengthM();
        GradientProfile profile = request.road().track().gradients();
        double riseM = profile.meanHeightM(request.endM(), trainM) - profile.meanHeightM(request.startM(), trainM);
        RunningResistance resistance = request.train().body().resistance();
        double workJ = lengthM * resistance.forceN(lengthM / timeS)
                + request.train().body().massKg() * Units.GRAVITY_MPS2 * riseM;
        Engine engine = request.train().engines().get(0).engine();
        double steamKgPerS = Math.max(0, workJ) * leastSteamKgPerJ(engine) / timeS;
        double pressurePa = engine.parameters().boiler().pressureMaxPa();
        return timeS * engine.coalForSteamKgPerS(steamKgPerS, pressurePa);
    }

    private static double leastSteamKgPerJ(Engine engine) {
        double maxPa = engine.parameters().boiler().pressureMaxPa();
        double least = Double.POSITIVE_INFINITY;
        for (double share = 0.6; share <= 1; share += 0.05) {
            EngineState state = new EngineState(
                    share * maxPa, 0.5 * engine.parameters().boiler().waterFullKg(), 300);
            for (double cutoff = 0.05; cutoff <= 0.75; cutoff += 0.01) {
                for (double v = 0.5; v <= HIGHEST_MPS; v += 0.5) {
                    Pull pull = engine.pull(state, new Controls(1, cutoff), v, RailState.DRY);
                    if (pull.forceN() > 0) {
                        least = Math.min(least, pull.steamKgPerS() / (pull.forceN() * v));
                    }
                }
            }
        }
        return least;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void planLiesAboveTheBoundAndNotFar(int seed) {
        RunRequest request = PlanTrips.random(seed);
        BareOptimum optimum = BareOptimum.of(request, 0.85 * 1.55e6).orElseThrow();
        SpeedPath path = optimum.paths.get(0);
        double timeS = path.timeS(path.fromNode(), path.fromNode() + path.cells());
        double bound = leastCoalKg(request, timeS);
        assertThat(optimum.account.coalKg).isBetween(bound, FAR * bound);
    }
}
