package org.crosshead.competence.learning;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgeChanged;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.competence.TurnDay;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts learners on real trains: by the office, or where somebody takes a turn that was proposed to them. */
@Service
public class LearningBookings {

    private static final int AHEAD_DAYS = 56;
    private static final int OFFERED = 12;
    private static final String SUBJECT = "person";

    private final LearningStore store;
    private final LearningTurns turns;
    private final Trains trains;
    private final TrainDemands demands;
    private final Knowledge knowledge;
    private final KnowledgePolicies policies;
    private final People people;
    private final Journal journal;
    private final ApplicationEventPublisher events;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;

    LearningBookings(
            LearningStore store,
            LearningTurns turns,
            Trains trains,
            TrainDemands demands,
            Knowledge knowledge,
            KnowledgePolicies policies,
            People people,
            Journal journal,
            ApplicationEventPublisher events,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.store = store;
        this.turns = turns;
        this.trains = trains;
        this.demands = demands;
        this.knowledge = knowledge;
        this.policies = policies;
        this.people = people;
        this.journal = journal;
        this.events = events;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * A train on which somebody could learn.
     *
     * @param teacherId its driver, who holds what is learned
     * @param subjects of the learner's plans that it runs over
     */
    public record Chance(TrainSummary train, boolean dark, long teacherId, List<Subject> subjects) {

        public Chance {
            subjects = List.copyOf(subjects);
        }
    }

    /** Returns the next trains on which a learner could go, for a plan of theirs; those that hours or another learner forbid left out. */
    public List<Chance> chances(LearningPlan plan) {
        LocalDate today = today();
        Person learner = person(plan.personId());
        Function<Train, List<TrainDemands.Demand>> asks = demands.ofMany();
        return trains.running(today, today.plusDays(AHEAD_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .flatMap(train -> teachers(train, asks.apply(train), plan.subject(), learner).stream()
                        .filter(teacher -> refusal(train, learner, teacher).isEmpty())
                        .limit(1)
                        .map(teacher -> new Chance(
                                TrainSummary.of(train),
                                train.content().dark(),
                                teacher,
                                turns.subjects(train, learner.id(), teacher))))
                .limit(OFFERED)
                .toList();
    }

    /** Returns who of a train's crew could teach a subject that it runs over: drivers of it who hold it on its day. */
    private List<Long> teachers(Train train, List<TrainDemands.Demand> asked, Subject subject, Person learner) {
        LocalDate day = TurnDay.of(train.content(), zone);
        return asked.stream()
                .filter(demand -> demand.subjects().contains(subject) && demand.personId() != learner.id())
                .filter(TrainDemands.Demand::isDriver)
                .map(TrainDemands.Demand::personId)
                .filter(teacher -> knowledge.mayTeach(teacher, subject, day))
                .toList();
    }

    private Optional<String> refusal(Train train, Person learner, long teacherId) {
        if (train.cancelled()) {
            return Optional.of("train-cancelled");
        }
        LocalDate day = train.content().day();
        if (day.isBefore(today())) {
            return Optional.of("train-past");
        }
        List<LearningTurn> aboard = store.onTrain(train.id());
        if (aboard.stream().anyMatch(turn -> turn.learnerId() == learner.id())) {
            return Optional.of("turn-already");
        }
        if (aboard.stream().anyMatch(turn -> turn.teacherId() == teacherId)) {
            return Optional.of("teacher-has-learner");
        }
        if (turns.subjects(train, learner.id(), teacherId).isEmpty()) {
            return Optional.of("plan-not-on-train");
        }
        List<CrewBooking> booked = new ArrayList<>(trains.bookings(
                learner.staffNumber(),
                day.minusDays(TrainDemands.AROUND_DAYS),
                day.plusDays(TrainDemands.AROUND_DAYS)));
        booked.addAll(turns.of(
                learner.id(), day.minusDays(TrainDemands.AROUND_DAYS), day.plusDays(TrainDemands.AROUND_DAYS)));
        boolean fits = demands.fits(
                LearningTurns.running(train), booked, policies.on(day).hours());
        return fits ? Optional.empty() : Optional.of("turn-hours");
    }

    /**
     * Puts a learner on a train beside a driver of it.
     *
     * @throws ActRefusedException if the train does not run over what they learn, or hours or another learner forbid it
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public void book(long planId, long trainId, long teacherId) {
        LearningPlan plan = store.plan(planId).orElseThrow(() -> new NotFoundException("plan", planId));
        if (plan.closedOn() != null) {
            throw new ActRefusedException("plan-closed");
        }
        lock(plan.personId(), teacherId);
        Person learner = person(plan.personId());
        Train train = train(trainId);
        if (!teachers(train, demands.of(train), plan.subject(), learner).contains(teacherId)) {
            throw new ActRefusedException("plan-not-on-train");
        }
        put(train, learner, teacherId);
    }

    /**
     * Books somebody who has taken a turn that was proposed to them, where they learn something on it.
     *
     * @throws ActRefusedException if hours or another learner forbid it by now
     */
    @Transactional
    public void takeUp(long trainId, long learnerId, long teacherId) {
        lock(learnerId, teacherId);
        Train train = train(trainId);
        if (turns.subjects(train, learnerId, teacherId).isEmpty()) {
            return;
        }
        put(train, person(learnerId), teacherId);
    }

    private void put(Train train, Person learner, long teacherId) {
        refusal(train, learner, teacherId).ifPresent(code -> {
            throw new ActRefusedException(code);
        });
        store.book(
                train.id(),
                learner.id(),
                teacherId,
                clock.instant(),
                actor.get().name());
        journal.write(
                "learning.booked",
                SUBJECT,
                learner.id(),
                train.content().code() + " " + train.content().day());
        events.publishEvent(new KnowledgeChanged(learner.id()));
    }

    /** Lets nobody else book these two until the transaction ends; always in the same order. */
    private void lock(long learnerId, long teacherId) {
        store.lock(Math.min(learnerId, teacherId));
        store.lock(Math.max(learnerId, teacherId));
    }

    private Person person(long id) {
        return people.find(id).orElseThrow(() -> new NotFoundException(SUBJECT, String.valueOf(id)));
    }

    private Train train(long id) {
        return trains.find(id).orElseThrow(() -> new NotFoundException("train", id));
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }
}
