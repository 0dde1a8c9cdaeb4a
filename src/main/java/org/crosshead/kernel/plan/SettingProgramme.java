package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.stream.IntStream;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;
import org.jspecify.annotations.Nullable;

/**
 * Dynamic programming over places where a crew can change something and the settings of handles it knows: from place to place the
 * train runs as those handles take it, and every change costs. Of runs that come to one place at about one speed with one setting,
 * the cheapest is kept, with its own speed.
 */
final class SettingProgramme {

    private static final double BIN_MPS = 0.6;
    private static final double NEAR_MPS = 5;
    /** Where nothing is found near the guide the search goes farther. */
    private static final double FAR_MPS = 20;

    private static final double APART_S = 60;
    /** A change soon after another counts for so many. */
    private static final double HASTE = 40;

    private static final double SLOW_MPS = 6;
    private static final int SLOW_PARTS = 5;
    private static final double STALL = 0.12;
    /** Half the square of the least speed that is planned where more is allowed and the train has gathered speed. */
    private static final double SLOWEST = 4;

    private static final double GATHERING_M = 500;
    private static final double LONG_KG_PER_M = 0.02;
    private static final double LONGEST = 0.5;
    private static final double LONGEST_THROTTLED = 0.35;
    /** By how much steam eased to next to nothing is worth less than steam let in well open: an estimate. */
    private static final double THROTTLED = 0.02;

    private static final Controls SHUT = new Controls(0, 0);

    private final PlanRoad road;
    private final PlanRoad.Leg leg;
    private final ValveGear gear;
    private final SpeedPath guide;
    private final Prices prices;
    private final double changeKg;
    private final double slipKgPerM;
    private final List<Controls> settings;
    private final int[][] startingIndex;
    private final double mostHalf;
    /** Settings that may be chosen now. */
    private int[] candidates = {};

    /** What the last stretch came to. */
    private double half;

    private double timeS;
    private double steamKg;
    private double costKg;

    /**
     * @param guide the bare optimum of the leg, near which the search keeps
     * @param changeKg price of one change, kg of coal
     */
    SettingProgramme(PlanRoad road, PlanRoad.Leg leg, ValveGear gear, SpeedPath guide, Prices prices, double changeKg) {
        this.road = road;
        this.leg = leg;
        this.gear = gear;
        this.guide = guide;
        this.prices = prices;
        this.changeKg = changeKg;
        this.slipKgPerM = road.weights.slipKgPerM();
        settings = new ArrayList<>(road.table[leg.fromNode()].settings());
        startingIndex = startingIndex();
        mostHalf = Arrays.stream(road.allowed, leg.fromNode(), leg.toNode() + 1)
                        .max()
                        .orElse(0)
                / 2;
    }

    /** For each setting and step of the starting table the setting that is worked with. */
    private int[][] startingIndex() {
        int[][] index = new int[settings.size()][STARTING_SPEEDS];
        for (int s = 0; s < settings.size(); s++) {
            for (int v = 0; v < STARTING_SPEEDS; v++) {
                double wanted = Math.max(settings.get(s).cutoff(), StartingNotches.cutoff(gear, v * 0.5 + 0.01));
                index[s][v] = indexOf(settings.get(s).regulator(), wanted);
            }
        }
        return index;
    }

    private static final int STARTING_SPEEDS = 20;

    private int indexOf(double regulator, double cutoff) {
        int best = 0;
        double miss = Double.POSITIVE_INFINITY;
        for (int i = 0; i < settings.size(); i++) {
            double off = Math.abs(settings.get(i).cutoff() - cutoff)
                    + Math.abs(settings.get(i).regulator() - regulator);
            if (off < miss) {
                miss = off;
                best = i;
            }
        }
        return best;
    }

    /** A way to a place; {@code setting} -1 is shut. */
    private static final class Label {

        final int setting;
        final double half;
        final double costKg;
        final double sinceS;
        final int node;
        final @Nullable Label before;

        Label(int setting, double half, double costKg, double sinceS, int node, @Nullable Label before) {
            this.setting = setting;
            this.half = half;
            this.costKg = costKg;
            this.sinceS = sinceS;
            this.node = node;
            this.before = before;
        }
    }

    /** What a leg comes to. */
    record Found(List<PlanSetting> settings, SpeedPath path) {}

    /** Returns the cheapest settings; empty if none of them makes the leg. */
    Optional<Found> found(NavigableSet<Integer> marks) {
        candidates = usual();
        Optional<Found> near = found(marks, NEAR_MPS);
        if (near.isPresent()) {
            return near;
        }
        candidates = IntStream.range(0, settings.size()).toArray();
        return found(marks, FAR_MPS);
    }

