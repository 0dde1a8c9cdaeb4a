package org.crosshead.kernel.handling;

import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Driver;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.motion.Moment;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.units.Check;

/**
 * Works regulator and cutoff by the trade's rules: cocks open and full gear at the start, cocks shut after six beats, notched up
 * as speed rises, the chest kept near boiler pressure as long as the boiler stands it, never below the least working cutoff
 * (less regulator instead), steam shut in time. The rules are common practice without a printed source.
 */
public final class RuleDriver implements Driver {

    /** Beats after which the cylinder cocks are shut: about half a dozen by common practice. */
    public static final int BEATS_WITH_COCKS_OPEN = 6;

    private static final double[] NOTCHES = {0.15, 0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.50, 0.60, 0.70};
    private static final double LOOK_AHEAD_M = 500;
    private static final double FULL_GEAR_BELOW_MPS = 2;
    private static final double GAIN_S = 50;
    private static final double ACCELERATION_MAX_MPS2 = 0.30;
    private static final double NEAR_MPS = 0.7;
    private static final double LEAST_BETWEEN_CHANGES_S = 90;
    private static final double LEAST_WHILE_GATHERING_S = 20;
    private static final double GATHERING_BELOW_MPS = 10;

    /** Steam beyond what may be used, from which the driver notches up without waiting: a fast start of a light train. */
    private static final double FLOGGED = 1.5;

    private static final double LEAST_WHILE_FLOGGED_S = 8;
    private static final double ENOUGH = 0.80;
    private static final double TOO_MUCH = 2.2;
    private static final double RAIL_SHARE = 0.97;
    private static final double REGULATOR_STEP = 0.125;
    private static final double KEPT_SHARE = 1.12;
    private static final double TAKEN_SHARE = 0.93;
    private static final double NOTCH_UP_MOST = 0.6;
    private static final double BEHIND_M = 600;
    private static final double BANK = 1.0 / 180;
    private static final double FALL = -1.0 / 250;
    private static final double SLOWED_SHARE = 0.85;
    private static final double STALLING_MPS = 3;

    /** Share of boiler pressure at and above which steam is borrowed on a bank, and by how much. */
    private static final double BORROW_ABOVE = 0.85;

    private static final double BORROW = 1.25;
    private static final double EASE_BELOW = 0.72;
    private static final double EASED = 0.80;

    /** Off the banks steam is spared sooner, so that the boiler is full for the next one. */
    private static final double FULL_ABOVE = 0.92;

    private static final double FULL = 1.10;
    private static final double SAVE_BELOW = 0.75;
    private static final double SAVED = 0.75;
    private static final double WATER_SPARE = 0.2;

    private static final double KEPT_MOST = 0.9;

    /** By how much of the working pressure the thresholds of steam lie above the usual ones. */
    private final double raised;

    public RuleDriver() {
        this(EASE_BELOW);
    }

    /**
     * Makes a driver who works so gently that on a bank the pressure stays about or above a share of the working pressure.
     *
     * @param keptShare from 0.72, the usual, to 0.9
     */
    public RuleDriver(double keptShare) {
        raised = Check.within("keptShare", keptShare, EASE_BELOW, KEPT_MOST) - EASE_BELOW;
    }

    /** The handles a moment asks for, and why. */
    private record Wish(Controls controls, Cause cause) {}

    @Override
    public Handles handles(Moment moment) {
        if (moment.standing()) {
            return new Handles(new Controls(0, 0), false, Cause.STANDING);
        }
        boolean cocksOpen = moment.sinceStandingM() < cocksShutM(moment);
        Controls now = moment.handles().controls();
        if (shutsAhead(moment)) {
            Cause cause = moment.stopAhead() ? Cause.STOP_AHEAD : Cause.LIMIT_AHEAD;
            return new Handles(new Controls(0, now.cutoff()), false, cause);
        }
        if (moment.speedMps() < FULL_GEAR_BELOW_MPS || cocksOpen) {
            return starting(moment, cocksOpen);
        }
        if (moment.handles().cocksOpen()) {
            Handles open = moment.handles();
            return new Handles(open.controls(), false, Cause.BEATS_COUNTED);
        }
        double wantedN = wantedN(moment);
        if (keeps(moment, wantedN)) {
            return moment.handles();
        }
        Wish wish = wish(moment, wantedN);
        return new Handles(wish.controls(), false, wish.cause());
    }

