package org.crosshead.kernel.handling;

import org.crosshead.kernel.boiler.Furnace;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Fireman;
import org.crosshead.kernel.motion.Moment;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.motion.Stoking.Task;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.Pull;

/**
 * Fires and feeds by the trade's rules: fire and water built up before a bank, feed eased on it, the boiler filled when steam is
 * shut, quiet when it is full. Common practice without a printed source.
 */
public final class RuleFireman implements Fireman {

    private static final double AHEAD_FROM_M = 400;
    private static final double AHEAD_LENGTH_M = 3_000;
    private static final double HERE_LENGTH_M = 400;
    private static final double BANK = 1.0 / 150;
    private static final double EASY = 1.0 / 300;
    private static final double LEAST_AT_TASK_S = 90;
    private static final double FULL_GLASS = 0.85;
    private static final double WORKING_GLASS = 0.6;
    private static final double LOW_GLASS = 0.3;
    private static final double LEVEL_TIME_S = 400;
    private static final double PRESSURE_AIM = 0.97;
    private static final double PRESSURE_GAIN = 4;
    private static final double BANKED_SHARE = 0.05;
    /** Glass that should be left at a summit: about half. */
    private static final double SUMMIT_GLASS = 0.5;

    /** Above this cold feed takes up what the safety valves would blow off. */
    private static final double BLOWING_SHARE = 0.975;

    private static final double STEAM_HEAT_J = 2.7e6;
    private static final double BOILING_HEAT_J = 0.78e6;
    private static final double LOW_PRESSURE = 0.75;
    /** Heat that cold feed takes to boil, as a share of what makes it steam. */
    private static final double FEED_HEAT_SHARE = 0.28;

    private static final double QUIET_SHARE = 0.3;
    private static final double EASED_FEED = 0.75;
    private static final double VERY_LOW_GLASS = 0.12;
    private static final double GATHERING_MPS = 3;
    private static final double GATHERING_SHARE = 0.7;
    private static final double FEED_MAX_SHARE = 1.3;

    /** Opening of the blower that keeps flame from the footplate when the boiler wants no more. */
    private static final double BLOWER_CRACKED = 0.2;

    private static final double DAMPERS_LEAST = 0.3;
    /** Thickness of the fire as a share of one that burns all the air can: thin, as on the level, before and on a bank. */
    private static final double THIN = 0.4;

    private static final double THICK_LEVEL = 1.1;
    private static final double THICK = 1.4;
    /** Time over which a fire is made up. */
    private static final double MAKE_UP_S = 240;

    /** Most coal that a fireman puts on over minutes, as a share of what the grate burns for good. */
    private static final double SHOVEL_SHARE = 1.2;

    @Override
    public Stoking stoking(Moment moment, int engine) {
        Task present = moment.task(engine);
        Stoking wished = wished(moment, engine);
        boolean early = moment.sinceTaskS(engine) < LEAST_AT_TASK_S && wished.task() != present;
        return early ? new Stoking(firing(moment, engine, present), present, wished.cause()) : wished;
    }

    private static Stoking wished(Moment moment, int engine) {
        double glass = glass(moment, engine);
        double here = moment.gradient(0, HERE_LENGTH_M);
        boolean shut = isShut(moment);
        Task task;
        Cause cause;
        if (glass < (here > BANK ? VERY_LOW_GLASS : LOW_GLASS)) {
            task = Task.FILL_UP;
            cause = Cause.LEVEL_LOW;
        } else if (here > BANK && !shut) {
            task = Task.HOLD_FEED;
            cause = Cause.BANK_BEGINS;
        } else if ((here > BANK || moment.gradient(AHEAD_FROM_M, AHEAD_LENGTH_M) > BANK)
                && !(shut && glass >= FULL_GLASS)) {
            task = Task.BUILD_UP;
            cause = Cause.BANK_AHEAD;
        } else if (shut && glass < FULL_GLASS) {
            task = Task.FILL_UP;
            cause = moment.standing() ? Cause.STANDING : here < -EASY ? Cause.FALL_BEGINS : Cause.STOP_AHEAD;
        } else if (shut) {
            task = Task.QUIET;
            cause = Cause.LEVEL_HIGH;
        } else {
            task = Task.STEADY;
            cause = Cause.SPEED_REACHED;
        }
        return new Stoking(firing(moment, engine, task), task, cause);
    }