    /** Settings as crews use them on the road: wide open not beyond a half, on the first valve little more than the least. */
    private int[] usual() {
        return IntStream.range(0, settings.size())
                .filter(i -> settings.get(i).cutoff()
                        <= (settings.get(i).regulator() >= 1 ? LONGEST : LONGEST_THROTTLED) + 1e-9)
                .toArray();
    }

    private Optional<Found> found(NavigableSet<Integer> marks, double reachMps) {
        List<Integer> nodes = new ArrayList<>(marks.subSet(leg.fromNode(), false, leg.toNode(), false));
        nodes.add(0, leg.fromNode());
        nodes.add(leg.toNode());
        List<Label> labels = new ArrayList<>();
        for (int s : candidates) {
            labels.add(new Label(s, 0, 0, APART_S, leg.fromNode(), null));
        }
        for (int k = 0; k + 1 < nodes.size(); k++) {
            labels = extended(k == 0 ? labels : withChanges(labels), nodes.get(k), nodes.get(k + 1), reachMps);
            if (labels.isEmpty()) {
                return Optional.empty();
            }
        }
        Label best = Collections.min(labels, (a, b) -> Double.compare(a.costKg, b.costKg));
        return Optional.of(traced(best));
    }

    private static final int SHUT_INDEX = -1;

    /** Returns the labels and, for each speed, what comes of changing the cheapest to every other setting. */
    private List<Label> withChanges(List<Label> labels) {
        Label[] cheapest = new Label[bins()];
        double[] with = new double[bins()];
        for (Label label : labels) {
            int bin = bin(label.half);
            double cost = label.costKg + (label.sinceS < APART_S ? HASTE : 1) * changeKg;
            if (cheapest[bin] == null || cost < with[bin]) {
                cheapest[bin] = label;
                with[bin] = cost;
            }
        }
        List<Label> all = new ArrayList<>(labels);
        for (int bin = 0; bin < cheapest.length; bin++) {
            Label label = cheapest[bin];
            if (label != null) {
                if (label.setting != SHUT_INDEX) {
                    all.add(new Label(SHUT_INDEX, label.half, with[bin], 0, label.node, label));
                }
                for (int s : candidates) {
                    if (s != label.setting) {
                        all.add(new Label(s, label.half, with[bin], 0, label.node, label));
                    }
                }
            }
        }
        return all;
    }

    private List<Label> extended(List<Label> labels, int from, int to, double reachMps) {
        Label[][] kept = new Label[settings.size() + 1][bins()];
        double guideMps = Math.sqrt(2 * guide.half()[to - guide.fromNode()]);
        for (Label label : labels) {
            if (!runs(label.setting, label.half, from, to)) {
                continue;
            }
            double cost = label.costKg + costKg;
            int bin = bin(half);
            boolean near = Math.abs(Math.sqrt(2 * half) - guideMps) <= reachMps;
            Label present = kept[label.setting + 1][bin];
            if (near && (present == null || cost < present.costKg)) {
                kept[label.setting + 1][bin] = new Label(label.setting, half, cost, label.sinceS + timeS, to, label);
            }
        }
        List<Label> all = new ArrayList<>();
        for (Label[] row : kept) {
            for (Label label : row) {
                if (label != null) {
                    all.add(label);
                }
            }
        }
        return all;
    }

    private int bins() {
        return bin(mostHalf) + 1;
    }

    private static int bin(double half) {
        return (int) (Math.sqrt(2 * half) / BIN_MPS);
    }

    /** What a stretch takes. */
    record Taken(double timeS, double steamKg) {}

    /** Returns what a stretch takes with one setting from a speed on; empty if the train comes to a stand. */
    Optional<Taken> taken(Controls controls, double fromHalf, int from, int to) {
        int setting = controls.regulator() <= 0 ? SHUT_INDEX : indexOf(controls.regulator(), controls.cutoff());
        return runs(setting, fromHalf, from, to) ? Optional.of(new Taken(timeS, steamKg)) : Optional.empty();
    }

    /** Runs from node to node with one setting; false if the train comes to a stand on the way. */
    private boolean runs(int setting, double fromHalf, int from, int to) {
        half = fromHalf;
        timeS = 0;
        steamKg = 0;
        costKg = 0;
        for (int cell = from; cell < to; cell++) {
            if (!cell(setting, cell)) {
                return false;
            }
        }
        return true;
    }

