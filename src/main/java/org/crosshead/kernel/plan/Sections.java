package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.RunRequest;

/** The sections of a trip, each ending at a call with a booked time or at a stop, and what their time is worth. */
final class Sections {

    private static final double LEAST_SHARE = 1e-3;
    private static final double MOST_SHARE = 8;
    private static final double FIRST_SHARE = 0.3;
    /** Where no time is booked, a second is worth so much of the coal that the grate burns in it: a rule of this project. */
    private static final double UNBOOKED_SHARE = 1;

    private static final double EARLY = 0.25;
    private static final double PACE_LEAST_MPS = 4;
    private static final double PACE_MOST_MPS = 45;
    private static final double PACE_STEP_MPS = 0.1;

    private final RunRequest request;
    private final PlanRoad road;
    private final List<Section> sections = new ArrayList<>();

    /**
     * A section.
     *
     * @param leg index of its leg
     * @param call index of the call it ends at
     * @param bookedS time of arrival or passing there
     */
    record Section(int leg, int call, int fromNode, int toNode, OptionalDouble bookedS, TimePrice price) {}

    Sections(RunRequest request, PlanRoad road, double coalMostKgPerS) {
        this.request = request;
        this.road = road;
        for (int leg = 0; leg < road.legs.size(); leg++) {
            PlanRoad.Leg of = road.legs.get(leg);
            int from = of.fromNode();
            for (int i = 0; i < of.calls().size(); i++) {
                Call call = request.calls().get(of.calls().get(i));
                boolean ends = i == of.calls().size() - 1;
                if (ends || call.times().arrivalS().isPresent()) {
                    int to = of.nodes().get(i);
                    boolean booked = call.times().arrivalS().isPresent();
                    sections.add(new Section(
                            leg,
                            of.calls().get(i),
                            from,
                            to,
                            call.times().arrivalS(),
                            new TimePrice(
                                    (booked ? FIRST_SHARE : UNBOOKED_SHARE) * coalMostKgPerS,
                                    LEAST_SHARE * coalMostKgPerS,
                                    MOST_SHARE * coalMostKgPerS)));
                    from = to;
                }
            }
        }
    }

    List<Section> all() {
        return sections;
    }

    void price(Prices prices) {
        for (Section section : sections) {
            Arrays.fill(
                    prices.timeKgPerS,
                    section.fromNode(),
                    section.toNode(),
                    section.price().kgPerS());
        }
    }

    /** Sets for each section the speed that is cheapest on the level at its price of time: faster no steam is spent. */
    void pace(Prices prices) {
        for (Section section : sections) {
            Prices mean = prices.mean(section.fromNode(), section.toNode());
            int middle = (section.fromNode() + section.toNode()) / 2;
            double best = Double.POSITIVE_INFINITY;
            double paceMps = PACE_LEAST_MPS;
            for (double speed = PACE_LEAST_MPS; speed < PACE_MOST_MPS; speed += PACE_STEP_MPS) {
                double steamKgPerS =
                        road.table[middle].leastKgPerS(prices.level[middle], speed, road.resistanceN(middle, speed));
                double cost = mean.kgPerS(0, steamKgPerS) / speed;
                if (cost < best) {
                    best = cost;
                    paceMps = speed;
                }
            }
            Arrays.fill(prices.paceHalf, section.fromNode(), section.toNode(), paceMps * paceMps / 2);
        }
    }

    /**
     * Returns how long the train stands before each leg, and teaches the prices what came of them.
     *
     * @param stretch by how much longer each section takes in earnest than on these paths, by section; ones where it is not known
     */
    double[] learn(List<SpeedPath> paths, double[] stretch, boolean moving) {
        double[] standing = new double[road.legs.size()];
        double nowS = 0;
        int leg = -1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.leg() != leg) {
                leg = section.leg();
                double departS = departureS(leg, nowS);
                standing[leg] = departS - nowS;
                nowS = departS;
            }
            double takenS = stretch[i] * paths.get(leg).timeS(section.fromNode(), section.toNode());
            if (section.bookedS().isPresent() && moving) {
                double wantedS = Math.max(1, section.bookedS().getAsDouble() - nowS);
                section.price().learn(takenS, wantedS);
            }
            nowS += takenS;
        }
        return standing;
    }

    /** Returns how much of the time between bookings the sections miss at most, 0 where all are kept or nothing more can be done. */
    double miss(List<SpeedPath> paths, double[] stretch) {
        double nowS = 0;
        double worst = 0;
        int leg = -1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.leg() != leg) {
                leg = section.leg();
                nowS = departureS(leg, nowS);
            }
            double takenS = stretch[i] * paths.get(leg).timeS(section.fromNode(), section.toNode());
            if (section.bookedS().isPresent()) {
                double late = nowS + takenS - section.bookedS().getAsDouble();
                boolean can = late > 0 ? !section.price().dearest() : true;
                worst = can ? Math.max(worst, Math.abs(late) / takenS) : worst;
            }
            nowS += takenS;
        }
        return worst;
    }

    /** Returns by how many seconds the sections miss their bookings at worst; early counts for a quarter, since it can be waited out. */
    double untimely(List<SpeedPath> paths, double[] stretch) {
        double nowS = 0;
        double worst = 0;
        int leg = -1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.leg() != leg) {
                leg = section.leg();
                nowS = departureS(leg, nowS);
            }
            nowS += stretch[i] * paths.get(leg).timeS(section.fromNode(), section.toNode());
            if (section.bookedS().isPresent()) {
                double lateS = nowS - section.bookedS().getAsDouble();
                worst = Math.max(worst, lateS > 0 ? lateS : -EARLY * lateS);
            }
        }
        return worst;
    }

    private double departureS(int leg, double arrivedS) {
        int call = leg == 0 ? 0 : last(road.legs.get(leg - 1).calls());
        Call at = request.calls().get(call);
        double readyS = arrivedS + at.standing().leastS();
        return Math.max(readyS, at.times().departureS().orElse(readyS));
    }

    private static int last(List<Integer> calls) {
        return calls.get(calls.size() - 1);
    }
}
