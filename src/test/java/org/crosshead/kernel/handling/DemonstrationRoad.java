package org.crosshead.kernel.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.MakeUp;
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
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;

/** An invented road of 100 km with a bank, a sag and a long fall, and trains to run on it. */
public final class DemonstrationRoad {

    public static final double LENGTH_M = 100_000;

    private static final double PIECE_M = 500;
    private static final double STOPS_M = 50_000;
    private static final double MARKS_M = 800;
    private static final double SLACK_MPS = 16;

    private DemonstrationRoad() {}

    public static Track track() {
        double[] boundaries = {
            0, 2_000, 6_000, 9_000, 14_000, 18_000, 20_000, 28_500, 30_000, 36_000, 41_000, 44_000, 52_000, 60_000,
            61_000, 75_000, 82_000, 90_000, LENGTH_M
        };
        double[] gradients = {
            0,
            1.0 / 300,
            0,
            1.0 / 220,
            -1.0 / 400,
            0,
            1.0 / 98,
            0,
            -1.0 / 130,
            -1.0 / 200,
            1.0 / 180,
            0,
            -1.0 / 250,
            0,
            -1.0 / 300,
            1.0 / 250,
            0,
            1.0 / 500
        };
        double[] curveEnds = {0, 22_000, 23_000, 33_000, 33_800, LENGTH_M};
        double straight = Double.POSITIVE_INFINITY;
        SpeedLimits limits = SpeedLimits.of(
                LENGTH_M,
                Units.mpsFromMph(60),
                List.of(
                        new SpeedLimits.Length(0, 900, Units.mpsFromMph(25)),
                        new SpeedLimits.Length(33_000, 33_800, Units.mpsFromMph(40)),
                        new SpeedLimits.Length(71_000, 72_000, Units.mpsFromMph(20))));
        return new Track(
                GradientProfile.of(boundaries, gradients),
                Curves.of(curveEnds, new double[] {straight, 600, straight, 400, straight}),
                limits);
    }

    /** The same road over and over, so long as is wanted, with a stop every 50 km and slack of a twelfth or so between them. */
    public static RunRequest stretched(double lengthM, int coaches) {
        List<Double> boundaries = new ArrayList<>();
        List<Double> gradients = new ArrayList<>();
        Track once = track();
        for (double atM = 0; atM < lengthM; atM += PIECE_M) {
            boundaries.add(atM);
            gradients.add(once.gradients().riseM(atM % LENGTH_M, atM % LENGTH_M + PIECE_M) / PIECE_M);
        }
        boundaries.add(lengthM);
        double straight = Double.POSITIVE_INFINITY;
        Track track = new Track(
                GradientProfile.of(array(boundaries), array(gradients)),
                Curves.of(new double[] {0, lengthM}, new double[] {straight}),
                SpeedLimits.of(lengthM, Units.mpsFromMph(60), List.of()));
        List<Call> calls = new ArrayList<>();
        double timeS = 0;
        for (double atM = 200; atM < lengthM - 5_000; atM += STOPS_M) {
            calls.add(new Call(atM, true, times(true, timeS - (calls.isEmpty() ? 1 : 60), timeS), Call.Standing.NONE));
            timeS += STOPS_M / SLACK_MPS;
        }
        double lastM = calls.get(calls.size() - 1).positionM();
        double endS = timeS + (lengthM - 200 - lastM - STOPS_M) / SLACK_MPS;
        calls.add(new Call(lengthM - 200, true, times(true, endS, -1), Call.Standing.NONE));
        RunRequest like = express(coaches, false);
        List<Double> marks = new ArrayList<>();
        for (double atM = 700; atM < lengthM; atM += MARKS_M) {
            marks.add(atM);
        }
        return new RunRequest(new RunRoad(track, RailState.DRY, List.of()), like.train(), calls, RunPolicy.COMMON)
                .marked(marks);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** An express with a number of coaches of 33 tons, three stops and booked times. */
    public static RunRequest express(int coaches, boolean booked) {
        return request(SteamEngine.of(EngineFixtures.express()), 115, coaches, booked);
    }

    public static RunRequest tank(int coaches) {
        return request(SteamEngine.of(EngineFixtures.tank()), 60, coaches, false);
    }

    private static RunRequest request(Engine engine, double engineTons, int coaches, boolean booked) {
        double coachKg = Units.kgFromLongTons(33);
        double engineKg = Units.kgFromLongTons(engineTons);
        RunningResistance trailing =
                ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, coachKg, 4).times(coaches);
        RunningResistance own = ResistanceFormulas.of(ResistanceFamily.LOCOMOTIVE, engineKg, 5);
        double massKg = engineKg + coaches * coachKg;
        TrainBody body = new TrainBody(massKg, 0.08, 19 + 18.5 * coaches, trailing.plus(own));
        EngineAtWork atWork =
                EngineAtWork.throughout(engine, EngineFixtures.ready(engine, 0.3), new Supply(18_000, 18_000, 6_000));
        MakeUp train = new MakeUp(
                body,
                new TrailingLoad(coaches * coachKg, trailing),
                List.of(atWork),
                new Application(Application.Kind.SERVICE, 4, 2, 5, speedMps -> 0.6 * massKg));
        return new RunRequest(new RunRoad(track(), RailState.DRY, List.of()), train, calls(booked), RunPolicy.COMMON);
    }

    private static List<Call> calls(boolean booked) {
        return List.of(
                new Call(200, true, times(booked, -1, 0), Call.Standing.NONE),
                new Call(19_000, true, times(booked, 1_500, 1_800), new Call.Standing(240, true)),
                new Call(30_000, false, times(booked, 2_800, -1), Call.Standing.NONE),
                new Call(60_500, true, times(booked, 5_000, 5_120), new Call.Standing(60, false)),
                new Call(LENGTH_M - 100, true, times(booked, 8_300, -1), Call.Standing.NONE));
    }

    private static Call.Times times(boolean booked, double arrivalS, double departureS) {
        return new Call.Times(time(booked, arrivalS), time(booked, departureS));
    }

    private static OptionalDouble time(boolean booked, double atS) {
        return booked && atS >= 0 ? OptionalDouble.of(atS) : OptionalDouble.empty();
    }
}
