package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
     * What a train that runs under one code, on however many days, asks of one of its drivers.
     *
     * @param asked roads in running order, and the class
     * @param drivers how many of the depot hold all of them, on each of the days asked about
     */
    public record Pattern(String code, String title, List<Subject> asked, List<Integer> drivers) {

        public Pattern {
            asked = List.copyOf(asked);
            drivers = List.copyOf(drivers);
        }
    }

    /**
     * Returns the trains of four weeks by their codes, each as it runs last; one for each of its drivers who is asked something else.
     *
     * @param day first of the four weeks
     * @param months after that day on which to count
     */
    public List<Pattern> of(LocalDate day, List<Integer> months) {
        Map<String, TrainSummary> byCode = new TreeMap<>();
        trains.between(day, day.plusDays(AHEAD_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .forEach(train -> byCode.put(train.code(), train));
        List<Asked> asked =
                byCode.values().stream().flatMap(train -> asked(train).stream()).toList();
        List<Subject> all = asked.stream()
                .flatMap(one -> one.subjects().stream())
                .distinct()
                .sorted()
                .toList();
        List<LocalDate> days = months.stream().map(day::plusMonths).toList();
        List<Map<Subject, Map<Long, Holding>>> held = knowledge.everybody(all, days);
        List<Pattern> patterns = new ArrayList<>();
        for (Asked one : asked) {
            List<Integer> drivers = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                drivers.add(drivers(one.subjects(), held.get(i), days.get(i)));
            }
            patterns.add(new Pattern(one.train().code(), one.train().title(), one.subjects(), drivers));
        }
        return patterns;
    }

    /** What a train asks of one of its drivers. */
    private record Asked(TrainSummary train, List<Subject> subjects) {}

    /** Drivers of different stretches or engines are asked different things. */
    private List<Asked> asked(TrainSummary summary) {
        return trains.find(summary.id()).stream()
                .flatMap(train -> demands.of(train).stream())
                .filter(TrainDemands.Demand::isDriver)
                .map(demand -> new Asked(summary, demand.subjects()))
                .distinct()
                .toList();
    }

    private int drivers(List<Subject> subjects, Map<Subject, Map<Long, Holding>> held, LocalDate day) {
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
