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

/** Works a plan: its settings from place to place, starting away by the usual notches, the regulator eased where the rail asks for it. */
public final class PlanDriver implements Driver {

    private static final double RAIL_SHARE = 0.97;
    private static final double REGULATOR_STEP = 0.125;
    private static final double STALLING_MPS = 2;
    private static final double GENTLE_MPS2 = 0.3;
    private static final double GENTLE_AHEAD_M = 500;

    private final List<PlanSetting> settings;
    private final List<Cause> causes;

    /**
     * @param settings by place
     * @param causes why each is set
     */
    public PlanDriver(List<PlanSetting> settings, List<Cause> causes) {
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
        if (setting.shut()) {
            return new Handles(new Controls(0, now.cutoff()), false, causes.get(at));
        }
        ValveGear gear = moment.engine(0).parameters().valveGear();
        double planned = setting.controls().cutoff();
        double cutoff = moment.speedMps() < STALLING_MPS
                ? gear.cutoffFull()
                : StartingNotches.cutoff(gear, planned, moment.speedMps(), moment.sinceStandingM());
        boolean starting = cutoff > planned;
        double regulator = starting && gentle(moment, cutoff)
                ? Controls.FIRST_VALVE
                : setting.controls().regulator();
        Controls wished = held(moment, new Controls(regulator, cutoff));
        return new Handles(wished, cocksOpen, cause(moment, at, starting, wished.regulator() < regulator));
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

    /** Eases the regulator as little as keeps the wheels from slipping, and does not open it again by less than two steps. */
    private static Controls held(Moment moment, Controls wished) {
        double regulator = wished.regulator();
        Controls now = moment.handles().controls();
        if (regulator > Controls.FIRST_VALVE && slips(moment, wished)) {
            while (regulator > Controls.FIRST_VALVE && slips(moment, new Controls(regulator, wished.cutoff()))) {
                regulator = Math.max(Controls.FIRST_VALVE, regulator - REGULATOR_STEP);
            }
            boolean eased = now.cutoff() == wished.cutoff() && now.regulator() > 0 && now.regulator() < regulator;
            return eased ? now : new Controls(regulator, wished.cutoff());
        }
        return wished;
    }

    private static boolean slips(Moment moment, Controls controls) {
        Pull pull = moment.pull(0, controls, moment.speedMps());
        return pull.cylinderForceN() > RAIL_SHARE * pull.railForceN();
    }
}
