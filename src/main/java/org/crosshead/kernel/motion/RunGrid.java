package org.crosshead.kernel.motion;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.RailState;

/**
 * A road cut into cells for one train. Node {@code i} lies at {@code positionM[i]}; cell {@code i} reaches from it to the next
 * node. Every place where something changes at once (a limit for the head, a limit left by the tail, a call, a stretch of rail, an
 * assisting engine) is a node where a step must end. The speed allowed falls towards every limit and stop as the service brake
 * brings the train down, margin included.
 */
final class RunGrid {

    private static final double CELL_LONGEST_M = 50;

    final double[] positionM;
    /** Square of the speed allowed at the start of each cell and at its end. */
    final double[] allowedStart;

    final double[] allowedEnd;
    final double[] massKg;
    final double[] inertiaKg;
    final RunningResistance[] resistance;
    final RailState[] rail;
    /** Index of the call at a node, or -1. */
    final int[] call;

    /** Work of gravity and curves between places of the grid. */
    final RoadWork work;

    private final Track track;
    private final double trainLengthM;

    RunGrid(RunRequest request, double stepShare) {
        track = request.road().track();
        trainLengthM = request.train().body().lengthM();
        positionM = nodes(hardPlaces(request), stepShare * CELL_LONGEST_M);
        work = new RoadWork(track, trainLengthM, positionM);
        int cells = positionM.length - 1;
        allowedStart = new double[cells];
        allowedEnd = new double[cells];
        massKg = new double[cells];
        inertiaKg = new double[cells];
        resistance = new RunningResistance[cells];
        rail = new RailState[cells];
        call = new int[positionM.length];
        placeCalls(request);
        fillCells(request);
        allowSpeeds(request);
    }

    /** Returns the cell that begins at a node. */
    int cellFrom(double nodeM) {
        return Arrays.binarySearch(positionM, nodeM);
    }

    int cells() {
        return positionM.length - 1;
    }

    /** Returns the square of the speed allowed at a place of a cell. */
    double allowedSquared(int cell, double atM) {
        double share = (atM - positionM[cell]) / (positionM[cell + 1] - positionM[cell]);
        return allowedStart[cell] + share * (allowedEnd[cell] - allowedStart[cell]);
    }

    private static double[] hardPlaces(RunRequest request) {
        TreeSet<Double> places = new TreeSet<>();
        request.calls().forEach(call -> places.add(call.positionM()));
        for (SpeedLimits.Length limit : request.road().track().limits().lengths()) {
            places.add(limit.fromM());
            places.add(limit.toM() + request.train().body().lengthM());
        }
        for (RailStretch stretch : request.road().poorRail()) {
            places.add(stretch.fromM());
            places.add(stretch.toM());
        }
        for (double reversalM : request.road().reversalsM()) {
            places.add(reversalM + request.train().body().lengthM());
        }
        places.addAll(request.road().marksM());
        for (EngineAtWork engine : request.train().engines()) {
            places.add(engine.assistance().fromM());
            places.add(engine.assistance().toM());
        }
        return places.subSet(request.startM(), true, request.endM(), true).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static double[] nodes(double[] places, double longestM) {
        DoubleStream.Builder nodes = DoubleStream.builder();
        for (int i = 0; i + 1 < places.length; i++) {
            double lengthM = places[i + 1] - places[i];
            int count = (int) Math.ceil(lengthM / longestM);
            for (int k = 0; k < count; k++) {
                nodes.add(places[i] + lengthM * k / count);
            }
        }
        nodes.add(places[places.length - 1]);
        return nodes.build().toArray();
    }

    private void placeCalls(RunRequest request) {
        Arrays.fill(call, -1);
        for (int i = 0; i < request.calls().size(); i++) {
            int node = Arrays.binarySearch(positionM, request.calls().get(i).positionM());
            call[node] = i;
        }
    }

    private void fillCells(RunRequest request) {
        MakeUp train = request.train();
        for (int i = 0; i < cells(); i++) {
            double middleM = (positionM[i] + positionM[i + 1]) / 2;
            double mass = train.body().massKg();
            RunningResistance sum = train.body().resistance();
            for (EngineAtWork engine : train.engines()) {
                if (engine.worksAt(middleM)) {
                    mass += engine.assistance().massKg();
                    sum = sum.plus(engine.assistance().resistance());
                }
            }
            massKg[i] = mass;
            inertiaKg[i] = mass * (1 + train.body().rotatingShare());
            resistance[i] = sum;
            rail[i] = request.road().railAt(middleM);
        }
    }

    private void allowSpeeds(RunRequest request) {
        Application service = request.train().service();
        double speedMaxMps = request.speedMaxMps();
        double next = 0;
        for (int i = cells() - 1; i >= 0; i--) {
            double middleM = (positionM[i] + positionM[i + 1]) / 2;
            double limit = Math.min(
                    speedMaxMps, track.limits().lowestMps(Math.max(track.startM(), middleM - trainLengthM), middleM));
            int at = call[i + 1];
            boolean stops = at >= 0 && (request.calls().get(at).stops() || i == cells() - 1);
            allowedEnd[i] = Math.min(limit * limit, stops ? 0 : next);
            double first = raised(i, allowedEnd[i], service, request.policy().brakingMargin());
            double second = raised(
                    i, (allowedEnd[i] + first) / 2, service, request.policy().brakingMargin());
            allowedStart[i] = Math.min(limit * limit, allowedEnd[i] + second - (allowedEnd[i] + first) / 2);
            next = allowedStart[i];
        }
    }

    /** Returns the square of speed at the start of a cell from which the service brake comes down to the square given. */
    private double raised(int cell, double speedSquared, Application service, double margin) {
        double speedMps = Math.sqrt(speedSquared);
        double slowingN =
                service.force().forceN(speedMps) + MakeUp.RESISTANCE_CREDITED * resistance[cell].forceN(speedMps);
        double fromM = positionM[cell];
        double toM = positionM[cell + 1];
        double slowingJ = slowingN * (toM - fromM) + massKg[cell] * work.within(cell, fromM, toM);
        return speedSquared + Math.max(0, 2 * slowingJ / inertiaKg[cell] / margin);
    }
}
