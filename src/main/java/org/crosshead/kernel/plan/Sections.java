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
                                    request.policy().weights().lateMost() * coalMostKgPerS)));
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

    /** When each section begins and how long it takes, and how long the train stands before each leg. */
    private static final class Walk {

        final double[] standingS;
        final double[] fromS;
        final double[] takenS;

        Walk(int legs, int sections) {
            standingS = new double[legs];
            fromS = new double[sections];
            takenS = new double[sections];
        }

        double toS(int section) {
            return fromS[section] + takenS[section];
        }
    }

    private Walk walk(List<SpeedPath> paths, double[] stretch) {
        Walk walk = new Walk(road.legs.size(), sections.size());
        double nowS = 0;
        int leg = -1;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.leg() != leg) {
                leg = section.leg();
                double departS = departureS(leg, nowS);
                walk.standingS[leg] = departS - nowS;
                nowS = departS;
            }
            walk.fromS[i] = nowS;
            walk.takenS[i] = stretch[i] * paths.get(leg).timeS(section.fromNode(), section.toNode());
            nowS = walk.toS(i);
        }
        return walk;
    }

    /**
     * Returns how long the train stands before each leg.
     *
     * @param stretch by how much longer each section takes in earnest than on these paths, by section; ones where it is not known
     */
    double[] standingS(List<SpeedPath> paths, double[] stretch) {
        return walk(paths, stretch).standingS;
    }

    /** Teaches the prices of booked sections what came of them. */
    void learn(List<SpeedPath> paths, double[] stretch) {
        Walk walk = walk(paths, stretch);
        for (int i = 0; i < sections.size(); i++) {
            OptionalDouble bookedS = sections.get(i).bookedS();
            if (bookedS.isPresent()) {
                double wantedS = Math.max(1, bookedS.getAsDouble() - walk.fromS[i]);
                sections.get(i).price().learn(walk.takenS[i], wantedS);
            }
        }
    }

    /** Returns how much of the time between bookings the sections miss at most, 0 where all are kept or nothing more can be done. */
    double miss(List<SpeedPath> paths, double[] stretch) {
        Walk walk = walk(paths, stretch);
        double worst = 0;
        for (int i = 0; i < sections.size(); i++) {
            OptionalDouble bookedS = sections.get(i).bookedS();
            if (bookedS.isPresent()) {
                double lateS = walk.toS(i) - bookedS.getAsDouble();
                boolean settled = lateS > 0 && sections.get(i).price().dearest();
                worst = settled ? worst : Math.max(worst, Math.abs(lateS) / walk.takenS[i]);
            }
        }
        return worst;
    }

    /** Returns by how many seconds the sections miss their bookings at worst; early counts for a quarter, since it can be waited out. */
    double untimely(List<SpeedPath> paths, double[] stretch) {
        Walk walk = walk(paths, stretch);
        double worst = 0;
        for (int i = 0; i < sections.size(); i++) {
            OptionalDouble bookedS = sections.get(i).bookedS();
            if (bookedS.isPresent()) {
                double lateS = walk.toS(i) - bookedS.getAsDouble();
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
