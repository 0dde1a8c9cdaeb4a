package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;

/** Why each setting of a plan is as it is: by the road, the boiler and what lies ahead. */
final class Reasons {

    private static final double BANK = 1.0 / 180;
    private static final double FALL = -1.0 / 250;
    private static final double HERE_M = 500;
    private static final double AHEAD_M = 2_000;
    private static final double BEHIND_M = 600;
    private static final double HARD = 0.95;
    private static final double SLOWER = 0.9;

    private final RunRequest request;
    private final BareOptimum optimum;
    private final CrewPlan plan;
    private final GradientProfile gradients;
    private final double lengthM;

    Reasons(RunRequest request, BareOptimum optimum, CrewPlan plan) {
        this.request = request;
        this.optimum = optimum;
        this.plan = plan;
        gradients = request.road().track().gradients();
        lengthM = request.train().body().lengthM();
    }

    List<Cause> causes() {
        List<Cause> causes = new ArrayList<>();
        for (SettingProgramme.Found leg : plan.legs) {
            List<PlanSetting> settings = leg.settings();
            double endM = optimum.road.nodeM[leg.path().fromNode() + leg.path().cells()];
            for (int i = 0; i < settings.size(); i++) {
                double nextM = i + 1 < settings.size() ? settings.get(i + 1).fromM() : endM;
                Controls before = i == 0 ? null : settings.get(i - 1).controls();
                causes.add(
                        before == null
                                ? Cause.STARTING
                                : settings.get(i).shut()
                                        ? shut(settings.get(i).fromM(), nextM, nextM >= endM)
                                        : open(settings.get(i), before));
            }
        }
        return causes;
    }

    private Cause shut(double fromM, double nextM, boolean toStop) {
        if (toStop) {
            return Cause.STOP_AHEAD;
        }
        int from = node(fromM);
        int to = node(nextM);
        double here = optimum.road.allowed[from];
        for (int i = from; i <= to; i++) {
            if (optimum.road.allowed[i] < SLOWER * here) {
                return Cause.LIMIT_AHEAD;
            }
        }
        return gradient(fromM, HERE_M) < FALL ? Cause.FALL_BEGINS : Cause.SPEED_REACHED;
    }

    private Cause open(PlanSetting setting, Controls before) {
        double atM = setting.fromM();
        boolean more = before.regulator() <= 0
                || setting.controls().cutoff() > before.cutoff()
                || setting.controls().regulator() > before.regulator();
        double here = gradient(atM, HERE_M);
        if (more) {
            return here > BANK
                    ? Cause.BANK_BEGINS
                    : gradient(atM, AHEAD_M) > BANK ? Cause.BANK_AHEAD : Cause.SPEED_FALLS;
        }
        int cell = Math.min(optimum.road.cells - 1, node(atM));
        boolean hard =
                plan.account.makingKgPerS[cell] > HARD * optimum.prices.coal().mostKgPerS();
        if (hard && here > BANK) {
            return Cause.BOILER_LIMITS;
        }
        boolean summit = gradient(atM - BEHIND_M, BEHIND_M) > BANK && here < BANK / 4;
        return summit ? Cause.SUMMIT_PASSED : Cause.SPEED_RISES;
    }

    private double gradient(double fromM, double overM) {
        double startM = Math.max(request.startM(), fromM);
        double endM = Math.min(request.endM(), fromM + overM);
        double rise = gradients.meanHeightM(endM, lengthM) - gradients.meanHeightM(startM, lengthM);
        return endM - startM < 1 ? 0 : rise / (endM - startM);
    }

    private int node(double positionM) {
        int found = Arrays.binarySearch(optimum.road.nodeM, positionM);
        return found >= 0 ? found : Math.max(0, -found - 2);
    }

    /** What each shutting for a stop or a limit is worth, by the index of the setting. */
    Map<Integer, ShutWorth> shut(List<Cause> causes) {
        Map<Integer, ShutWorth> worth = new HashMap<>();
        int at = 0;
        for (int leg = 0; leg < plan.legs.size(); leg++) {
            List<PlanSetting> settings = plan.legs.get(leg).settings();
            for (int i = 0; i < settings.size(); i++, at++) {
                boolean ahead = causes.get(at) == Cause.STOP_AHEAD || causes.get(at) == Cause.LIMIT_AHEAD;
                if (i > 0 && ahead) {
                    Optional<ShutWorth> found = worth(leg, i);
                    if (found.isPresent()) {
                        worth.put(at, found.get());
                    }
                }
            }
        }
        return worth;
    }

    private Optional<ShutWorth> worth(int leg, int setting) {
        SettingProgramme.Found found = plan.legs.get(leg);
        List<PlanSetting> settings = found.settings();
        SpeedPath path = found.path();
        ValveGear gear = request.train().engines().get(0).engine().parameters().valveGear();
        int from = node(settings.get(setting).fromM());
        int to = setting + 1 < settings.size()
                ? node(settings.get(setting + 1).fromM())
                : optimum.road.legs.get(leg).toNode();
        double half = path.half()[from - path.fromNode()];
        SettingProgramme programme = new SettingProgramme(
                optimum.road, optimum.road.legs.get(leg), gear, optimum.paths.get(leg), optimum.prices, 0);
        Optional<SettingProgramme.Taken> shut =
                programme.taken(settings.get(setting).controls(), half, from, to);
        Optional<SettingProgramme.Taken> on =
                programme.taken(settings.get(setting - 1).controls(), half, from, to);
        if (shut.isEmpty() || on.isEmpty()) {
            return Optional.empty();
        }
        double savedSteamKg = on.get().steamKg() - shut.get().steamKg();
        double worth = optimum.prices.coal().worth(optimum.prices.coal().mostKgPerS() / 2);
        return Optional.of(new ShutWorth(shut.get().timeS() - on.get().timeS(), savedSteamKg * worth));
    }
}
