package org.crosshead.competence;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.Permit.Bar;
import org.crosshead.competence.PermitRules.Asked;
import org.crosshead.competence.PermitRules.Companion;
import org.crosshead.competence.PermitRules.Needs;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.Engines;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Component;

/** Puts together all that a decision on a train's crew rests on. */
@Component
class PermitQuestion {

    private static final int AFTER_DAYS = 2;

    private final Trains trains;
    private final Knowledge knowledge;
    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final RouteSections sections;
    private final Routes routes;
    private final Engines engines;
    private final People people;
    private final DecisionStore store;
    private final ConductingStore conducting;
    private final Diversions diversions;
    private final List<ExtraTurns> extras;
    private final Clock clock;
    private final ZoneId zone;

    PermitQuestion(
            Trains trains,
            Knowledge knowledge,
            Holdings holdings,
            KnowledgePolicies policies,
            RouteSections sections,
            Routes routes,
            Engines engines,
            People people,
            DecisionStore store,
            ConductingStore conducting,
            Diversions diversions,
            List<ExtraTurns> extras,
            Clock clock,
            ZoneId zone) {
        this.trains = trains;
        this.knowledge = knowledge;
        this.holdings = holdings;
        this.policies = policies;
        this.sections = sections;
        this.routes = routes;
        this.engines = engines;
        this.people = people;
        this.store = store;
        this.conducting = conducting;
        this.diversions = diversions;
        this.extras = List.copyOf(extras);
        this.clock = clock;
        this.zone = zone;
    }

    /** Returns the question as the train is crewed and the records stand now. */
    Asked of(Train train) {
        TrainDraft content = train.content();
        LocalDate day = turnEnds(content);
        KnowledgePolicy policy = policies.on(day);
        List<TrainDraft.Leg> diverted =
                diversions.of(train.id()).stream().map(Diversions.Planned::leg).toList();
        TrainRoad road = road(train, diverted);
        Crew crew = new Crew(
                people.byStaffNumbers(
                        content.crew().stream().map(CrewSlot::staffNumber).collect(Collectors.toSet())),
                new HashMap<>());
        CrewDuties duties = new CrewDuties(
                content,
                road,
                number -> crew.classes().computeIfAbsent(number, this::classCode),
                crew::id,
                post -> others(crew, content, post),
                policy.needs(),
                easy(policy));
        List<Needs> detours = duties.detours(diverted);
        List<Needs> needs = duties.needs();
        List<Companion> companions = companions(train, road, crew, policy);
        Set<Subject> subjects = new HashSet<>(policy.needs());
        Stream.concat(needs.stream(), detours.stream())
                .flatMap(one -> one.duties().stream())
                .forEach(duty -> subjects.add(duty.subject()));
        return new Asked(
                day,
                policy.version(),
                needs,
                companions,
                road.gaps(),
                store.declined(train.id()),
                Stream.concat(crew.withoutPost(content, day).stream(), bars(train, crew, policy.hours()).stream())
                        .toList(),
                holdings.held(subjects, crew.ids(), people.present(day), policy, day, clock.instant()),
                detours,
                policy.regime().piloting());
    }

    /**
     * Who a train's crew are, read once.
     *
     * @param people by staff number
     * @param classes of engines by their numbers, filled as they are asked for
     */
    private record Crew(Map<String, Person> people, Map<String, Optional<String>> classes) {

        Set<Long> ids() {
            return people.values().stream().map(Person::id).collect(Collectors.toSet());
        }

        /** Returns a bar for everybody who does not hold the post of their role on a day. */
        List<Bar> withoutPost(TrainDraft train, LocalDate day) {
            return train.crew().stream()
                    .filter(slot -> Optional.ofNullable(people.get(slot.staffNumber()))
                            .filter(person ->
                                    person.mayTake(slot.role(), train.day()) && person.mayTake(slot.role(), day))
                            .isEmpty())
                    .map(slot -> new Bar(id(slot.staffNumber()), "post", List.of(0.0, 0.0)))
                    .distinct()
                    .toList();
        }

