package org.crosshead.kernel.plan;

import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Fireman;
import org.crosshead.kernel.motion.Moment;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.motion.Stoking.Task;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;

/**
 * Fires so that the boiler holds what the plan says, and feeds so that the pressure does: heat goes into water while there is room
 * for it, and out of it on a bank. Assisting engines are fired by the usual rules. The gains are rules of this project.
 */
public final class PlanFireman implements Fireman {

    private static final double FIRE_LEAD_S = 60;
    private static final double RESERVE_S = 400;
    private static final double FEED_GAIN = 12;
    private static final double FEED_MOST = 1.3;
    private static final double FULL_GLASS = 0.92;
    private static final double LOW_WATER_FEED = 5;
    private static final double LEAST_SHARE = 0.03;
    private static final double ROOM_PER_GLASS = 8;
    private static final double BLOWER_CRACKED = 0.2;
    /** Above this share of the working pressure cold feed takes up what the safety valves would blow off. */
    private static final double BLOWING_SHARE = 0.97;

    /** Feed for each part of what is made from which the fireman is said to be filling up. */
    private static final double FEEDS_SHARE = 0.3;

    private static final double LEAST_AT_TASK_S = 120;
    private static final double MORE = 1.15;
    private static final double LESS = 0.85;
    private static final double BANK = 1.0 / 150;
    private static final double BANK_LENGTH_M = 1_000;
    private static final double AHEAD_FROM_M = 400;
    private static final double AHEAD_LENGTH_M = 3_000;

    private final TripPlan plan;
    private final Gauges gauges;
    private final RuleFireman others = new RuleFireman();

    public PlanFireman(TripPlan plan) {
        this(plan, Gauges.TRUE);
    }

    /** @param gauges how the fireman reads them */
    public PlanFireman(TripPlan plan, Gauges gauges) {
        this.plan = plan;
        this.gauges = gauges;
    }

    @Override
    public Stoking stoking(Moment moment, int engine) {
        if (engine > 0) {
            return others.stoking(moment, engine);
        }
        Engine worked = moment.engine(0);
        EngineState state = gauges.read(moment.state(0));
        Boiler boiler = worked.parameters().boiler();
        boolean shut = moment.standing()
                || moment.braking()
                || moment.handles().controls().regulator() <= 0;
        double aheadM = moment.positionM() + FIRE_LEAD_S * moment.speedMps();
        double most = worked.evaporationMaxKgPerS(state.pressurePa());
        double lackingKg = plan.reserve(moment.positionM()) - worked.reserveKg(state);
        double making = Math.max(LEAST_SHARE * most, Math.min(most, plan.making(aheadM) + lackingKg / RESERVE_S));
        double off = (state.pressurePa() - plan.pressure(moment.positionM())) / boiler.pressureMaxPa();
        double blower = Math.max(shut ? BLOWER_CRACKED : 0, blower(worked, moment.steamKgPerS(0), making / most));
        double feed = feed(moment, state, most, off);
        Wish wish = wish(moment, shut, making, feed);
        boolean early = moment.sinceTaskS(0) < LEAST_AT_TASK_S && wish.task() != moment.task(0);
        Task task = early ? moment.task(0) : wish.task();
        Firing firing = RuleFireman.fire(moment, 0, shut ? Task.QUIET : Task.HOLD_FEED, making, blower);
        return new Stoking(firing.fed(feed), task, wish.cause());
    }

    /** Returns how far the blower must be open for the air that a rate of making asks for, where the blast does not draw it. */
    private static double blower(Engine engine, double steamKgPerS, double airWanted) {
        double drawn = engine.air(steamKgPerS, 0, 1);
        if (drawn >= airWanted) {
            return 0;
        }
        double whole = engine.air(0, 1, 1);
        double chimney = engine.air(0, 0, 1);
        double lacking = airWanted * airWanted - drawn * drawn;
        return Math.min(1, Math.sqrt(lacking / (whole * whole - chimney * chimney)));
    }

    private static double feed(Moment moment, EngineState state, double most, double off) {
        Boiler boiler = moment.engine(0).parameters().boiler();
        double glass = boiler.glassShare(state.waterKg());
        double steam = moment.steamKgPerS(0);
        double wanted = steam + FEED_GAIN * most * off;
        double share = state.pressurePa() / boiler.pressureMaxPa();
        if (share > BLOWING_SHARE) {
            wanted = Math.max(wanted, steam + FEED_MOST * most * (share - BLOWING_SHARE) / (1 - BLOWING_SHARE));
        }
        double room = steam + ROOM_PER_GLASS * Math.max(0, FULL_GLASS - glass) * most;
        double least =
                glass < BoilerBounds.LOW_GLASS ? steam + LOW_WATER_FEED * (BoilerBounds.LOW_GLASS - glass) * most : 0;
        return Math.min(FEED_MOST * most, Math.max(least, Math.min(wanted, room)));
    }

    private record Wish(Task task, Cause cause) {}

    private static Wish wish(Moment moment, boolean shut, double making, double feed) {
        double steam = moment.steamKgPerS(0);
        boolean bank = moment.gradient(0, BANK_LENGTH_M) > BANK;
        if (shut) {
            boolean feeds = feed > FEEDS_SHARE * making;
            Cause cause = moment.standing()
                    ? Cause.STANDING
                    : moment.stopAhead() ? Cause.STOP_AHEAD : moment.braking() ? Cause.LIMIT_AHEAD : Cause.FALL_BEGINS;
            return new Wish(feeds ? Task.FILL_UP : Task.QUIET, feeds ? cause : Cause.LEVEL_HIGH);
        }
        if (making > MORE * steam && moment.gradient(AHEAD_FROM_M, AHEAD_LENGTH_M) > BANK) {
            return new Wish(Task.BUILD_UP, Cause.BANK_AHEAD);
        }
        if (bank && feed < LESS * steam) {
            return new Wish(Task.HOLD_FEED, Cause.BANK_BEGINS);
        }
        return new Wish(Task.STEADY, Cause.SPEED_REACHED);
    }
}
