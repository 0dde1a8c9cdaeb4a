package org.crosshead.competence;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.Engines;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.springframework.stereotype.Component;

/** What a train asks of its crew, and whether a turn on it keeps to somebody's hours. */
@Component
public class TrainDemands {

    /** Work so many days before and after a turn bears on it: a month and a day. */
    public static final int AROUND_DAYS = 32;

    private final RouteSections sections;
    private final Engines engines;
    private final People people;
    private final ZoneId zone;

    TrainDemands(RouteSections sections, Engines engines, People people, ZoneId zone) {
        this.sections = sections;
        this.engines = engines;
        this.people = people;
        this.zone = zone;
    }

    /** Roads and classes of one of the crew. */
    public record Demand(long personId, List<Subject> subjects) {

        public Demand {
            subjects = List.copyOf(subjects);
        }

        /** Says whether they drive: a fireman is asked no road. */
        public boolean isDriver() {
            return subjects.stream().anyMatch(subject -> subject.kind() == Subject.Kind.SECTION);
        }
    }

    /** Returns what is asked of those of the crew who work the train: of drivers roads and class, of firemen the class. */
    public List<Demand> of(Train train) {
        return new CrewDuties(
                        train.content(),
                        new TrainRoad(train.content(), sections.all()),
                        engines,
                        number -> people.byStaffNumber(number).map(Person::id).orElse(-1L),
                        post -> List.of(),
                        Set.of(),
                        (section, low, high) -> false)
                .needs().stream()
                        .map(needs -> new Demand(
                                needs.personId(),
                                needs.duties().stream()
                                        .map(PermitRules.Duty::subject)
                                        .toList()))
                        .toList();
    }

    /**
     * Says whether a turn keeps to the hours.
     *
     * @param turn on a train on which the person is not booked yet
     * @param booked their work from {@link #AROUND_DAYS} before to as many after it
     */
    public boolean fits(CrewBooking turn, List<CrewBooking> booked, KnowledgePolicy.Hours hours) {
        boolean free = booked.stream()
                .noneMatch(
                        other -> other.from().isBefore(turn.to()) && turn.from().isBefore(other.to()));
        return free
                && HoursRules.bars(
                                0,
                                new HoursRules.Work(turn.from(), turn.to()),
                                booked.stream()
                                        .map(other -> new HoursRules.Work(other.from(), other.to()))
                                        .toList(),
                                hours,
                                zone)
                        .isEmpty();
    }
}
