package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;

/**
 * Pull and steam of the engines at work over a stretch, tabulated by speed and by the train engine's pressure: for each setting of the
 * handles, and the least steam for a pull where settings are mixed. Between the nodes of speed values run evenly; of pressures the
 * nearest is taken.
 */
final class PullTable {

    static final double SPEED_STEP_MPS = 0.5;
    static final int PRESSURES = 17;

    /** Lowest pressure of the table as a share of the working pressure. */
    static final double PRESSURE_LOW = 0.6;

    /** Share of what the rail holds that a plan uses, so that the peaks of the turning effort seldom slip: a rule of this project. */
    static final double RAIL_SHARE = 0.85;

    /** By how much a setting that the rail does not hold is dearer than one that it just holds; so that none is planned. */
    private static final double EASED_FOR_RAIL = 0.5;

    private static final double NOTCH = 0.05;
    private static final double FORCE_STEP_N = 1_000;
    /** Beyond the greatest pull a plan in the making may ask so much more at a stiff price; the finished one may not. */
    private static final double BEYOND = 1.25;

    private final List<Controls> settings;
    private final double pressureMaxPa;
    private final int speeds;
    /** By pressure, setting and speed. */
    private final double[][][] forceN;

    private final double[][][] steamKgPerS;
    /** Where the rail does not hold a setting. */
    private final boolean[][][] eased;

    /** By pressure and speed: least steam for each multiple of the step of force. */
    private final double[][][] leastKgPerS;

    private final double[][] forceMaxN;

    PullTable(List<EngineAtWork> engines, RailState rail, double speedMaxMps) {
        LocomotiveParameters first = engines.get(0).engine().parameters();
        settings = settings(first.valveGear());
        pressureMaxPa = first.boiler().pressureMaxPa();
        speeds = (int) Math.ceil(speedMaxMps / SPEED_STEP_MPS) + 2;
        forceN = new double[PRESSURES][settings.size()][speeds];
        steamKgPerS = new double[PRESSURES][settings.size()][speeds];
        eased = new boolean[PRESSURES][settings.size()][speeds];
        leastKgPerS = new double[PRESSURES][speeds][];
        forceMaxN = new double[PRESSURES][speeds];
        for (int p = 0; p < PRESSURES; p++) {
            EngineState start = engines.get(0).start();
            EngineState state =
                    new EngineState(pressurePa(p), start.waterKg(), start.fireKg(), false, start.suppliesShare());
            for (int v = 0; v < speeds; v++) {
                fill(engines, rail, state, p, v);
                hull(p, v);
            }
        }
    }

    /** Settings by regulator, then cutoff: the first valve in 5 per cent steps to a half, wide open to full gear. */
    static List<Controls> settings(LocomotiveParameters.ValveGear gear) {
        List<Controls> settings = new ArrayList<>();
        for (double regulator : new double[] {Controls.FIRST_VALVE, 1}) {
            settings.add(new Controls(regulator, gear.cutoffLeast()));
            for (int notch = 1; notch * NOTCH < gear.cutoffFull() - NOTCH / 2; notch++) {
                if (notch * NOTCH > gear.cutoffLeast() + NOTCH / 2) {
                    settings.add(new Controls(regulator, Math.round(notch * NOTCH * 100) / 100.0));
                }
            }
            settings.add(new Controls(regulator, gear.cutoffFull()));
        }
        return settings;
    }

    private void fill(List<EngineAtWork> engines, RailState rail, EngineState first, int p, int v) {
        double speedMps = v * SPEED_STEP_MPS;
        for (int i = 0; i < engines.size(); i++) {
            EngineAtWork atWork = engines.get(i);
            double mostMps = 1.5 * atWork.engine().parameters().speedMaxMps();
            EngineState state = i == 0 ? first : atWork.start();
            for (int s = 0; s < settings.size(); s++) {
                Controls told = settings.get(s);
                Controls own = i == 0 ? told : atWork.followed(told, state);
                Pull pull = atWork.engine().pull(state, own, Math.min(speedMps, mostMps), rail);
                double held = Math.min(1, RAIL_SHARE * pull.railForceN() / Math.max(1, pull.cylinderForceN()));
                double forceHere = held * pull.cylinderForceN();
                double dearer = 1 + EASED_FOR_RAIL * (1 - held);
                forceN[p][s][v] += forceHere;
                eased[p][s][v] |= i == 0 && held < 1;
                steamKgPerS[p][s][v] += dearer * pull.steamKgPerS() * forceHere / Math.max(1, pull.forceN());
            }
        }
    }

