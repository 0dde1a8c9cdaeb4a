package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;

/**
 * A plan with what an inspector changed in it by hand, one change after the other, each run through the full model. One that would break
 * a limit is left out, and said to be. Fire and feed stay as planned; the fireman's corrections do the rest.
 *
 * @param done in the order of the changes
 */
public record HandedPlan(Plan plan, List<Done> done) {

    /** A setting of the plan within this of a change is the one that is meant: a plan made anew may lay it a landmark further. */
    private static final double NEAR_M = 800;

    /** An added setting takes the place of one of the plan that lies no farther from it. */
    private static final double SAME_M = 25;

    /** A gauge is read no finer. */
    private static final double READ_PA = Units.paFromPsi(2);

    /** Share of the greatest evaporation at which a kilogram of steam left in the boiler is valued. */
    private static final double USUAL_SHARE = 0.5;

    public HandedPlan {
        done = List.copyOf(done);
    }

    /** What came of a change. */
    public enum Fate {
        APPLIED,
        /** The plan sets nothing near, or only the start, which is not changed. */
        NOTHING_THERE,
        STALLS,
        NOT_HELD,
        LOW_WATER,
        LOW_PRESSURE
    }

    /**
     * A change and what came of it.
     *
     * @param coalKg more than without it, what is left in boiler and fire set against it; 0 where it is left out
     * @param timeS by which the train arrives later, negative for earlier
     * @param limitM where the limit is broken for which it is left out; else where the change is
     */
    public record Done(HandChange change, Fate fate, double coalKg, double timeS, double limitM) {}

    /**
     * Returns the plan changed.
     *
     * @param request of the plan
     * @param pressureLeastPa below which the boiler must not come by such a change, where it does not by the plan
     */
    public static HandedPlan of(RunRequest request, Plan plan, List<HandChange> changes, double pressureLeastPa) {
        Plan now = plan;
        List<Done> done = new ArrayList<>();
        for (HandChange change : changes) {
            Optional<Settings> changed = changed(Settings.of(now), change);
            if (changed.isEmpty()) {
                done.add(new Done(change, Fate.NOTHING_THERE, 0, 0, change.atM()));
                continue;
            }
            Plan tried = run(request, now, changed.get());
            Fate fate = fate(request, tried.outcome(), now, pressureLeastPa);
            if (fate == Fate.APPLIED) {
                done.add(new Done(
                        change,
                        fate,
                        coalKg(request, tried.outcome().run())
                                - coalKg(request, now.outcome().run()),
                        tried.outcome().run().durationS() - now.outcome().run().durationS(),
                        change.atM()));
                now = tried;
            } else {
                done.add(new Done(
                        change, fate, 0, 0, limitM(fate, tried.outcome().run())));
            }
        }
        return new HandedPlan(now, done);
    }

    /** Settings with their causes and what shutting is worth. */
    private record Settings(List<PlanSetting> all, List<Cause> causes, Map<PlanSetting, ShutWorth> worth) {

        static Settings of(Plan plan) {
            Map<PlanSetting, ShutWorth> worth = new HashMap<>();
            plan.shut().forEach((index, value) -> worth.put(plan.settings().get(index), value));
            return new Settings(new ArrayList<>(plan.settings()), new ArrayList<>(plan.causes()), worth);
        }

        Settings without(int index) {
            List<PlanSetting> settings = new ArrayList<>(all);
            List<Cause> reasons = new ArrayList<>(causes);
            settings.remove(index);
            reasons.remove(index);
            return new Settings(settings, reasons, worth);
        }

        Settings with(PlanSetting setting) {
            List<PlanSetting> settings = new ArrayList<>(all);
            List<Cause> reasons = new ArrayList<>(causes);
            int at = 0;
            while (at < settings.size() && settings.get(at).fromM() <= setting.fromM()) {
                at++;
            }
            settings.add(at, setting);
            reasons.add(at, Cause.SET_BY_HAND);
            return new Settings(settings, reasons, worth);
        }