    private boolean cell(int setting, int cell) {
        double lengthM = road.nodeM[cell + 1] - road.nodeM[cell];
        int parts = half < SLOW_MPS * SLOW_MPS / 2 ? SLOW_PARTS : 1;
        double partM = lengthM / parts;
        double alongN = road.workJ[cell] / lengthM;
        for (int i = 1; i <= parts; i++) {
            double share = (double) i / parts;
            double allowed = (road.allowedStart[cell] + share * (road.allowedEnd[cell] - road.allowedStart[cell])) / 2;
            double sinceM = road.nodeM[cell] + (i - 1) * partM - road.nodeM[leg.fromNode()];
            if (!part(setting, cell, partM, alongN, allowed, sinceM)) {
                return false;
            }
        }
        return true;
    }

    private boolean part(int setting, int cell, double partM, double alongN, double allowed, double sinceM) {
        PullTable table = road.table[cell];
        int level = prices.level[cell];
        double speed = Math.sqrt(2 * half);
        double perN = partM / road.inertiaKg[cell];
        int first = worked(setting, speed, sinceM);
        double pullN = first < 0 ? 0 : table.forceN(level, first, speed);
        double end = half + perN * (pullN - alongN - road.resistanceN(cell, speed));
        double mean = (speed + Math.sqrt(2 * Math.max(0, Math.min(end, 2 * allowed)))) / 2;
        pullN = first < 0 ? 0 : table.forceN(level, first, mean);
        end = half + perN * (pullN - alongN - road.resistanceN(cell, mean));
        double used = 1;
        double wanted = Math.min(allowed, prices.paceHalf[cell]);
        if (end > wanted && pullN > 0) {
            double without = end - perN * pullN;
            used = Math.max(0, (wanted - without) / (perN * pullN));
            end = Math.max(wanted, without);
        }
        end = Math.min(end, allowed);
        double least = sinceM < GATHERING_M ? STALL : Math.min(SLOWEST, allowed / 2);
        if (end < least && allowed > STALL) {
            return false;
        }
        double takenS = 2 * partM / (speed + Math.sqrt(2 * Math.max(end, 0)));
        double throttled = used * (1 + THROTTLED * (1 - used));
        double steam = first < 0 ? 0 : throttled * takenS * table.steamKgPerS(level, first, mean);
        half = Math.max(0, end);
        timeS += takenS;
        steamKg += steam;
        costKg += takenS * prices.kgPerS(cell, steam / takenS);
        if (setting >= 0) {
            costKg += unwanted(setting, table.eased(level, setting, mean)) * partM;
        }
        return true;
    }

    /** What a metre with a setting costs that no crew likes: more than the rail holds, or nearly full gear on the road. */
    private double unwanted(int setting, boolean eased) {
        return (eased ? slipKgPerM : 0) + (settings.get(setting).cutoff() > LONGEST ? LONG_KG_PER_M : 0);
    }

    private int worked(int setting, double speedMps, double sinceM) {
        if (setting < 0 || sinceM > StartingNotches.REACH_M) {
            return setting;
        }
        int at = (int) (speedMps * 2);
        return at < STARTING_SPEEDS ? startingIndex[setting][at] : startingIndex[setting][STARTING_SPEEDS - 1];
    }

    private Found traced(Label last) {
        List<Label> way = new ArrayList<>();
        for (Label label = last; label != null; label = label.before) {
            way.add(label);
        }
        Collections.reverse(way);
        List<PlanSetting> told = new ArrayList<>();
        int count = leg.toNode() - leg.fromNode();
        SpeedPath path = new SpeedPath(leg.fromNode(), new double[count + 1], new double[count], new double[count]);
        int setting = Integer.MIN_VALUE;
        for (int i = 0; i < way.size(); i++) {
            Label label = way.get(i);
            if (label.setting != setting) {
                setting = label.setting;
                Controls controls = setting < 0 ? SHUT : settings.get(setting);
                told.add(new PlanSetting(road.nodeM[label.node], controls));
            }
            if (i > 0 && label.node > way.get(i - 1).node) {
                retrace(way.get(i - 1), label, path);
            }
        }
        return new Found(told, path);
    }

    private void retrace(Label from, Label to, SpeedPath path) {
        half = from.half;
        for (int cell = from.node; cell < to.node; cell++) {
            timeS = 0;
            steamKg = 0;
            cell(to.setting, cell);
            int i = cell - path.fromNode();
            path.half()[i + 1] = half;
            path.timeS()[i] = timeS;
            path.steamKg()[i] = steamKg;
        }
    }
}
