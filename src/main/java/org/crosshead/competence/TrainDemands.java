package org.crosshead.competence;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.Engines;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.springframework.stereotype.Component;

/** What a train asks of its crew, and whether a turn on it keeps to somebody's hours. */
@Component
public class TrainDemands {

    /** Work so many days before and after a turn bears on it: a month and a day. */
    public static final int AROUND_DAYS = 32;

    private static final long NOBODY = -1;

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
        Set<String> routes =
                train.content().legs().stream().map(TrainDraft.Leg::routeCode).collect(Collectors.toSet());
        return of(
                train,
                sections.ofRoutes(routes),
                number -> people.byStaffNumber(number).map(Person::id).orElse(NOBODY),
                this::classCode);
    }

    /** Returns the same for many trains: what is laid down, who there is and of what class an engine is are read once. */
    public Function<Train, List<Demand>> ofMany() {
        List<RouteSection> laidDown = sections.all();
        Map<String, Long> ids = people.all().stream().collect(Collectors.toMap(Person::staffNumber, Person::id));
        Map<String, Optional<String>> classes = new HashMap<>();
        return train -> of(
                train,
                laidDown,
                number -> ids.getOrDefault(number, NOBODY),
                number -> classes.computeIfAbsent(number, this::classCode));
    }

    private Optional<String> classCode(String engineNumber) {
        return engines.current(engineNumber).map(engine -> engine.content().classCode());
    }

    private static List<Demand> of(
            Train train,
            List<RouteSection> laidDown,
            ToLongFunction<String> personId,
            Function<String, Optional<String>> classCode) {
        return new CrewDuties(
                        train.content(),
                        new TrainRoad(train.content(), laidDown),
                        classCode,
                        personId,
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
