package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** How many drivers could work each train of a depot by themselves, now and later if nothing is done. */
@Component
public class TrainCover {

    private static final int AHEAD_DAYS = 28;

    private final Trains trains;
    private final TrainDemands demands;
    private final Holdings holdings;
    private final People people;

    TrainCover(Trains trains, TrainDemands demands, Holdings holdings, People people) {
        this.trains = trains;
        this.demands = demands;
        this.holdings = holdings;
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
     * @param depot whose drivers are counted, and only on trains that one of them is booked to drive; null for all
     * @param day first of the four weeks
     * @param months after that day on which to count
     */
    public List<Pattern> of(@Nullable String depot, LocalDate day, List<Integer> months) {
        Group drivers = new Group(Post.DRIVER, depot);
        List<Person> everybody = people.all();
        Map<String, Train> byCode = new TreeMap<>();
        trains.running(day, day.plusDays(AHEAD_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .filter(booked(drivers, everybody, day))
                .forEach(train -> byCode.put(train.content().code(), train));
        Function<Train, List<TrainDemands.Demand>> asks = demands.ofMany();
        List<Asked> asked = byCode.values().stream()
                .flatMap(train ->
                        asked(
                                train,
                                asks.apply(train),
                                drivers.members(everybody, train.content().day()))
                                .stream())
                .toList();
        List<Subject> all = asked.stream()
                .flatMap(one -> one.subjects().stream())
                .distinct()
                .sorted()
                .toList();
        List<LocalDate> days = months.stream().map(day::plusMonths).toList();
        List<Map<Subject, Map<Long, Holding>>> held = holdings.everybody(all, days);
        List<Set<Long>> there =
                days.stream().map(then -> drivers.members(everybody, then)).toList();
        List<Pattern> patterns = new ArrayList<>();
        for (Asked one : asked) {
            List<Integer> counts = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                counts.add(able(one.subjects(), held.get(i), there.get(i)));
            }
            patterns.add(new Pattern(one.train().code(), one.train().title(), one.subjects(), counts));
        }
        return patterns;
    }

    /** What a train asks of one of its drivers. */
    private record Asked(TrainDraft train, List<Subject> subjects) {}

    /** Returns which trains any driver of a depot is booked on; all where no depot is meant. */
    private Predicate<Train> booked(Group drivers, List<Person> everybody, LocalDate day) {
        if (drivers.depot() == null) {
            return train -> true;
        }
        Set<Long> booked = everybody.stream()
                .filter(person -> drivers.includes(person, day) || drivers.includes(person, day.plusDays(AHEAD_DAYS)))
                .flatMap(person -> trains.bookings(person.staffNumber(), day, day.plusDays(AHEAD_DAYS)).stream())
                .map(CrewBooking::trainId)
                .collect(Collectors.toSet());
        return train -> booked.contains(train.id());
    }

    /** Drivers of different stretches or engines are asked different things. */
    private static List<Asked> asked(Train train, List<TrainDemands.Demand> demands, Set<Long> drivers) {
        return demands.stream()
                .filter(demand -> demand.isDriver() && drivers.contains(demand.personId()))
                .map(demand -> new Asked(train.content(), demand.subjects()))
                .distinct()
                .toList();
    }

    private static int able(List<Subject> subjects, Map<Subject, Map<Long, Holding>> held, Set<Long> drivers) {
        Set<Long> able = new HashSet<>(drivers);
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
