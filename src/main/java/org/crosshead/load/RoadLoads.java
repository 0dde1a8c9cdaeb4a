package org.crosshead.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.ConstantRetardation;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunPolicy;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.motion.Supply;
import org.crosshead.kernel.motion.TrailingLoad;
import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.standing.Restart;
import org.crosshead.kernel.track.Curves.CurveDrag;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LimitedBy;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.units.Units;
import org.crosshead.load.LoadAnswer.Limit;
import org.crosshead.load.LoadAnswer.Reading;
import org.crosshead.load.LoadAnswer.Section;
import org.crosshead.load.LoadAnswer.Stopped;
import org.crosshead.load.LoadAnswer.What;
import org.crosshead.route.PathGeometry;
import org.crosshead.stock.ResistanceRule;
import org.jspecify.annotations.Nullable;

/**
 * Finds greatest loads over one path by halving the number of vehicles. Three limits are kept apart: what starts where it may be
 * stopped, what is kept moving steadily at a least speed for good, and what is worked through with the run it can take.
 */
final class RoadLoads {

    /** The most vehicles looked at. */
    static final int MOST = 100;

    private static final double STEP_M = 100;

    /** Boiler pressure taken for a start, as a share of working pressure: an estimate on the safe side, as in a briefing. */
    private static final double STARTING_PRESSURE = 0.9;

    private static final double CUTOFF_STEP = 0.025;
    private static final double SLOWING_MPS2 = 0.4;
    private static final double GLASS = 0.75;
    private static final double FIRE = 0.9;
    private static final double STARTED_MPS = 3;
    private static final double SHORTEST_M = 500;

    /** How far above the least pressure the driver begins to spare steam, and between which shares of the working pressure. */
    private static final double SPARED = 0.06;

    private static final double DRIVER_LEAST = 0.72;
    private static final double DRIVER_MOST = 0.9;

    private final PathGeometry path;
    private final Track track;
    private final CurveDrag drag;
    private final Hauled hauled;
    private final LoadQuestion asked;
    private final double speedMaxMps;
    private final double startN;
    private final double steadyN;
    private final LimitedBy startLimit;
    private final LimitedBy steadyLimit;

    RoadLoads(PathGeometry path, Hauled hauled, LoadQuestion asked, double speedMaxMps) {
        this.path = path;
        this.hauled = hauled;
        this.asked = asked;
        this.speedMaxMps = speedMaxMps;
        track = path.track(speedMaxMps);
        drag = track.curves().drag(CurveResistance::perMassN);
        Pull start = start();
        startN = start.forceN();
        startLimit = start.railForceN() < start.cylinderForceN() ? LimitedBy.RAIL : LimitedBy.CYLINDER;
        Pull steady = steady();
        steadyN = Math.min(steady.forceN(), steady.boilerForceN());
        steadyLimit = steady.boilerForceN() <= steady.forceN() ? LimitedBy.BOILER : steady.limitedBy();
    }

    /** Returns a section's limits. */
    Section section(String from, String to, double fromM, double toM) {
        return new Section(
                from,
                to,
                limit(count -> startStopped(count, fromM, toM)),
                limit(count -> steadyStopped(count, fromM, toM)),
                limit(count -> stopped(run(count, fromM, toM))));
    }

    /** Returns loads over the whole path without a stop, up to one that is stopped. */
    List<LoadAnswer.Run> runs() {
        int most = limit(count -> stopped(run(count, 0, path.lengthM()))).vehicles();
        List<LoadAnswer.Run> runs = new ArrayList<>();
        int before = -1;
        for (double share : new double[] {0.4, 0.6, 0.8, 1}) {
            int count = (int) Math.round(share * most);
            if (count > before) {
                runs.add(row(count));
            }
            before = Math.max(before, count);
        }
        if (most < MOST) {
            runs.add(row(most + 1));
            runs.add(row(most + 1 + Math.max(1, most / 10)));
        }
        return runs;
    }

    private Limit limit(IntFunction<@Nullable Stopped> stops) {
        if (stops.apply(0) != null) {
            return new Limit(0, 0, stops.apply(0));
        }
        if (stops.apply(MOST) == null) {
            return new Limit(MOST, hauled.tons(MOST), null);
        }
        int low = 0;
        int high = MOST;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (stops.apply(middle) == null) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Limit(low, hauled.tons(low), stops.apply(high));
    }

    private Pull start() {
        Engine engine = hauled.engine();
        Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(STARTING_PRESSURE * boiler.pressureMaxPa(), boiler.waterLeastKg(), 0);
        double full = engine.parameters().valveGear().cutoffFull();
        return engine.pull(state, new Controls(1, full), 0, asked.rail());
    }

    /** The pull at the least speed with the cutoff at which cylinders and boiler together give most for good. */
    private Pull steady() {
        Engine engine = hauled.engine();
        Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(boiler.pressureMaxPa(), boiler.waterFullKg(), 0);
        double speedMps = Units.mpsFromMph(asked.leastMph());
        double least = engine.parameters().valveGear().cutoffLeast();
        Pull best = engine.pull(state, new Controls(1, least), speedMps, asked.rail());
        for (double cutoff = least;
                cutoff <= engine.parameters().valveGear().cutoffFull() + 1e-9;
                cutoff += CUTOFF_STEP) {
            Pull pull = engine.pull(state, new Controls(1, Math.min(1, cutoff)), speedMps, asked.rail());
            if (Math.min(pull.forceN(), pull.boilerForceN()) > Math.min(best.forceN(), best.boilerForceN())) {
                best = pull;
            }
        }
        return best;
    }