    private static Firing firing(Moment moment, int engine, Task task) {
        Engine worked = moment.engine(engine);
        EngineState state = moment.state(engine);
        double most = worked.evaporationMaxKgPerS(state.pressurePa());
        double share = state.pressurePa() / worked.parameters().boiler().pressureMaxPa();
        double steam = moment.steamKgPerS(engine);
        double expected = task == Task.STEADY ? (steam + expected(moment, engine)) / 2 : steam;
        boolean gathersSpeed = moment.speedWantedMps() > moment.speedMps() + GATHERING_MPS;
        double base = gathersSpeed ? Math.max(expected, GATHERING_SHARE * most) : expected;
        double level = task == Task.BUILD_UP || task == Task.FILL_UP ? FULL_GLASS : WORKING_GLASS;
        double glass = glass(moment, engine);
        double wantedFeed =
                steam + (level - glass) * worked.parameters().boiler().glassKg() / LEVEL_TIME_S;
        double feed = share < LOW_PRESSURE && glass > LOW_GLASS ? EASED_FEED * Math.min(steam, wantedFeed) : wantedFeed;
        double blower = isShut(moment) ? (share < PRESSURE_AIM ? 1 : BLOWER_CRACKED) : 0;
        if (share > BLOWING_SHARE && glass < FULL_GLASS) {
            Furnace furnace = worked.furnace();
            double burning = furnace.burningKgPerS(state.fireKg(), worked.air(steam, blower, 1));
            double surplusW = furnace.heatW(burning) - steam * STEAM_HEAT_J;
            feed = Math.max(feed, steam + surplusW / BOILING_HEAT_J);
        }
        double heating = share > BLOWING_SHARE ? 0 : FEED_HEAT_SHARE * Math.max(0, feed - steam);
        double aim = Math.max(BANKED_SHARE * most, base + heating + most * PRESSURE_GAIN * (PRESSURE_AIM - share));
        double wished = Math.min(most, aim);
        double making = switch (task) {
            case STEADY -> wished;
            case BUILD_UP -> share < PRESSURE_AIM ? most : QUIET_SHARE * (most + feed);
            case HOLD_FEED -> share < 1 ? Math.max(wished, 0.95 * most) : wished;
            case FILL_UP -> Math.min(wished, 0.6 * most);
            case QUIET -> Math.min(wished, 0.3 * most);
        };
        double feeding = switch (task) {
            case STEADY, BUILD_UP -> clamp(feed, most);
            case HOLD_FEED -> clamp((glass > SUMMIT_GLASS ? EASED_FEED : 1) * steam, most);
            case FILL_UP -> clamp(feed, share > 0.7 ? most : 0.5 * most);
            case QUIET -> 0;
        };
        return fire(moment, engine, task, making, blower).fed(feeding);
    }

    /** Returns the firing by which the fire makes so much steam by and by, unfed: the dampers at once, the shovel over minutes. */
    public static Firing fire(Moment moment, int engine, Task task, double steamKgPerS, double blower) {
        Engine worked = moment.engine(engine);
        EngineState state = moment.state(engine);
        Furnace furnace = worked.furnace();
        double wanted = worked.coalForSteamKgPerS(steamKgPerS, state.pressurePa());
        double open = worked.air(moment.steamKgPerS(engine), blower, 1);
        double burning = furnace.burningKgPerS(state.fireKg(), open);
        double dampers = burning > wanted ? Math.max(DAMPERS_LEAST, wanted / burning) : 1;
        double thickest = isShut(moment) ? 1 : task == Task.BUILD_UP || task == Task.HOLD_FEED ? THICK : THICK_LEVEL;
        double share = Math.max(THIN, Math.min(thickest, wanted / (open * furnace.coalMaxKgPerS())));
        double coal = dampers * burning + (share * furnace.fullKg() - state.fireKg()) / MAKE_UP_S;
        return new Firing(Math.max(0, Math.min(SHOVEL_SHARE * furnace.coalMaxKgPerS(), coal)), 0, blower, dampers);
    }

    private static boolean isShut(Moment moment) {
        return moment.standing()
                || moment.braking()
                || moment.handles().controls().regulator() <= 0;
    }

    /** Returns the steam that holding this speed over the next miles will ask of the train engine. */
    private static double expected(Moment moment, int engine) {
        double speedMps = moment.speedMps();
        double least = moment.engine(engine).parameters().valveGear().cutoffLeast();
        Pull gentle = moment.pull(engine, new Controls(1, least), speedMps);
        double holdingN = moment.holdingForceN(speedMps, AHEAD_LENGTH_M);
        return gentle.forceN() > 0 ? Math.max(0, holdingN) * gentle.steamKgPerS() / gentle.forceN() : 0;
    }

    private static double clamp(double feedKgPerS, double most) {
        return Math.max(0, Math.min(FEED_MAX_SHARE * most, feedKgPerS));
    }

    private static double glass(Moment moment, int engine) {
        Boiler boiler = moment.engine(engine).parameters().boiler();
        return boiler.glassShare(moment.state(engine).waterKg());
    }
}
