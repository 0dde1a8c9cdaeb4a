package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.RunCells;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.SpeedProgramme.Fineness;
import org.crosshead.kernel.traction.Engine;

/**
 * The run that costs least coal at the booked times, with handles that can be set to anything: what a plan of few changes is measured
 * by. Speeds by dynamic programming at prices of time and steam; prices by what comes of them: of time so that each section takes what
 * is booked, of steam so that the boiler keeps its bounds. All are bettered in one loop while the sweeps grow finer.
 */
final class BareOptimum {

    private static final List<Fineness> SWEEPS = sweeps();
    private static final double TIME_CLOSE = 0.002;
    private static final int POLISH_LEAST = 1;
    private static final int POLISH_MOST = 8;
    private static final double[] NEAR_STOP_M = {8, 16, 24, 32, 40, 60, 80, 120, 160};

    final PlanRoad road;
    final Sections sections;
    final Prices prices;
    final SteamAccount account;
    final List<SpeedPath> paths;

    private BareOptimum(PlanRoad road, Sections sections, Prices prices, SteamAccount account, List<SpeedPath> paths) {
        this.road = road;
        this.sections = sections;
        this.prices = prices;
        this.account = account;
        this.paths = paths;
    }

    private static List<Fineness> sweeps() {
        List<Fineness> sweeps = new ArrayList<>();
        add(sweeps, 4, new Fineness(10, 8, -1));
        add(sweeps, 3, new Fineness(6, 4, 5));
        add(sweeps, 3, new Fineness(3, 2, 5));
        add(sweeps, 3, new Fineness(2, 1, 6));
        add(sweeps, 3, new Fineness(1, 0.5, 6));
        return List.copyOf(sweeps);
    }

    private static void add(List<Fineness> sweeps, int times, Fineness fineness) {
        for (int i = 0; i < times; i++) {
            sweeps.add(fineness);
        }
    }

    /** Returns the optimum; empty if the train cannot make the trip at all. */
    static Optional<BareOptimum> of(RunRequest request, double pressureLeastPa) {
        return of(request, pressureLeastPa, new Polish(new Fineness(1, 0.2, 6), POLISH_LEAST));
    }

    /**
     * The last sweeps, which settle times.
     *
     * @param times how many at least
     */
    record Polish(Fineness fineness, int times) {}

    /** Returns the optimum by as fine last sweeps as asked. */
    static Optional<BareOptimum> of(RunRequest request, double pressureLeastPa, Polish polish) {
        RunCells grid = RunCells.of(refined(request));
        double speedMaxMps = 0;
        for (int i = 0; i < grid.count(); i++) {
            speedMaxMps = Math.max(speedMaxMps, Math.max(grid.allowedStart(i), grid.allowedEnd(i)));
        }
        PlanRoad road = new PlanRoad(request, grid, Math.sqrt(speedMaxMps) + 0.1);
        Engine engine = request.train().engines().get(0).engine();
        BoilerBounds bounds =
                new BoilerBounds(engine, request.train().engines().get(0).start(), pressureLeastPa);
        CoalCurve coal = new CoalCurve(engine, request.policy().weights().waterKgPerKg());
        SteamAccount account = new SteamAccount(road, coal, bounds);
        Sections sections = new Sections(request, road, engine.furnace().coalMaxKgPerS());
        Prices prices = new Prices(road.cells, coal, PullTable.PRESSURES - 2);
        BareOptimum optimum = new BareOptimum(road, sections, prices, account, new ArrayList<>());
        return optimum.sweep(polish) ? Optional.of(optimum) : Optional.empty();
    }

    /** Short cells where speed changes most for its distance: after every start and before every stop. */
    private static RunRequest refined(RunRequest request) {
        List<Double> places = new ArrayList<>(request.road().marksM());
        for (Call call : request.calls()) {
            if (call.stops() || call.positionM() == request.startM() || call.positionM() == request.endM()) {
                for (double offM : NEAR_STOP_M) {
                    places.add(call.positionM() + offM);
                    places.add(call.positionM() - offM);
                }
            }
        }
        return request.marked(places);
    }

    private boolean sweep(Polish polish) {
        double[] ones = new double[sections.all().size()];
        Arrays.fill(ones, 1);
        for (Fineness fineness : SWEEPS) {
            if (!once(fineness, ones)) {
                return false;
            }
        }
        for (int i = 0; i < POLISH_MOST + polish.times(); i++) {
            if (!once(polish.fineness(), ones)) {
                return false;
            }
            if (i + 1 >= polish.times() && sections.miss(paths, ones) < TIME_CLOSE) {
                break;
            }
        }
        return true;
    }

    private boolean once(Fineness fineness, double[] ones) {
        sections.price(prices);
        for (int leg = 0; leg < road.legs.size(); leg++) {
            SpeedPath before = leg < paths.size() ? paths.get(leg) : null;
            Optional<SpeedPath> found = new SpeedProgramme(road, road.legs.get(leg)).path(prices, fineness, before);
            if (found.isEmpty()) {
                return false;
            }
            if (before == null) {
                paths.add(found.get());
            } else {
                paths.set(leg, found.get());
            }
        }
        sections.learn(paths, ones);
        account.draw(paths, sections.standingS(paths, ones), prices);
        return true;
    }
}
