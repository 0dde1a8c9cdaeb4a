package org.crosshead.kernel.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.PlanFailure.Limit;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;

/**
 * Makes a plan: the bare optimum, the settings of a crew near it, and the run of those settings through the full model. Where that run
 * is later than booked the settings are made again with what was learnt. Deterministic.
 */
public final class Planner {

    private static final int ROUNDS = 2;
    private static final double LATE_S = 30;
    /** A plan lets the pressure fall no lower than to this share of the working pressure: a rule of this project. */
    private static final double PRESSURE_LEAST = 0.85;

    private static final double PRESSURE_ROOM = 0.05;
    private static final double LOWEST = 0.65;

    private Planner() {}

    /**
     * Returns the plan of a run; empty where no settings that a crew could keep bring the train to its last call with water over the
     * class's least. The outcome of a plan is therefore always {@link RunOutcome.Arrives}.
     *
     * @param request marked at the places where a crew can change something
     */
    public static Optional<Plan> plan(RunRequest request) {
        return optimum(request).flatMap(optimum -> plan(request, optimum));
    }

    private static Optional<BareOptimum> optimum(RunRequest request) {
        return BareOptimum.of(request, leastPa(boiler(request)));
    }

    /** Returns how low a plan lets the pressure fall: not so far as to the class's own least, for a run falls a little lower than its plan. */
    private static double leastPa(Boiler boiler) {
        double maxPa = boiler.pressureMaxPa();
        return boiler.pressureLeastPa().isEmpty()
                ? PRESSURE_LEAST * maxPa
                : Math.max(LOWEST * maxPa, boiler.pressureLeastPa().getAsDouble() + PRESSURE_ROOM * maxPa);
    }

    private static Boiler boiler(RunRequest request) {
        return request.train().engines().get(0).engine().parameters().boiler();
    }

    /**
     * Returns why there is no plan of a run, and what would make one; empty where there is one. Takes as long as some six plans.
     */
    public static Optional<PlanFailure> failure(RunRequest request) {
        double startPa = request.train().engines().get(0).start().pressurePa();
        if (startPa < boiler(request).pressureLeastPa().orElse(0)) {
            return Optional.of(new PlanFailure(Limit.STARTS_LOW, OptionalDouble.empty(), 0, false));
        }
        Optional<BareOptimum> optimum = optimum(request);
        if (optimum.isEmpty()) {
            return Optional.of(PlanFailure.of(request, Limit.PULL, OptionalDouble.empty()));
        }
        Optional<CrewPlan> crew = crew(request, optimum.get());
        if (crew.isEmpty()) {
            return Optional.of(PlanFailure.of(request, Limit.SETTINGS, OptionalDouble.empty()));
        }
        RunOutcome outcome = made(request, optimum.get(), crew.get(), 1).outcome();
        return broken(outcome, boiler(request))
                .map(limit -> PlanFailure.of(request, limit, OptionalDouble.of(place(outcome, limit))));
    }

    private static Optional<CrewPlan> crew(RunRequest request, BareOptimum optimum) {
        double[] stretch = new double[optimum.sections.all().size()];
        Arrays.fill(stretch, 1);
        return CrewPlan.of(request, optimum, request.road().marksM(), stretch);
    }

    private static double place(RunOutcome outcome, Limit limit) {
        Run run = outcome.run();
        return switch (limit) {
            case WATER -> run.positionM(run.lowestWater(0));
            case PRESSURE -> run.positionM(run.lowestPressure(0));
            default -> run.endM();
        };
    }

    /** Returns which bound a run breaks: it arrives, and neither water nor pressure falls below the least of the class. */
    private static Optional<Limit> broken(RunOutcome outcome, Boiler boiler) {
        Run run = outcome.run();
        if (outcome instanceof RunOutcome.Stalls) {
            return Optional.of(Limit.STANDS);
        }
        if (outcome instanceof RunOutcome.NotHeld) {
            return Optional.of(Limit.NOT_HELD);
        }
        if (run.waterKg(run.lowestWater(0)) < boiler.waterLeastKg()) {
            return Optional.of(Limit.WATER);
        }
        boolean low =
                run.pressurePa(run.lowestPressure(0)) < boiler.pressureLeastPa().orElse(0);
        return low ? Optional.of(Limit.PRESSURE) : Optional.empty();
    }

