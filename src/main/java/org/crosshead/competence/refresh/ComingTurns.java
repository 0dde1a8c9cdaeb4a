package org.crosshead.competence.refresh;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.crosshead.competence.ExtraTurns;
import org.crosshead.competence.Holding;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.KnowledgePolicy;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.crew.People;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Component;

/** The turns of the coming weeks beside whose driver somebody could be put, and whom each suits by their hours. */
@Component
class ComingTurns {

    private final Trains trains;
    private final TrainDemands demands;
    private final KnowledgePolicies policies;
    private final People people;
    private final List<ExtraTurns> extras;

    ComingTurns(
            Trains trains, TrainDemands demands, KnowledgePolicies policies, People people, List<ExtraTurns> extras) {
        this.trains = trains;
        this.demands = demands;
        this.policies = policies;
        this.people = people;
        this.extras = List.copyOf(extras);
    }

    /**
     * A train to come, with one of its drivers.
     *
     * @param asked of the driver
     * @param subjects of what is asked, those that the driver holds then
     */
    record Turn(
            long trainId,
            LocalDate day,
            boolean dark,
            Instant from,
            Instant to,
            long driverId,
            Set<Subject> asked,
            List<Subject> subjects) {

        /** Says whether somebody who drives it beside the driver would drive this under them. */
        boolean teaches(Subject subject, long personId) {
            return driverId != personId && subjects.contains(subject);
        }
    }

    /** Returns the turns of some trains, in their order, whose driver holds any of what they ask. */
    List<Turn> of(List<Train> coming, Map<Subject, Map<Long, Holding>> all) {
        List<Turn> turns = new ArrayList<>();
        Function<Train, List<TrainDemands.Demand>> asks = demands.ofMany();
        for (Train train : coming) {
            TrainSummary summary = TrainSummary.of(train);
            for (TrainDemands.Demand demand : asks.apply(train)) {
                List<Subject> held = demand.subjects().stream()
                        .filter(subject -> holdsThen(all, subject, demand.personId(), summary.day()))
                        .toList();
                if (demand.isDriver() && !held.isEmpty()) {
                    turns.add(new Turn(
                            train.id(),
                            summary.day(),
                            train.content().dark(),
                            summary.departs(),
                            summary.arrives(),
                            demand.personId(),
                            Set.copyOf(demand.subjects()),
                            held));
                }
            }
        }
        return turns;
    }

    private static boolean holdsThen(
            Map<Subject, Map<Long, Holding>> all, Subject subject, long personId, LocalDate day) {
        Holding holding = all.getOrDefault(subject, Map.of()).get(personId);
        LocalDate last = holding == null ? null : holding.lastGoodDay();
        return holding != null && holding.counts() && last != null && !last.isBefore(day);
    }

    /** Returns what everybody is bound to within some days, read for each when first asked about. */
    Diaries diaries(LocalDate firstDay, LocalDate lastDay) {
        return new Diaries(firstDay.minusDays(TrainDemands.AROUND_DAYS), lastDay.plusDays(TrainDemands.AROUND_DAYS));
    }

    /** To what people are bound: trains of their own, and turns on which they learn. */
    final class Diaries {

        private final LocalDate firstDay;
        private final LocalDate lastDay;
        private final Map<Long, List<CrewBooking>> booked = new HashMap<>();
        private final Map<LocalDate, KnowledgePolicy.Hours> hours = new HashMap<>();

        private Diaries(LocalDate firstDay, LocalDate lastDay) {
            this.firstDay = firstDay;
            this.lastDay = lastDay;
        }

        /** Says whether a turn keeps to somebody's hours. */
        boolean suits(long personId, Turn turn) {
            List<CrewBooking> around = booked.computeIfAbsent(personId, this::booked).stream()
                    .filter(booking ->
                            Duration.between(booking.from(), turn.from()).abs().toDays() <= TrainDemands.AROUND_DAYS)
                    .toList();
            return demands.fits(
                    new CrewBooking(turn.trainId(), turn.from(), turn.to()),
                    around,
                    hours.computeIfAbsent(turn.day(), day -> policies.on(day).hours()));
        }

        private List<CrewBooking> booked(long personId) {
            List<CrewBooking> bookings = new ArrayList<>();
            people.find(personId)
                    .ifPresent(person -> bookings.addAll(trains.bookings(person.staffNumber(), firstDay, lastDay)));
            extras.forEach(extra -> bookings.addAll(extra.of(personId, firstDay, lastDay)));
            return bookings;
        }
    }
}
