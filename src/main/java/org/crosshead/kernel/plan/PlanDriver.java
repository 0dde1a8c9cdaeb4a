package org.crosshead.kernel.plan;

import java.util.List;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Driver;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.motion.Moment;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;
import org.crosshead.kernel.traction.Pull;

/**
 * Works a plan: its settings from place to place, starting away by the usual notches, a notch more where the train falls behind, the
 * regulator eased where the rail asks for it or the boiler is low.
 */
public final class PlanDriver implements Driver {

    private static final double REGULATOR_STEP = 0.125;
    private static final double STALLING_MPS = 2;
    private static final double RECOVERED_MPS = 3;
    private static final double SLOW_MPS = 3;
    /** Below this share of the speed planned a notch more is given. */
    public static final double BEHIND = 0.85;

    private static final double STILL_BEHIND = 0.93;
    private static final double FAR_BEHIND = 0.7;
    /** A notch of cutoff. */
    public static final double NOTCH = 0.05;
    /** Below this share of its pressure a boiler is spared. */
    public static final double LOW_SHARE = 0.8;

    private static final double RECOVERED_SHARE = 0.86;
    /** No correction goes beyond this cutoff. */
    public static final double LONGEST = 0.5;
    /** With the first valve, where a train would not run as far as planned without steam: a rule of this project. */
    private static final double DRIFTING_CUTOFF = 0.25;

    private static final double STALLING_CUTOFF = 0.6;
    private static final double GENTLE_MPS2 = 0.3;
    private static final double GENTLE_AHEAD_M = 500;

    private final List<PlanSetting> settings;
    private final List<Cause> causes;
    private final TripPlan trip;
    private final Gauges gauges;

    /**
     * @param settings by place
     * @param causes why each is set
     * @param trip the speeds that should come of them
     */
    public PlanDriver(List<PlanSetting> settings, List<Cause> causes, TripPlan trip) {
        this(settings, causes, trip, Gauges.TRUE);
    }

    /** @param gauges how the driver reads them */
    public PlanDriver(List<PlanSetting> settings, List<Cause> causes, TripPlan trip, Gauges gauges) {
        this.gauges = gauges;
        this.trip = trip;
        this.settings = List.copyOf(settings);
        this.causes = List.copyOf(causes);
    }

    @Override
    public Handles handles(Moment moment) {
        if (moment.standing()) {
            return new Handles(new Controls(0, 0), false, Cause.STANDING);
        }
        int at = at(moment.positionM());
        PlanSetting setting = settings.get(at);
        boolean cocksOpen = moment.sinceStandingM() < RuleDriver.cocksShutM(moment);
        Controls now = moment.handles().controls();
        ValveGear gear = moment.engine(0).parameters().valveGear();
        if (setting.shut()) {
            return fallsShort(moment)
                    ? new Handles(new Controls(Controls.FIRST_VALVE, drifting(moment)), false, Cause.SPEED_FALLS)
                    : new Handles(new Controls(0, now.cutoff()), false, causes.get(at));
        }
        double planned = corrected(moment, setting.controls().cutoff());
        boolean stalls = moment.sinceStandingM() > StartingNotches.REACH_M
                && moment.speedMps() < (now.cutoff() > planned ? RECOVERED_MPS : STALLING_MPS);
        double cutoff = stalls
                ? Math.max(planned, STALLING_CUTOFF)
                : StartingNotches.cutoff(gear, planned, moment.speedMps(), moment.sinceStandingM());
        boolean starting = cutoff > planned;
        boolean spared = !starting && !stalls && spares(moment, setting.controls());
        boolean farBehind = planned > setting.controls().cutoff() + 1.5 * NOTCH;
        double regulator = spared || (starting && gentle(moment, cutoff))
                ? Controls.FIRST_VALVE
                : stalls || farBehind ? 1 : setting.controls().regulator();
        Controls wished = held(moment, new Controls(regulator, cutoff), stalls ? 1 : PullTable.RAIL_SHARE);
        if (spared) {
            return new Handles(wished, cocksOpen, Cause.BOILER_LIMITS);
        }
        boolean behind = planned > setting.controls().cutoff() && !starting && !stalls;
        if (behind) {
            return new Handles(wished, cocksOpen, Cause.SPEED_FALLS);
        }
        return new Handles(wished, cocksOpen, cause(moment, at, starting, wished.regulator() < regulator));
    }

