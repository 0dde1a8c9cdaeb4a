package org.crosshead.kernel.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;

/** The settings of a whole trip as a crew can work them, made near the bare optimum and at its prices, at the same booked times. */
final class CrewPlan {

    private static final int ROUNDS = 4;
    private static final double CLOSE_S = 8;
    private static final double CHANGES_PER_KM = 0.3;
    /** Price of a change to begin with, kg of coal, and how much dearer it is made where there are too many. */
    private static final double CHANGE_KG = 0.5;

    private static final double DEARER = 1.7;
    private static final int DEARER_MOST = 3;

    final List<SettingProgramme.Found> legs;
    final SteamAccount account;
    final Sections sections;

    private CrewPlan(List<SettingProgramme.Found> legs, SteamAccount account, Sections sections) {
        this.legs = legs;
        this.account = account;
        this.sections = sections;
    }

    /**
     * Returns the plan; empty if no settings make the trip.
     *
     * @param placesM where a crew can change something
     * @param stretch by how much longer each section takes in earnest than here
     */
    static Optional<CrewPlan> of(RunRequest request, BareOptimum optimum, List<Double> placesM, double[] stretch) {
        NavigableSet<Integer> marks = marks(optimum.road, placesM);
        List<SettingProgramme.Found> best = List.of();
        double bestScore = Double.POSITIVE_INFINITY;
        double changeKg = CHANGE_KG;
        int dearer = 0;
        for (int round = 0; round < ROUNDS && bestScore > CLOSE_S; round++) {
            optimum.sections.price(optimum.prices);
            optimum.sections.pace(optimum.prices);
            Optional<List<SettingProgramme.Found>> found = legs(request, optimum, marks, changeKg);
            while (found.isPresent() && dearer < DEARER_MOST && tooMany(found.get(), optimum.road)) {
                changeKg *= DEARER;
                dearer++;
                found = legs(request, optimum, marks, changeKg);
            }
            if (found.isEmpty()) {
                break;
            }
            List<SpeedPath> paths = paths(found.get());
            double score = optimum.sections.untimely(paths, stretch);
            if (score < bestScore) {
                best = found.get();
                bestScore = score;
            }
            optimum.sections.learn(paths, stretch);
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(drawn(optimum, best, stretch));
    }

    private static CrewPlan drawn(BareOptimum optimum, List<SettingProgramme.Found> legs, double[] stretch) {
        List<SpeedPath> paths = paths(legs);
        double[] standing = optimum.sections.standingS(paths, stretch);
        optimum.account.draw(paths, standing, new Prices(optimum.road.cells, optimum.prices.coal(), 0));
        return new CrewPlan(legs, optimum.account, optimum.sections);
    }

    private static NavigableSet<Integer> marks(PlanRoad road, List<Double> placesM) {
        TreeSet<Integer> marks = new TreeSet<>();
        for (double placeM : placesM) {
            int node = Arrays.binarySearch(road.nodeM, placeM);
            if (node >= 0) {
                marks.add(node);
            }
        }
        return marks;
    }

    private static Optional<List<SettingProgramme.Found>> legs(
            RunRequest request, BareOptimum optimum, NavigableSet<Integer> marks, double changeKg) {
        ValveGear gear = request.train().engines().get(0).engine().parameters().valveGear();
        List<SettingProgramme.Found> legs = new ArrayList<>();
        for (int leg = 0; leg < optimum.road.legs.size(); leg++) {
            Optional<SettingProgramme.Found> found = new SettingProgramme(
                            optimum.road,
                            optimum.road.legs.get(leg),
                            gear,
                            optimum.paths.get(leg),
                            optimum.prices,
                            changeKg)
                    .found(marks);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            legs.add(found.get());
        }
        return Optional.of(legs);
    }

    private static boolean tooMany(List<SettingProgramme.Found> legs, PlanRoad road) {
        double lengthKm = (road.nodeM[road.cells] - road.nodeM[0]) / 1_000;
        int changes = legs.stream().mapToInt(leg -> leg.settings().size() - 1).sum();
        return changes > CHANGES_PER_KM * lengthKm;
    }

    static List<SpeedPath> paths(List<SettingProgramme.Found> legs) {
        return legs.stream().map(SettingProgramme.Found::path).toList();
    }

    /** Returns how long each section takes. */
    double[] sectionS() {
        return sections.all().stream()
                .mapToDouble(section -> legs.get(section.leg()).path().timeS(section.fromNode(), section.toNode()))
                .toArray();
    }

    List<PlanSetting> settings() {
        List<PlanSetting> all = new ArrayList<>();
        legs.forEach(leg -> all.addAll(leg.settings()));
        return all;
    }
}