    /** Lays the lower hull of pull and steam of all settings, and of none, over the multiples of the step of force. */
    private void hull(int p, int v) {
        double most = 0;
        for (int s = 0; s < settings.size(); s++) {
            most = Math.max(most, forceN[p][s][v]);
        }
        forceMaxN[p][v] = most;
        double[] least = new double[(int) (BEYOND * most / FORCE_STEP_N) + 2];
        double atN = 0;
        double atKg = 0;
        int filled = 0;
        while (atN < most) {
            int next = -1;
            double slope = Double.POSITIVE_INFINITY;
            for (int s = 0; s < settings.size(); s++) {
                double runN = forceN[p][s][v] - atN;
                double rise = runN > 1e-6 ? (steamKgPerS[p][s][v] - atKg) / runN : Double.POSITIVE_INFINITY;
                if (rise < slope || (rise == slope && next >= 0 && forceN[p][s][v] > forceN[p][next][v])) {
                    slope = rise;
                    next = s;
                }
            }
            if (next < 0) {
                break;
            }
            double toN = forceN[p][next][v];
            while (filled < least.length && filled * FORCE_STEP_N <= toN) {
                least[filled] = atKg + slope * (filled * FORCE_STEP_N - atN);
                filled++;
            }
            atKg = steamKgPerS[p][next][v];
            atN = toN;
        }
        double dear = most > 0 ? 20 * Math.max(atKg, 0.05) / most : 1;
        while (filled < least.length) {
            least[filled] = atKg + dear * (filled * FORCE_STEP_N - atN);
            filled++;
        }
        leastKgPerS[p][v] = least;
    }

    List<Controls> settings() {
        return settings;
    }

    double pressurePa(int level) {
        return pressureMaxPa * (PRESSURE_LOW + (1 - PRESSURE_LOW) * level / (PRESSURES - 1));
    }

    int level(double pressurePa) {
        double at = (pressurePa / pressureMaxPa - PRESSURE_LOW) / (1 - PRESSURE_LOW) * (PRESSURES - 1);
        return (int) Math.max(0, Math.min(PRESSURES - 1, Math.round(at)));
    }

    /** Returns the least steam rate for a pull; infinite where it is far beyond what there is. */
    double leastKgPerS(int level, double speedMps, double pullN) {
        double at = speedMps * (1 / SPEED_STEP_MPS);
        int v = Math.min((int) at, speeds - 2);
        double share = Math.min(1, at - v);
        double low = least(leastKgPerS[level][v], pullN);
        double high = least(leastKgPerS[level][v + 1], pullN);
        return low + share * (high - low);
    }

    private static double least(double[] byForce, double pullN) {
        double at = pullN * (1 / FORCE_STEP_N);
        int f = (int) at;
        if (f >= byForce.length - 1) {
            return Double.POSITIVE_INFINITY;
        }
        return byForce[f] + (at - f) * (byForce[f + 1] - byForce[f]);
    }

    double forceMaxN(int level, double speedMps) {
        return at(forceMaxN[level], speedMps);
    }

    double forceN(int level, int setting, double speedMps) {
        return at(forceN[level][setting], speedMps);
    }

    double steamKgPerS(int level, int setting, double speedMps) {
        return at(steamKgPerS[level][setting], speedMps);
    }

    /** Returns whether the rail does not hold a setting, so that the regulator must be eased. */
    boolean eased(int level, int setting, double speedMps) {
        return eased[level][setting][Math.min((int) (speedMps * (1 / SPEED_STEP_MPS)), speeds - 1)];
    }

    private double at(double[] bySpeed, double speedMps) {
        double at = speedMps * (1 / SPEED_STEP_MPS);
        int v = Math.min((int) at, speeds - 2);
        double share = Math.min(1, at - v);
        return bySpeed[v] + share * (bySpeed[v + 1] - bySpeed[v]);
    }
}