    /** Returns whether a train without steam is so slow that it would not run as far as is planned, until it has recovered. */
    private boolean fallsShort(Moment moment) {
        if (moment.braking()) {
            return false;
        }
        boolean already = moment.handles().controls().regulator() > 0;
        return lag(moment) < (already ? STILL_BEHIND : FAR_BEHIND);
    }

    private static double drifting(Moment moment) {
        return moment.speedMps() < RECOVERED_MPS ? STALLING_CUTOFF : DRIFTING_CUTOFF;
    }

    /** Returns the speed as a share of what it should be. */
    private double lag(Moment moment) {
        return moment.speedMps()
                / Math.max(SLOW_MPS, Math.min(trip.speed(moment.positionM()), moment.speedWantedMps()));
    }

    /** Returns whether the boiler is so low that steam is eased to the first valve, until it has recovered, as long as the train runs well. */
    private boolean spares(Moment moment, Controls planned) {
        if (planned.regulator() <= Controls.FIRST_VALVE) {
            return false;
        }
        double share = gauges.read(moment.state(0)).pressurePa()
                / moment.engine(0).parameters().boiler().pressureMaxPa();
        double now = moment.handles().controls().regulator();
        boolean already = now > 0 && now <= Controls.FIRST_VALVE;
        boolean runsWell = moment.speedMps() > BEHIND * trip.speed(moment.positionM());
        return runsWell && share < (already ? RECOVERED_SHARE : LOW_SHARE);
    }

    /** Returns the cutoff planned, or a notch or two more where the train is behind the speed that it should have. */
    private double corrected(Moment moment, double planned) {
        if (moment.sinceStandingM() <= StartingNotches.REACH_M || planned >= LONGEST) {
            return planned;
        }
        double lag = lag(moment);
        boolean already = moment.handles().controls().cutoff() > planned;
        int notches = lag < FAR_BEHIND ? 2 : lag < (already ? STILL_BEHIND : BEHIND) ? 1 : 0;
        return Math.min(LONGEST, Math.round(20 * (planned + notches * NOTCH)) / 20.0);
    }

    private Cause cause(Moment moment, int at, boolean starting, boolean eased) {
        if (eased) {
            return Cause.RAIL_POOR;
        }
        boolean away = causes.get(at) == Cause.STARTING || starting;
        if (away) {
            return moment.speedMps() < STALLING_MPS ? Cause.STARTING : Cause.SPEED_RISES;
        }
        return causes.get(at);
    }

    /** Returns whether the first valve starts the train as fast as is good for it. */
    private static boolean gentle(Moment moment, double cutoff) {
        return moment.pullN(new Controls(Controls.FIRST_VALVE, cutoff))
                > moment.holdingForceN(moment.speedMps(), GENTLE_AHEAD_M) + GENTLE_MPS2 * moment.inertiaKg();
    }

    private int at(double positionM) {
        int low = 0;
        int high = settings.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (settings.get(middle).fromM() <= positionM + 1e-6) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Eases the regulator as little as keeps the wheels from slipping; once eased it stays so until the rail holds the whole. */
    private static Controls held(Moment moment, Controls wished, double railShare) {
        double regulator = wished.regulator();
        Controls now = moment.handles().controls();
        if (regulator > Controls.FIRST_VALVE && slips(moment, wished, railShare)) {
            while (regulator > Controls.FIRST_VALVE
                    && slips(moment, new Controls(regulator, wished.cutoff()), railShare)) {
                regulator = Math.max(Controls.FIRST_VALVE, regulator - REGULATOR_STEP);
            }
            boolean eased = now.cutoff() == wished.cutoff() && now.regulator() > 0 && now.regulator() < regulator;
            return eased ? now : new Controls(regulator, wished.cutoff());
        }
        return wished;
    }

    private static boolean slips(Moment moment, Controls controls, double railShare) {
        Pull pull = moment.pull(0, controls, moment.speedMps());
        return pull.cylinderForceN() > railShare * pull.railForceN();
    }
}
