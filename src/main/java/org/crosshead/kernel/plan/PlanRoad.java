package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.RunCells;
import org.crosshead.kernel.motion.RunPolicy;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.RailState;

/** The cells of a run with what a plan asks of them again and again, laid out in arrays. Squares are of speeds, m2/s2. */
final class PlanRoad {

    private static final double BRAKE_STEP_MPS = 0.5;

    final int cells;
    final double[] nodeM;
    /** Square of the speed allowed at each node, of both sides the lesser. */
    final double[] allowed;

    final double[] allowedStart;
    final double[] allowedEnd;
    final double[] inertiaKg;
    final double[] workJ;
    final double[] constantN;
    final double[] linearN;
    final double[] quadraticN;
    final PullTable[] table;
    final List<Leg> legs;
    final RunPolicy.Weights weights;
    /** Whether a stage of several cells must end at the node. */
    final boolean[] edge;

    private final double[] brakeN;

    PlanRoad(RunRequest request, RunCells grid, double speedMaxMps) {
        weights = request.policy().weights();
        cells = grid.count();
        nodeM = IntStream.rangeClosed(0, cells).mapToDouble(grid::nodeM).toArray();
        allowed = new double[cells + 1];
        allowedStart = IntStream.range(0, cells).mapToDouble(grid::allowedStart).toArray();
        allowedEnd = IntStream.range(0, cells).mapToDouble(grid::allowedEnd).toArray();
        edge = new boolean[cells + 1];
        inertiaKg = new double[cells];
        workJ = new double[cells];
        constantN = new double[cells];
        linearN = new double[cells];
        quadraticN = new double[cells];
        table = new PullTable[cells];
        fill(request, grid, speedMaxMps);
        brakeN = IntStream.range(0, (int) (speedMaxMps / BRAKE_STEP_MPS) + 3)
                .mapToDouble(i -> grid.brakeN(i * BRAKE_STEP_MPS))
                .toArray();
        legs = legs(request, grid);
    }

    /**
     * A run from stop to stop.
     *
     * @param fromNode where it starts
     * @param calls indexes of the calls it comes to, the last a stop
     * @param nodes their nodes
     */
    record Leg(int fromNode, List<Integer> calls, List<Integer> nodes) {

        int toNode() {
            return nodes.get(nodes.size() - 1);
        }
    }

    private record Use(RailState rail, List<Integer> engines) {}

    private void fill(RunRequest request, RunCells grid, double speedMaxMps) {
        Map<Use, PullTable> tables = new HashMap<>();
        List<EngineAtWork> engines = request.train().engines();
        for (int i = 0; i < cells; i++) {
            double middleM = (nodeM[i] + nodeM[i + 1]) / 2;
            List<Integer> working = IntStream.range(0, engines.size())
                    .filter(e -> e == 0 || engines.get(e).worksAt(middleM))
                    .boxed()
                    .toList();
            Use use = new Use(grid.rail(i), working);
            table[i] = tables.computeIfAbsent(
                    use,
                    key -> new PullTable(
                            key.engines().stream().map(engines::get).toList(), key.rail(), speedMaxMps));
            RunningResistance resistance = grid.resistance(i);
            constantN[i] = resistance.constantN();
            linearN[i] = resistance.linearNPerMps();
            quadraticN[i] = resistance.quadraticNPerMps2();
            inertiaKg[i] = grid.inertiaKg(i);
            workJ[i] = grid.workJ(i);
        }
        for (int node = 0; node <= cells; node++) {
            double before = node == 0 ? grid.allowedStart(0) : grid.allowedEnd(node - 1);
            double after = node == cells ? 0 : grid.allowedStart(node);
            allowed[node] = Math.min(before, after);
            edge[node] = node == 0
                    || node == cells
                    || before != after
                    || table[node] != table[node - 1]
                    || slopes(grid, node - 1) != slopes(grid, node);
        }
    }

    private static boolean slopes(RunCells grid, int cell) {
        return grid.allowedEnd(cell) < grid.allowedStart(cell);
    }

    private List<Leg> legs(RunRequest request, RunCells grid) {
        List<Leg> found = new ArrayList<>();
        List<Call> calls = request.calls();
        int from = 0;
        List<Integer> indexes = new ArrayList<>();
        List<Integer> nodes = new ArrayList<>();
        for (int i = 1; i < calls.size(); i++) {
            indexes.add(i);
            int node = grid.node(calls.get(i).positionM());
            nodes.add(node);
            edge[node] = true;
            if (calls.get(i).stops() || i == calls.size() - 1) {
                found.add(new Leg(from, List.copyOf(indexes), List.copyOf(nodes)));
                indexes.clear();
                nodes.clear();
                boolean turns =
                        request.road().reversalsM().contains(calls.get(i).positionM());
                from = turns
                        ? grid.node(calls.get(i).positionM()
                                + request.train().body().lengthM())
                        : node;
            }
        }
        return found;
    }

    double brakeN(double speedMps) {
        double at = speedMps / BRAKE_STEP_MPS;
        int low = Math.min((int) at, brakeN.length - 2);
        return brakeN[low] + Math.min(1, at - low) * (brakeN[low + 1] - brakeN[low]);
    }

    double resistanceN(int cell, double speedMps) {
        return constantN[cell] + speedMps * (linearN[cell] + speedMps * quadraticN[cell]);
    }
}