        long id(String staffNumber) {
            return Optional.ofNullable(people.get(staffNumber)).map(Person::id).orElse(-1L);
        }
    }

    private CrewDuties.Easy easy(KnowledgePolicy policy) {
        return (section, low, high) -> policy.upkeep().easyGrades()
                && routes.current(section.routeCode())
                        .map(route -> EasyGrades.cover(route.content(), section.direction(), low, high))
                        .orElse(false);
    }

    private List<Bar> bars(Train train, Crew crew, KnowledgePolicy.Hours hours) {
        List<Bar> bars = new ArrayList<>();
        Set<String> asked = new HashSet<>();
        for (CrewSlot slot : train.content().crew()) {
            if (!asked.add(slot.staffNumber())) {
                continue;
            }
            LocalDate day = train.content().day();
            LocalDate first = day.minusDays(TrainDemands.AROUND_DAYS);
            LocalDate last = day.plusDays(AFTER_DAYS);
            List<CrewBooking> bookings = new ArrayList<>(trains.bookings(slot.staffNumber(), first, last));
            long personId = crew.id(slot.staffNumber());
            extras.forEach(extra -> bookings.addAll(extra.of(personId, first, last)));
            bookings.stream()
                    .filter(booking -> booking.trainId() == train.id())
                    .map(PermitQuestion::work)
                    .reduce((one, other) -> new HoursRules.Work(
                            one.on().isBefore(other.on()) ? one.on() : other.on(),
                            one.off().isAfter(other.off()) ? one.off() : other.off()))
                    .ifPresent(work -> bars.addAll(HoursRules.bars(
                            personId,
                            work,
                            bookings.stream()
                                    .filter(booking -> booking.trainId() != train.id())
                                    .map(PermitQuestion::work)
                                    .toList(),
                            hours,
                            zone)));
        }
        return bars;
    }

    private static HoursRules.Work work(CrewBooking booking) {
        Instant to = booking.to().isAfter(booking.from())
                ? booking.to()
                : booking.from().plus(Duration.ofMinutes(1));
        return new HoursRules.Work(booking.from(), to);
    }

    private TrainRoad road(Train train, List<TrainDraft.Leg> diverted) {
        Set<String> routes = Stream.concat(train.content().legs().stream(), diverted.stream())
                .map(TrainDraft.Leg::routeCode)
                .collect(Collectors.toSet());
        return new TrainRoad(train.content(), sections.ofRoutes(routes));
    }

    private List<Companion> companions(Train train, TrainRoad road, Crew crew, KnowledgePolicy policy) {
        TrainDraft content = train.content();
        return new CrewCompanions(
                        content,
                        road,
                        number -> crew.classes().computeIfAbsent(number, this::classCode),
                        crew::id,
                        accepted(train.id(), policy.regime()),
                        Set.copyOf(people.holding(Post.INSPECTOR, content.day())),
                        (person, subject) -> knowledge.isRecognised(person, subject, turnEnds(content)),
                        policy.regime().piloting())
                .all();
    }

    /** Returns by conductor driver whom they have accepted to conduct on a train by a case that is permitted. */
    private Map<Long, Set<Long>> accepted(long trainId, KnowledgePolicy.Regime regime) {
        return conducting.of(trainId).stream()
                .filter(one -> one.state() == Conducting.State.ACCEPTED && one.isPermitted(regime))
                .collect(Collectors.groupingBy(
                        Conducting::conductorId, Collectors.mapping(Conducting::driverId, Collectors.toSet())));
    }

    private Optional<String> classCode(String engineNumber) {
        return engines.current(engineNumber).map(engine -> engine.content().classCode());
    }

    /** Returns who holds a post on the day of the train and is not of its crew. */
    private List<Long> others(Crew crew, TrainDraft train, Post post) {
        Set<Long> own = crew.ids();
        return people.holding(post, train.day()).stream()
                .filter(person -> !own.contains(person))
                .toList();
    }

    LocalDate turnEnds(TrainDraft train) {
        return TurnDay.of(train, zone);
    }
}
