package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.crosshead.competence.Decision.Occasion;
import org.crosshead.competence.PermitRules.Asked;
import org.crosshead.competence.PermitRules.Declined;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonChanged;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.SectionChanged;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainRevised;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.context.event.EventListener;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Keeps the decisions on the crews of trains with all that they rested on: when a train is crewed or changed, when what its crew hold
 * changes before it has run, when they book on. What was decided stays as it was decided.
 */
@Service
public class Decisions {

    private static final int AHEAD_DAYS = 28;
    private static final int SOON_DAYS = 2;
    private static final int NOTE_MOST = 300;
    private static final String SUBJECT = "train";
    private static final Object MARKED = new Object();

    private final Trains trains;
    private final OwnTrains ownTrains;
    private final PermitQuestion question;
    private final DecisionStore store;
    private final People people;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;

    Decisions(
            Trains trains,
            OwnTrains ownTrains,
            PermitQuestion question,
            DecisionStore store,
            People people,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.question = question;
        this.store = store;
        this.people = people;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    /** Returns a train's decisions, the latest first. */
    public List<Decision> of(long trainId) {
        return store.of(trainId);
    }

    public Optional<Decision> latest(long trainId) {
        return store.latest(trainId);
    }

    /**
     * Decides and keeps the decision; unless somebody books on, one that rests on the same as the latest is not kept again.
     *
     * @return the decision that holds now
     * @throws AccessDeniedException if whoever acts may not see the train
     */
    @Transactional
    public Decision decide(long trainId, Occasion occasion) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException(SUBJECT, trainId));
        if (train.cancelled()) {
            throw new ActRefusedException("train-cancelled");
        }
        if (actor.get().accountId() != null && !ownTrains.isVisible(train)) {
            throw new AccessDeniedException("not of this crew");
        }
        keep(train, occasion);
        return store.latest(trainId).orElseThrow();
    }

    private void keep(Train train, Occasion occasion) {
        Asked asked = question.of(train);
        boolean same = occasion != Occasion.BOOKING_ON
                && store.latest(train.id())
                        .map(latest -> latest.kept().equals(new KeptQuestion(asked.kept())))
                        .orElse(false);
        if (!same) {
            Permit permit = PermitRules.decide(asked);
            String called = train.content().code() + " " + train.content().day() + ", revision " + train.revision();
            store.insert(train.id(), clock.instant(), actor.get().name(), occasion, called, asked, permit);
            journal.write("permit.decided", SUBJECT, train.id(), called + ": " + permit.answer());
        }
    }

    /**
     * Takes the word of one of a train's crew that they do not sign something of it, and decides anew.
     *
     * @throws ActRefusedException if whoever says it is not of the crew, or it is not asked of them
     */
    @Transactional
    public void decline(long trainId, Subject subject, String note) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException(SUBJECT, trainId));
        Long personId = actor.get().personId();
        boolean asked = personId != null
                && question.of(train).crew().stream()
                        .filter(needs -> personId.equals(needs.personId()))
                        .flatMap(needs -> needs.duties().stream())
                        .anyMatch(duty -> duty.subject().equals(subject));
        if (personId == null || !asked) {
            throw new ActRefusedException("not-of-crew");
        }
        if (note.length() > NOTE_MOST) {
            throw new ActRefusedException("too-long");
        }
        store.decline(trainId, new Declined(personId, subject), clock.instant(), note.strip());
        journal.write("permit.declined", SUBJECT, trainId, subject.code());
        keep(train, Occasion.DECLINED);
    }

    /** The train, and those that its crew, now and before, work beside it: their rest is another now. */
    @EventListener
    void crewed(TrainRevised revised) {
        mark(Set.of(revised.trainId()), Occasion.CREWED);
        Set<Long> beside = new LinkedHashSet<>();
        for (Train revision : trains.history(revised.trainId())) {
            LocalDate day = revision.content().day();
            revision.content().crew().stream()
                    .map(TrainDraft.CrewSlot::staffNumber)
                    .distinct()
                    .flatMap(number -> trains.bookings(number, day.minusDays(1), day.plusDays(1)).stream())
                    .map(CrewBooking::trainId)
                    .filter(id -> store.latest(id).isPresent())
                    .forEach(beside::add);
        }
        mark(beside, Occasion.CHANGED);
    }

    @EventListener
    void helped(TrainHelpChanged changed) {
        mark(Set.of(changed.trainId()), Occasion.CHANGED);
    }

    /** The trains that the person is to work, if they have been decided on. */
    @EventListener
    void learned(KnowledgeChanged changed) {
        theirsAgain(changed.personId());
    }

    /** The same: their posts may be others now. */
    @EventListener
    void changed(PersonChanged changed) {
        theirsAgain(changed.personId());
    }

    private void theirsAgain(long personId) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        Set<Long> theirs = new LinkedHashSet<>();
        people.find(personId)
                .map(Person::staffNumber)
                .ifPresent(number -> trains.bookings(number, today, today.plusDays(AHEAD_DAYS)).stream()
                        .map(CrewBooking::trainId)
                        .forEach(theirs::add));
        mark(theirs, Occasion.CHANGED);
    }

    /** The trains of today and the two days after that run over its route. */
    @EventListener
    void changed(SectionChanged changed) {
        mark(
                soon(train -> train.content().legs().stream()
                        .anyMatch(leg -> leg.routeCode().equals(changed.routeCode()))),
                Occasion.CHANGED);
    }

    /** The trains of today and the two days after: which engine they have is asked when they are decided on. */
    @EventListener
    void changed(ClassGuideChanged changed) {
        mark(soon(train -> true), Occasion.CHANGED);
    }

    /** The trains of today and the two days after: the rules may be others now. */
    @EventListener
    void approved(PolicyApproved approved) {
        mark(soon(train -> true), Occasion.CHANGED);
    }

    private Set<Long> soon(Predicate<Train> concerned) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return trains.between(today, today.plusDays(SOON_DAYS)).stream()
                .map(TrainSummary::id)
                .map(trains::find)
                .flatMap(Optional::stream)
                .filter(concerned)
                .map(Train::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Decides once at the end of the transaction, however often something changes in it. */
    private void mark(Set<Long> trainIds, Occasion occasion) {
        if (trainIds.isEmpty()) {
            return;
        }
        if (!TransactionSynchronizationManager.isSynchronizationActive()) {
            trainIds.forEach(id -> again(id, occasion));
            return;
        }
        Marked marked = (Marked) TransactionSynchronizationManager.getResource(MARKED);
        if (marked == null) {
            marked = new Marked();
            TransactionSynchronizationManager.bindResource(MARKED, marked);
            TransactionSynchronizationManager.registerSynchronization(marked);
        }
        for (long id : trainIds) {
            marked.occasions.putIfAbsent(id, occasion);
        }
    }

    private void again(long trainId, Occasion occasion) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException(SUBJECT, trainId));
        boolean crewed = !train.content().crew().isEmpty();
        if (crewed && !train.cancelled()) {
            keep(train, occasion);
        }
    }

    /** Trains to be decided on before this transaction commits. */
    private final class Marked implements TransactionSynchronization {

        /** By train, why it is decided on: what came first. */
        private final Map<Long, Occasion> occasions = new LinkedHashMap<>();

        @Override
        public void beforeCommit(boolean readOnly) {
            occasions.forEach(Decisions.this::again);
        }

        @Override
        public void afterCompletion(int status) {
            TransactionSynchronizationManager.unbindResourceIfPossible(MARKED);
        }
    }
}