    private @Nullable Stopped startStopped(int count, double fromM, double toM) {
        TrainBody body = hauled.body(count);
        double worstM = Double.NaN;
        double worstN = 0;
        for (double atM = fromM; atM <= toM; atM += STEP_M) {
            double spareN = Restart.under(
                            body,
                            track.gradients().meanGradient(atM, body.lengthM()),
                            drag.mean(atM, body.lengthM()),
                            startN)
                    .spareN();
            if (spareN <= worstN) {
                worstN = spareN;
                worstM = atM;
            }
        }
        return Double.isNaN(worstM) ? null : new Stopped(what(startLimit), place(worstM));
    }

    private @Nullable Stopped steadyStopped(int count, double fromM, double toM) {
        TrainBody body = hauled.body(count);
        double runningN = body.resistance().forceN(Units.mpsFromMph(asked.leastMph()));
        double worstM = Double.NaN;
        double worstN = 0;
        for (double atM = fromM; atM <= toM; atM += STEP_M) {
            double slope = track.gradients().meanGradient(atM, body.lengthM());
            double alongN = body.massKg() * (Units.GRAVITY_MPS2 * slope + drag.mean(atM, body.lengthM()));
            double spareN = steadyN - runningN - alongN;
            if (spareN <= worstN) {
                worstN = spareN;
                worstM = atM;
            }
        }
        return Double.isNaN(worstM) ? null : new Stopped(what(steadyLimit), place(worstM));
    }

    private static What what(LimitedBy limit) {
        return switch (limit) {
            case CYLINDER -> What.CYLINDER;
            case BOILER -> What.BOILER;
            case RAIL -> What.RAIL;
        };
    }

    private RunOutcome run(int count, double fromM, double toM) {
        TrainBody body = hauled.body(count);
        Engine engine = hauled.engine();
        Boiler boiler = engine.parameters().boiler();
        EngineState state = new EngineState(
                boiler.pressureMaxPa(),
                boiler.waterLeastKg() + GLASS * boiler.glassKg(),
                FIRE * engine.furnace().fullKg());
        Supply supply = new Supply(
                hauled.figures().supplies().tankFullKg(),
                hauled.figures().supplies().tankFullKg(),
                hauled.figures().supplies().coalFullKg());
        Application service = new Application(
                Application.Kind.SERVICE, 0, 0, 0, ConstantRetardation.of(SLOWING_MPS2, body.inertiaKg()));
        TrailingLoad trailing = count == 0
                ? TrailingLoad.NONE
                : new TrailingLoad(
                        hauled.load(count).massKg(), hauled.load(count).resistance(ResistanceRule.USUAL));
        RunRequest request = new RunRequest(
                new RunRoad(track, asked.rail(), List.of()),
                new MakeUp(body, trailing, List.of(EngineAtWork.throughout(engine, state, supply)), service),
                List.of(Call.untimed(fromM, true), Call.untimed(toM, true)),
                new RunPolicy(RunPolicy.COMMON.brakingMargin(), 0, speedMaxMps));
        double kept = Math.max(DRIVER_LEAST, Math.min(DRIVER_MOST, asked.leastPressureShare() + SPARED));
        return Forecast.unhurried(request, new RuleDriver(kept), new RuleFireman());
    }

    private @Nullable Stopped stopped(RunOutcome outcome) {
        if (outcome instanceof RunOutcome.Stalls stalls) {
            return new Stopped(What.STANDS, place(stalls.positionM()));
        }
        if (outcome instanceof RunOutcome.NotHeld notHeld) {
            return new Stopped(What.BRAKE, place(notHeld.positionM()));
        }
        Run run = outcome.run();
        int lowest = run.lowestPressure(0);
        double leastPa = asked.leastPressureShare()
                * hauled.engine().parameters().boiler().pressureMaxPa();
        return run.pressurePa(lowest) < leastPa ? new Stopped(What.PRESSURE, place(run.positionM(lowest))) : null;
    }

    private LoadAnswer.Run row(int count) {
        RunOutcome outcome = run(count, 0, path.lengthM());
        Run run = outcome.run();
        int slowest = slowest(run, hauled.body(count).lengthM());
        int lowest = run.lowestPressure(0);
        return new LoadAnswer.Run(
                count,
                hauled.tons(count),
                outcome instanceof RunOutcome.Arrives ? run.durationS() / 60 : null,
                new Reading(Units.mphFromMps(run.speedMps(slowest)), place(run.positionM(slowest))),
                new Reading(Units.psiFromPa(run.pressurePa(lowest)), place(run.positionM(lowest))),
                stopped(outcome));
    }

    /** The slowest sample on a rising road once the train has got away; the last of all where it comes to a stand. */
    private int slowest(Run run, double lengthM) {
        int found = run.size() - 1;
        boolean away = false;
        double slowestMps = Double.POSITIVE_INFINITY;
        for (int i = 0; i < run.size(); i++) {
            away |= run.speedMps(i) > STARTED_MPS && run.positionM(i) > run.startM() + SHORTEST_M;
            boolean climbs = track.gradients().meanGradient(run.positionM(i), lengthM) > 0 && run.regulator(i) > 0;
            if (away && climbs && run.speedMps(i) < slowestMps) {
                slowestMps = run.speedMps(i);
                found = i;
            }
        }
        return found;
    }

    private String place(double atM) {
        return path.at(Math.min(atM, path.lengthM())).measureText();
    }
}
