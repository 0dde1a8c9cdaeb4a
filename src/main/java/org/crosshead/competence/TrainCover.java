package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.crosshead.crew.People;
import org.crosshead.crew.Post;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Component;

/** How many drivers could work each train of a depot by themselves, now and later if nothing is done. */
@Component
public class TrainCover {

    private static final int AHEAD_DAYS = 28;

    private final Trains trains;
    private final TrainDemands demands;
    private final Knowledge knowledge;
    private final People people;

    TrainCover(Trains trains, TrainDemands demands, Knowledge knowledge, People people) {
        this.trains = trains;
        this.demands = demands;
        this.knowledge = knowledge;
        this.people = people;
    }

    /**
     * A train that runs under one code, on however many days.
     *
     * @param asked roads and classes of its drivers
     * @param drivers how many of the depot hold all of them, on each of the days asked about
     */
    public record Pattern(String code, String title, List<Subject> asked, List<Integer> drivers) {

        public Pattern {
            asked = List.copyOf(asked);
            drivers = List.copyOf(drivers);
        }
    }

    /**
     * Returns the trains of four weeks by their codes, each as it runs last.
     *
     * @param day first of the four weeks
     * @param months after that day on which to count
     */
    public List<Pattern> of(LocalDate day, List<Integer> months) {
        Map<String, TrainSummary> byCode = new TreeMap<>();
        trains.between(day, day.plusDays(AHEAD_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .forEach(train -> byCode.put(train.code(), train));
        Map<String, Set<Subject>> asked = new TreeMap<>();
        byCode.forEach((code, train) -> asked.put(code, asked(train.id())));
        List<Subject> all =
                asked.values().stream().flatMap(Set::stream).distinct().sorted().toList();
        List<LocalDate> days = months.stream().map(day::plusMonths).toList();
        List<Map<Subject, Map<Long, Holding>>> held = knowledge.everybody(all, days);
        List<Pattern> patterns = new ArrayList<>();
        asked.forEach((code, subjects) -> {
            List<Integer> drivers = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                drivers.add(drivers(subjects, held.get(i), days.get(i)));
            }
            patterns.add(new Pattern(code, byCode.get(code).title(), List.copyOf(subjects), drivers));
        });
        return patterns;
    }

    private Set<Subject> asked(long trainId) {
        Set<Subject> asked = new TreeSet<>();
        trains.find(trainId)
                .ifPresent(train -> demands.of(train).stream()
                        .filter(TrainDemands.Demand::isDriver)
                        .forEach(demand -> asked.addAll(demand.subjects())));
        return asked;
    }

    private int drivers(Set<Subject> subjects, Map<Subject, Map<Long, Holding>> held, LocalDate day) {
        if (subjects.isEmpty()) {
            return 0;
        }
        Set<Long> able = new HashSet<>(people.holding(Post.DRIVER, day));
        for (Subject subject : subjects) {
            Map<Long, Holding> holders = held.getOrDefault(subject, Map.of());
            able.removeIf(person -> {
                Holding holding = holders.get(person);
                return holding == null || !holding.counts();
            });
        }
        return able.size();
    }
}
