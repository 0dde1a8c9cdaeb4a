package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunPolicy;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.motion.Supply;
import org.crosshead.kernel.motion.TrailingLoad;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.ResistanceFormulas;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.Curves;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;

/** Invented trips for the tests of plans. */
final class PlanTrips {

    private static final double MARK_M = 700;
    /** Steam of a boiler turned into coal for comparing two runs, kg of coal for a kilogram. */
    private static final double COAL_KG_PER_KG = 0.14;

    private static final Engine EXPRESS = SteamEngine.of(EngineFixtures.express());

    private PlanTrips() {}

    /** Coal put on, less what lies more on the grate, more or less what the boiler has less or more than at the start. */
    static double coalKg(RunRequest request, Run run) {
        Engine engine = request.train().engines().get(0).engine();
        EngineState first = run.state(0, 0);
        EngineState last = run.state(run.size() - 1, 0);
        return run.coalTotalKg(0)
                - (last.fireKg() - first.fireKg())
                + COAL_KG_PER_KG * (engine.reserveKg(first) - engine.reserveKg(last));
    }

    /** A trip from stop to stop over one profile; booked to take so long. */
    static RunRequest trip(double[] boundariesM, double[] gradients, int coaches, OptionalDouble bookedS) {
        return trip(EXPRESS, boundariesM, gradients, coaches, bookedS);
    }

    static RunRequest trip(
            Engine engine, double[] boundariesM, double[] gradients, int coaches, OptionalDouble bookedS) {
        double lengthM = boundariesM[boundariesM.length - 1];
        Track track = new Track(
                GradientProfile.of(boundariesM, gradients),
                Curves.of(new double[] {0, lengthM}, new double[] {Double.POSITIVE_INFINITY}),
                SpeedLimits.of(lengthM, Units.mpsFromMph(60), List.of()));
        return trip(engine, track, coaches, bookedS);
    }

    private static RunRequest trip(Engine engine, Track track, int coaches, OptionalDouble bookedS) {
        double lengthM = track.endM();
        double coachKg = Units.kgFromLongTons(33);
        double engineKg = Units.kgFromLongTons(115);
        RunningResistance trailing =
                ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, coachKg, 4).times(coaches);
        RunningResistance own = ResistanceFormulas.of(ResistanceFamily.LOCOMOTIVE, engineKg, 5);
        double massKg = engineKg + coaches * coachKg;
        TrainBody body = new TrainBody(massKg, 0.08, 19 + 18.5 * coaches, trailing.plus(own));
        EngineAtWork atWork =
                EngineAtWork.throughout(engine, EngineFixtures.ready(engine, 0.7), new Supply(18_000, 18_000, 6_000));
        MakeUp train = new MakeUp(
                body,
                new TrailingLoad(coaches * coachKg, trailing),
                List.of(atWork),
                new Application(Application.Kind.SERVICE, 4, 2, 5, speedMps -> 0.6 * massKg));
        List<Call> calls = List.of(
                Call.untimed(300, true),
                new Call(lengthM - 300, true, new Call.Times(bookedS, OptionalDouble.empty()), Call.Standing.NONE));
        List<Double> marks = new ArrayList<>();
        for (double at = 1_000; at < lengthM - 300; at += MARK_M) {
            marks.add(at);
        }
        return new RunRequest(new RunRoad(track, RailState.DRY, List.of()), train, calls, RunPolicy.COMMON)
                .marked(marks);
    }

    /** A seeded road of some 24 km with a limit or two, and a train of 4 to 11 coaches with some slack. */
    static RunRequest random(int seed) {
        Random random = new Random(seed);
        List<Double> boundaries = new ArrayList<>(List.of(0.0));
        List<Double> gradients = new ArrayList<>();
        double atM = 0;
        while (atM < 24_000) {
            atM += 600 + 3_000 * random.nextDouble();
            boundaries.add(atM);
            double steepest = random.nextInt(5) == 0 ? 1.0 / 100 : 1.0 / 220;
            gradients.add((2 * random.nextDouble() - 1) * steepest);
        }
        double lengthM = atM;
        double limitM = lengthM * (0.3 + 0.4 * random.nextDouble());
        SpeedLimits limits = SpeedLimits.of(
                lengthM,
                Units.mpsFromMph(60),
                List.of(new SpeedLimits.Length(limitM, limitM + 900, Units.mpsFromMph(25 + 5.0 * random.nextInt(4)))));
        Track track = new Track(
                GradientProfile.of(
                        boundaries.stream().mapToDouble(Double::doubleValue).toArray(),
                        gradients.stream().mapToDouble(Double::doubleValue).toArray()),
                Curves.of(new double[] {0, lengthM}, new double[] {Double.POSITIVE_INFINITY}),
                limits);
        int coaches = 4 + random.nextInt(8);
        double meanMps = 15.5 + 2.5 * random.nextDouble() - 0.35 * (coaches - 4);
        return trip(EXPRESS, track, coaches, OptionalDouble.of((lengthM - 600) / meanMps));
    }
}