        /** Returns the index of the setting nearest to a place within a reach, starts aside, or -1. */
        int near(double atM, double reachM) {
            int nearest = -1;
            for (int i = 0; i < all.size(); i++) {
                double apartM = Math.abs(all.get(i).fromM() - atM);
                boolean nearer =
                        nearest < 0 || apartM < Math.abs(all.get(nearest).fromM() - atM);
                if (causes.get(i) != Cause.STARTING && apartM <= reachM && nearer) {
                    nearest = i;
                }
            }
            return nearest;
        }

        Map<Integer, ShutWorth> shut() {
            Map<Integer, ShutWorth> shut = new HashMap<>();
            for (int i = 0; i < all.size(); i++) {
                ShutWorth value = worth.get(all.get(i));
                if (value != null) {
                    shut.put(i, value);
                }
            }
            return shut;
        }
    }

    private static Optional<Settings> changed(Settings settings, HandChange change) {
        if (change instanceof HandChange.Added added) {
            int there = settings.near(added.atM(), SAME_M);
            Settings free = there < 0 ? settings : settings.without(there);
            return Optional.of(free.with(new PlanSetting(added.atM(), added.controls())));
        }
        int there = settings.near(change.atM(), NEAR_M);
        if (there < 0) {
            return Optional.empty();
        }
        PlanSetting meant = settings.all().get(there);
        Settings without = settings.without(there);
        return Optional.of(
                change instanceof HandChange.Moved moved
                        ? without.with(new PlanSetting(moved.toM(), meant.controls()))
                        : without);
    }

    /** Returns the plan with other settings; the speeds that should come of them are those of a run without corrections. */
    private static Plan run(RunRequest request, Plan plan, Settings settings) {
        TripPlan free = plan.trip().withoutSpeeds();
        RunOutcome uncorrected = Forecast.timed(
                request, new PlanDriver(settings.all(), settings.causes(), free), new PlanFireman(plan.trip()));
        TripPlan trip =
                uncorrected instanceof RunOutcome.Arrives ? plan.trip().withSpeedsOf(uncorrected.run()) : plan.trip();
        RunOutcome outcome =
                Forecast.timed(request, new PlanDriver(settings.all(), settings.causes(), trip), new PlanFireman(trip));
        return new Plan(settings.all(), settings.causes(), settings.shut(), trip, plan.cost(), outcome);
    }

    private static Fate fate(RunRequest request, RunOutcome outcome, Plan before, double pressureLeastPa) {
        Run run = outcome.run();
        Boiler boiler = request.train().engines().get(0).engine().parameters().boiler();
        Run then = before.outcome().run();
        double leastPa = Math.min(pressureLeastPa, then.pressurePa(then.lowestPressure(0)) - READ_PA);
        if (outcome instanceof RunOutcome.Stalls) {
            return Fate.STALLS;
        }
        if (outcome instanceof RunOutcome.NotHeld) {
            return Fate.NOT_HELD;
        }
        if (run.waterKg(run.lowestWater(0)) < boiler.waterLeastKg()) {
            return Fate.LOW_WATER;
        }
        return run.pressurePa(run.lowestPressure(0)) < leastPa ? Fate.LOW_PRESSURE : Fate.APPLIED;
    }

    private static double limitM(Fate fate, Run run) {
        return switch (fate) {
            case LOW_WATER -> run.positionM(run.lowestWater(0));
            case LOW_PRESSURE -> run.positionM(run.lowestPressure(0));
            default -> run.endM();
        };
    }

    /** Returns the coal of a run less what is left of it in fire and boiler. */
    private static double coalKg(RunRequest request, Run run) {
        Engine engine = request.train().engines().get(0).engine();
        int last = run.size() - 1;
        double pressurePa = engine.parameters().boiler().pressureMaxPa();
        double steam = USUAL_SHARE * engine.evaporationMaxKgPerS(pressurePa);
        double perKg = engine.coalForSteamKgPerS(steam, pressurePa) / steam;
        return run.coalTotalKg(0) - run.state(last, 0).fireKg() - perKg * engine.reserveKg(run.state(last, 0));
    }
}
