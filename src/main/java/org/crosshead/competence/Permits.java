package org.crosshead.competence;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.Engines;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.Trains;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says whether the crew of a train may take it, by the records, and enters what they have worked once it is confirmed. */
@Service
public class Permits {

    private final Trains trains;
    private final Knowledge knowledge;
    private final KnowledgePolicies policies;
    private final RouteSections sections;
    private final Engines engines;
    private final People people;
    private final Clock clock;
    private final ZoneId zone;

    Permits(
            Trains trains,
            Knowledge knowledge,
            KnowledgePolicies policies,
            RouteSections sections,
            Engines engines,
            People people,
            Clock clock,
            ZoneId zone) {
        this.trains = trains;
        this.knowledge = knowledge;
        this.policies = policies;
        this.sections = sections;
        this.engines = engines;
        this.people = people;
        this.clock = clock;
        this.zone = zone;
    }

    /** Returns the answer for a train as it is crewed now, for the day on which its turn ends. */
    public Permit of(long trainId) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
        CrewDuties duties = duties(train);
        LocalDate day = turnEnds(train.content());
        Instant now = clock.instant();
        List<PermitRules.Needs> needs = duties.needs();
        Map<Subject, Map<Long, Holding>> holdings = new HashMap<>();
        needs.stream()
                .flatMap(of -> of.subjects().stream())
                .distinct()
                .forEach(subject -> holdings.put(subject, knowledge.holders(subject, day, now)));
        int policyVersion = policies.on(day).version();
        return PermitRules.decide(day, policyVersion, needs, duties.companions(), duties.gaps(), holdings);
    }

    private CrewDuties duties(Train train) {
        return new CrewDuties(
                train.content(),
                sections.all(),
                engines,
                number -> people.byStaffNumber(number).map(Person::id).orElse(-1L),
                post -> others(train.content(), post));
    }

    /** Returns who holds a post on the day of the train and is not of its crew. */
    private List<Long> others(TrainDraft train, Post post) {
        List<String> crew =
                train.crew().stream().map(TrainDraft.CrewSlot::staffNumber).toList();
        return people.all().stream()
                .filter(person -> person.holds(post, train.day()) && !crew.contains(person.staffNumber()))
                .map(Person::id)
                .toList();
    }

    /** The day on which the last of the crew books off, or the train arrives where that is not laid down. */
    private LocalDate turnEnds(TrainDraft train) {
        Stream<Instant> ends = Stream.concat(
                train.crew().stream().map(TrainDraft.CrewSlot::bookOff).filter(Objects::nonNull),
                train.calls().stream().map(TrainDraft.Call::arrival).filter(Objects::nonNull));
        return ends.max(Instant::compareTo)
                .map(instant -> LocalDate.ofInstant(instant, zone))
                .orElse(train.day());
    }

    /**
     * Enters what the crew of a train have worked, once it has run: only a confirmed turn counts, for the sections actually run. Over what a
     * driver did not hold they are entered as conducted, and the conductor driver as such.
     *
     * @return how many entries were made
     * @throws ActRefusedException if the train has not run yet
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public int confirm(long trainId) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
        if (train.cancelled()) {
            throw new ActRefusedException("train-cancelled");
        }
        LocalDate day = turnEnds(train.content());
        if (day.isAfter(LocalDate.now(clock.withZone(zone)))) {
            throw new ActRefusedException("in-the-future");
        }
        List<Knowledge.Entry> entries = new ArrayList<>();
        for (Permit.Line line : of(trainId).lines()) {
            boolean alone = line.answer() != Answer.CONDUCTED;
            Subject subject = line.holding().subject();
            Long along = alone ? null : line.conductors().get(0);
            entries.add(new Knowledge.Entry(
                    line.personId(),
                    alone ? Kind.WORKED : Kind.WORKED_CONDUCTED,
                    subject,
                    day,
                    along,
                    null,
                    train.content().code()));
            if (along != null) {
                entries.add(new Knowledge.Entry(
                        along,
                        Kind.CONDUCTED,
                        subject,
                        day,
                        null,
                        null,
                        train.content().code()));
            }
        }
        int made = 0;
        for (Knowledge.Entry entry : entries) {
            if (knowledge.enteredAnew(entry)) {
                made++;
            }
        }
        return made;
    }
}