    private static Handles starting(Moment moment, boolean cocksOpen) {
        double full = moment.engine(0).parameters().valveGear().cutoffFull();
        Controls controls = heldByRail(moment, new Controls(1, full));
        boolean enough = moment.pullN(new Controls(Controls.FIRST_VALVE, full))
                > moment.holdingForceN(moment.speedMps(), LOOK_AHEAD_M) + ACCELERATION_MAX_MPS2 * moment.inertiaKg();
        return new Handles(enough ? new Controls(Controls.FIRST_VALVE, full) : controls, cocksOpen, Cause.STARTING);
    }

    /** Returns the distance of the six beats: each turn of the wheels gives two for each cylinder. */
    public static double cocksShutM(Moment moment) {
        LocomotiveParameters.Cylinders cylinders = moment.engine(0).parameters().cylinders();
        return BEATS_WITH_COCKS_OPEN * Math.PI * cylinders.wheelDiameterM() / (2.0 * cylinders.count());
    }

    private static boolean shutsAhead(Moment moment) {
        double speedMps = moment.speedMps();
        double reachM = speedMps * moment.coastS();
        double ahead = moment.speedWantedMps(reachM);
        if (ahead >= SLOWED_SHARE * speedMps || speedMps <= FULL_GEAR_BELOW_MPS) {
            return false;
        }
        return moment.holdingForceN(speedMps, Math.max(1, reachM)) * reachM
                < 0.5 * moment.inertiaKg() * (speedMps * speedMps - ahead * ahead);
    }

    private static double wantedN(Moment moment) {
        double speedMps = moment.speedMps();
        double rise = moment.speedWantedMps() - speedMps;
        double acceleration = Math.max(-ACCELERATION_MAX_MPS2, Math.min(ACCELERATION_MAX_MPS2, rise / GAIN_S));
        return moment.holdingForceN(speedMps, LOOK_AHEAD_M) + moment.inertiaKg() * acceleration;
    }

    /** Returns true if the handles may stay: not long set, or still about right and within what boiler and rail stand. */
    private boolean keeps(Moment moment, double wantedN) {
        Controls now = moment.handles().controls();
        if (now.regulator() <= 0) {
            return wantedN <= ENOUGH * leastN(moment) && slowEnough(moment);
        }
        if (now.regulator() > Controls.FIRST_VALVE && railLimits(moment, now)) {
            return false;
        }
        double leastS = moment.speedMps() < GATHERING_BELOW_MPS ? LEAST_WHILE_GATHERING_S : LEAST_BETWEEN_CHANGES_S;
        double steam = steam(moment, now);
        double allowed = steamAllowed(moment);
        if (moment.sinceChangeS() < (steam > FLOGGED * allowed ? LEAST_WHILE_FLOGGED_S : leastS)) {
            return true;
        }
        double pullN = moment.pullN(now);
        boolean steams = steam <= KEPT_SHARE * allowed;
        return steams && pullN >= ENOUGH * wantedN && (pullN <= TOO_MUCH * wantedN || pullN <= leastN(moment));
    }

    private static boolean slowEnough(Moment moment) {
        return moment.speedMps() > moment.speedWantedMps() - 2 * NEAR_MPS;
    }

    /** Returns the pull of the first valve at the least working cutoff. */
    private static double leastN(Moment moment) {
        double least = moment.engine(0).parameters().valveGear().cutoffLeast();
        return moment.pullN(new Controls(Controls.FIRST_VALVE, least));
    }

