package org.crosshead.kernel.scatter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.Driver;
import org.crosshead.kernel.motion.Fireman;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Pace;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.Gauges;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.PlanDriver;
import org.crosshead.kernel.plan.PlanFireman;
import org.crosshead.kernel.plan.PlanSetting;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Check;
import org.jspecify.annotations.Nullable;

/**
 * Runs the same handling on many days, with the corrections that its crew make. The crew know the plan and the speeds told with it,
 * not the day. Deterministic: a day is drawn by its number, and days are put together in the order of their numbers, on however many
 * cores they were run.
 */
public final class ScatteredRuns {

    private static final double LATE_S = 60;
    private static final double STEP_LEAST_M = 200;
    private static final double PLACES_MOST = 400;
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    private final RunRequest request;
    private final Run forecast;
    private final Spread spread;

    @Nullable
    private final Plan plan;

    private final List<Pace> paces;

    /**
     * @param forecast the run as told, which arrives
     * @param plan by which it was made; null where it was made by the rules of the trade
     */
    public ScatteredRuns(RunRequest request, Run forecast, @Nullable Plan plan, Spread spread) {
        this.request = request;
        this.forecast = forecast;
        this.plan = plan;
        this.spread = spread;
        paces = Pace.of(request, forecast);
    }

    /** Returns what comes of so many days, 1 to 10,000. */
    public Bands bands(int days) {
        Check.within("days", days, 1, 10_000);
        double[] placesM = places();
        DayRun[] runs = IntStream.range(0, days)
                .parallel()
                .mapToObj(number ->
                        new DayRun(run(number), placesM, request.calls().size()))
                .toArray(DayRun[]::new);
        return gathered(runs, placesM);
    }

    private RunOutcome run(int number) {
        return run(Day.drawn(spread, number, plan == null ? 0 : plan.settings().size()));
    }

    /** Returns the run of one day. */
    RunOutcome run(Day day) {
        RunRequest train = ScatteredTrain.on(request, day);
        return Forecast.paced(train, driver(day), fireman(day), paces);
    }

    private Driver driver(Day day) {
        return plan == null
                ? new RuleDriver()
                : new PlanDriver(late(plan, day.lagsS()), plan.causes(), plan.trip(), gauges(day));
    }

    private Fireman fireman(Day day) {
        return plan == null ? new RuleFireman() : new PlanFireman(plan.trip(), gauges(day));
    }

    private Gauges gauges(Day day) {
        Boiler boiler = request.train().engines().get(0).engine().parameters().boiler();
        return new Gauges(day.pressurePa(), day.glassShare() * boiler.glassKg());
    }

    /** Returns the settings where they are made a little early or late, in the same order. */
    private List<PlanSetting> late(Plan worked, List<Double> lagsS) {
        List<PlanSetting> moved = new ArrayList<>();
        double leastM = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < worked.settings().size(); i++) {
            PlanSetting setting = worked.settings().get(i);
            double speedMps = setting.fromM() < forecast.startM()
                    ? 0
                    : forecast.at(Math.min(setting.fromM(), forecast.endM())).speedMps();
            double fromM = Math.max(leastM, setting.fromM() + lagsS.get(i) * speedMps);
            moved.add(new PlanSetting(fromM, setting.controls()));
            leastM = fromM;
        }
        return moved;
    }

    private double[] places() {
        double lengthM = forecast.endM() - forecast.startM();
        int cells = (int) Math.max(1, Math.floor(Math.min(PLACES_MOST, lengthM / STEP_LEAST_M)));
        return IntStream.rangeClosed(0, cells)
                .mapToDouble(i -> i == cells ? forecast.endM() : forecast.startM() + lengthM * i / cells)
                .toArray();
    }

    private Bands gathered(DayRun[] runs, double[] placesM) {
        double leastKg =
                request.train().engines().get(0).engine().parameters().boiler().waterLeastKg();
        DayRun told = new DayRun(
                new RunOutcome.Arrives(forecast), placesM, request.calls().size());
        double[] standsM = Arrays.stream(runs)
                .filter(run -> run.standsM.isPresent())
                .mapToDouble(run -> run.standsM.getAsDouble())
                .sorted()
                .toArray();
        return new Bands(
                runs.length,
                list(placesM),
                band(runs, placesM.length, (run, i) -> run.pressurePa[i]),
                band(runs, placesM.length, (run, i) -> run.waterKg[i]),
                band(runs, placesM.length, (run, i) -> run.coalKg[i]),
                share(sorted(runs, run -> run.leastPressurePa), runs.length, LOW),
                share(sorted(runs, run -> run.leastWaterKg), runs.length, LOW),
                list(standsM),
                IntStream.range(0, placesM.length)
                        .mapToObj(i -> told.eased[i]
                                ? 0
                                : (int) Arrays.stream(runs)
                                        .filter(run -> run.eased[i])
                                        .count())
                        .toList(),
                (int) Arrays.stream(runs)
                        .filter(run -> run.leastWaterKg < leastKg)
                        .count(),
                IntStream.range(1, request.calls().size())
                        .mapToObj(call -> arrival(runs, call))
                        .toList());
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /** A value of a run at a place. */
    private interface AtPlace {
        double value(DayRun run, int place);
    }

    private static Bands.Band band(DayRun[] runs, int places, AtPlace at) {
        List<Double> low = new ArrayList<>();
        List<Double> middle = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            int place = i;
            double[] sorted = sorted(runs, run -> at.value(run, place));
            low.add(share(sorted, runs.length, LOW));
            middle.add(share(sorted, runs.length, 0.5));
            high.add(share(sorted, runs.length, HIGH));
        }
        return new Bands.Band(low, middle, high);
    }

    private Bands.Arrival arrival(DayRun[] runs, int call) {
        double[] sorted = sorted(runs, run -> run.arrivalS[call]);
        Call.Times times = request.calls().get(call).times();
        OptionalDouble booked = times.arrivalS().isPresent() ? times.arrivalS() : times.departureS();
        int late = 0;
        if (booked.isPresent()) {
            double latestS = booked.getAsDouble() + LATE_S;
            late = (int) Arrays.stream(runs)
                    .filter(run -> !(run.arrivalS[call] <= latestS))
                    .count();
        }
        return new Bands.Arrival(
                call,
                share(sorted, runs.length, LOW),
                share(sorted, runs.length, 0.5),
                share(sorted, runs.length, HIGH),
                late);
    }

    private static double[] sorted(DayRun[] runs, ToDoubleFunction<DayRun> value) {
        return Arrays.stream(runs)
                .mapToDouble(value)
                .filter(number -> !Double.isNaN(number))
                .sorted()
                .toArray();
    }

    /** Returns the value below which a share of the days lies, between two days in proportion; NaN where fewer than half came. */
    static double share(double[] sorted, int days, double share) {
        if (2 * sorted.length < days || sorted.length == 0) {
            return Double.NaN;
        }
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