    /** Returns the cost of the bare optimum alone, as its own plan; empty where the train cannot make the trip. */
    public static Optional<PlanCost> bare(RunRequest request) {
        return optimum(request)
                .map(optimum -> new PlanCost(optimum.account.coalKg, optimum.account.coalKg, optimum.account.hardest));
    }

    private static Optional<Plan> plan(RunRequest request, BareOptimum optimum) {
        double bareCoalKg = optimum.account.coalKg;
        double[] stretch = new double[optimum.sections.all().size()];
        Arrays.fill(stretch, 1);
        Optional<Plan> best = Optional.empty();
        double bestLateS = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            Optional<CrewPlan> crew =
                    CrewPlan.of(request, optimum, request.road().marksM(), stretch);
            if (crew.isEmpty()) {
                return best;
            }
            Plan made = made(request, optimum, crew.get(), bareCoalKg);
            if (broken(made.outcome(), boiler(request)).isPresent()) {
                return best;
            }
            double lateS = learn(crew.get(), made.outcome(), stretch);
            if (lateS < bestLateS) {
                best = Optional.of(made);
                bestLateS = lateS;
            }
            if (lateS <= LATE_S) {
                break;
            }
        }
        return best;
    }

    private static Plan made(RunRequest request, BareOptimum optimum, CrewPlan crew, double bareCoalKg) {
        Reasons reasons = new Reasons(request, optimum, crew);
        List<Cause> causes = reasons.causes();
        Map<Integer, ShutWorth> shut = reasons.shut(causes);
        TripPlan trip = crew.account.plan(CrewPlan.paths(crew.legs));
        RunOutcome outcome =
                Forecast.timed(request, new PlanDriver(crew.settings(), causes, trip), new PlanFireman(trip));
        PlanCost cost = new PlanCost(bareCoalKg, crew.account.coalKg + slackKg(optimum, crew), crew.account.hardest);
        return new Plan(crew.settings(), causes, shut, trip, cost, outcome);
    }

    /** Returns what the time by which the plan is slower than the bare optimum is worth; negative where it is faster. */
    private static double slackKg(BareOptimum optimum, CrewPlan crew) {
        double sumKg = 0;
        for (Sections.Section section : crew.sections.all()) {
            double bareS = optimum.paths.get(section.leg()).timeS(section.fromNode(), section.toNode());
            double takenS = crew.legs.get(section.leg()).path().timeS(section.fromNode(), section.toNode());
            sumKg += section.price().kgPerS() * (takenS - bareS);
        }
        return sumKg;
    }

    /** Returns by how much the run is late at worst, and sets how much longer each late section takes than planned. */
    private static double learn(CrewPlan crew, RunOutcome outcome, double[] stretch) {
        List<CallTime> times = outcome.run().callTimes();
        double[] planned = crew.sectionS();
        double worst = 0;
        int fromCall = 0;
        List<Sections.Section> sections = crew.sections.all();
        for (int i = 0; i < sections.size(); i++) {
            int call = sections.get(i).call();
            double arrivalS = time(times, call).arrivalS();
            if (sections.get(i).bookedS().isPresent()) {
                double lateS = arrivalS - sections.get(i).bookedS().getAsDouble();
                double takenS = arrivalS - time(times, fromCall).departureS();
                if (lateS > LATE_S && !sections.get(i).price().dearest()) {
                    worst = Math.max(worst, lateS);
                    stretch[i] = Math.max(stretch[i], takenS / planned[i]);
                }
            }
            fromCall = call;
        }
        return worst;
    }

    private static CallTime time(List<CallTime> times, int call) {
        return times.stream().filter(time -> time.call() == call).findFirst().orElseThrow();
    }
}