    private Wish wish(Moment moment, double wantedN) {
        double least = moment.engine(0).parameters().valveGear().cutoffLeast();
        double full = moment.engine(0).parameters().valveGear().cutoffFull();
        if (wantedN < 0.5 * leastN(moment) && slowEnough(moment)) {
            Cause cause = moment.gradient(0, LOOK_AHEAD_M) < FALL ? Cause.FALL_BEGINS : Cause.SPEED_REACHED;
            return new Wish(new Controls(0, full), cause);
        }
        Controls gentle = new Controls(Controls.FIRST_VALVE, least);
        if (moment.pullN(gentle) >= wantedN) {
            return new Wish(gentle, Cause.LEAST_CUTOFF_REACHED);
        }
        Controls chosen = new Controls(1, least);
        boolean boilerLimits = false;
        boolean mustKeepMoving = moment.speedMps() < STALLING_MPS;
        double allowed = steamAllowed(moment);
        boolean wide = moment.handles().controls().regulator() >= 1;
        if (!mustKeepMoving && steam(moment, chosen) > (wide ? KEPT_SHARE : TAKEN_SHARE) * allowed) {
            return new Wish(gentle, wide ? Cause.BOILER_LIMITS : Cause.LEAST_CUTOFF_REACHED);
        }
        for (double notch : NOTCHES) {
            if (notch <= least || notch >= full) {
                continue;
            }
            if (moment.pullN(chosen) >= wantedN) {
                break;
            }
            Controls longer = new Controls(1, notch);
            boolean present = notch <= moment.handles().controls().cutoff();
            double spare = present ? KEPT_SHARE : TAKEN_SHARE;
            if (!mustKeepMoving && steam(moment, longer) > spare * allowed) {
                boilerLimits = true;
                break;
            }
            chosen = longer;
        }
        if (mustKeepMoving && moment.pullN(chosen) < wantedN) {
            chosen = new Controls(1, full);
        }
        chosen = notByLeaps(moment.handles().controls(), chosen);
        if (chosen.equals(moment.handles().controls())) {
            return new Wish(chosen, moment.handles().cause());
        }
        if (railLimits(moment, chosen)) {
            return new Wish(heldByRail(moment, chosen), Cause.RAIL_POOR);
        }
        return new Wish(chosen, cause(moment, chosen, boilerLimits));
    }

    /** Notches up by at most two fifths of the cutoff at a time. */
    private static Controls notByLeaps(Controls now, Controls chosen) {
        boolean leaps = now.regulator() > 0 && chosen.cutoff() < NOTCH_UP_MOST * now.cutoff();
        return leaps ? new Controls(chosen.regulator(), Math.round(20 * NOTCH_UP_MOST * now.cutoff()) / 20.0) : chosen;
    }

    /** Returns these handles with the regulator eased as little as keeps the wheels from slipping, not below the first valve. */
    private static Controls heldByRail(Moment moment, Controls chosen) {
        double regulator = chosen.regulator();
        while (regulator > Controls.FIRST_VALVE && railLimits(moment, new Controls(regulator, chosen.cutoff()))) {
            regulator = Math.max(Controls.FIRST_VALVE, regulator - REGULATOR_STEP);
        }
        return new Controls(regulator, chosen.cutoff());
    }

    private static Cause cause(Moment moment, Controls chosen, boolean boilerLimits) {
        double before = moment.handles().controls().cutoff();
        boolean wasShut = moment.handles().controls().regulator() <= 0;
        boolean wider = chosen.regulator() > moment.handles().controls().regulator();
        if (boilerLimits && chosen.cutoff() <= before && !wasShut && moment.gradient(0, LOOK_AHEAD_M) > BANK) {
            return Cause.BOILER_LIMITS;
        }
        if (wasShut || wider || chosen.cutoff() > before) {
            return moment.gradient(0, LOOK_AHEAD_M) > BANK ? Cause.BANK_BEGINS : Cause.SPEED_FALLS;
        }
        boolean summit = moment.gradient(-BEHIND_M, BEHIND_M) > BANK && moment.gradient(0, LOOK_AHEAD_M) < BANK / 4;
        return summit ? Cause.SUMMIT_PASSED : Cause.SPEED_RISES;
    }

    private static boolean railLimits(Moment moment, Controls controls) {
        Pull pull = moment.pull(0, controls, moment.speedMps());
        return pull.cylinderForceN() > RAIL_SHARE * pull.railForceN();
    }

    private static double steam(Moment moment, Controls controls) {
        return moment.pull(0, controls, moment.speedMps()).steamKgPerS();
    }

    /** Returns the steam that may be used now: more than the grate makes while the boiler can lend, less while it is low. */
    private double steamAllowed(Moment moment) {
        EngineState state = moment.state(0);
        LocomotiveParameters.Boiler boiler = moment.engine(0).parameters().boiler();
        double share = state.pressurePa() / boiler.pressureMaxPa() - raised;
        double water = boiler.glassShare(state.waterKg());
        boolean onBank = moment.gradient(0, LOOK_AHEAD_M) > BANK;
        double factor = onBank && water > WATER_SPARE
                ? between(share, EASE_BELOW, EASED, BORROW_ABOVE, BORROW)
                : between(share, SAVE_BELOW, SAVED, FULL_ABOVE, FULL);
        return factor * moment.engine(0).evaporationMaxKgPerS(state.pressurePa());
    }

    private static double between(double at, double low, double valueAtLow, double high, double valueAtHigh) {
        double share = Math.max(0, Math.min(1, (at - low) / (high - low)));
        return valueAtLow + share * (valueAtHigh - valueAtLow);
    }
}
