package org.crosshead.competence;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.crosshead.competence.Conducting.Case;
import org.crosshead.competence.Conducting.State;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Asks people to go along as conductor drivers, and takes their own answer: nobody conducts who has not said that they do. */
@Service
public class ConductorDrivers {

    private static final String SUBJECT = "train";

    private final ConductingStore store;
    private final Permits permits;
    private final PermitQuestion question;
    private final KnowledgePolicies policies;
    private final Trains trains;
    private final Journal journal;
    private final CurrentActor actor;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ConductorDrivers(
            ConductingStore store,
            Permits permits,
            PermitQuestion question,
            KnowledgePolicies policies,
            Trains trains,
            Journal journal,
            CurrentActor actor,
            ApplicationEventPublisher events,
            Clock clock) {
        this.store = store;
        this.permits = permits;
        this.question = question;
        this.policies = policies;
        this.trains = trains;
        this.journal = journal;
        this.actor = actor;
        this.events = events;
        this.clock = clock;
    }

    public List<Conducting> of(long trainId) {
        return store.of(trainId);
    }

    /** Returns what is asked of whoever is logged in and not answered yet. */
    public List<Conducting> own() {
        Long personId = actor.get().personId();
        return personId == null ? List.of() : store.asked(personId);
    }

    /**
     * Asks somebody of the train's crew to conduct a driver of it.
     *
     * @param permitted by which case it may be
     * @param informedAt when the keeper of the line was told; null where they were not
     * @throws ActRefusedException if they do not go along over it, do not hold it, or the law permits it by no such case
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public void ask(long trainId, long driverId, long conductorId, Case permitted, @Nullable Instant informedAt) {
        var train = trains.find(trainId).orElseThrow(() -> new NotFoundException(SUBJECT, trainId));
        if (train.cancelled()) {
            throw new ActRefusedException("train-cancelled");
        }
        Conducting asked = new Conducting(
                0,
                trainId,
                driverId,
                conductorId,
                permitted,
                informedAt,
                actor.get().name(),
                State.ASKED);
        KnowledgePolicy policy = policies.on(question.turnEnds(train.content()));
        if (!asked.isPermitted(policy.regime())) {
            throw new ActRefusedException("conducting-case");
        }
        if (informedAt != null && informedAt.isAfter(clock.instant())) {
            throw new ActRefusedException("conducting-told");
        }
        boolean could = permits.of(trainId).lines().stream()
                .filter(line -> line.personId() == driverId && line.isToBeAccepted())
                .anyMatch(line -> line.conductors().contains(conductorId));
        if (!could) {
            throw new ActRefusedException("conducting-not-aboard");
        }
        store.put(asked, clock.instant());
        journal.write("conducting.asked", SUBJECT, trainId, "person " + conductorId + ", " + permitted);
        events.publishEvent(new TrainHelpChanged(trainId));
    }

    /**
     * Takes a conductor driver's own answer.
     *
     * @throws ActRefusedException if it was not asked of whoever answers
     */
    @Transactional
    public void answer(long id, boolean yes) {
        CurrentActor.Actor acting = actor.get();
        Conducting asked = store.find(id).orElseThrow(() -> new NotFoundException("conducting", id));
        Long personId = acting.accountId() == null ? Long.valueOf(asked.conductorId()) : acting.personId();
        State state = yes ? State.ACCEPTED : State.DECLINED;
        if (personId == null || !store.answer(id, personId, state, clock.instant())) {
            throw new ActRefusedException("not-theirs");
        }
        journal.write(
                yes ? "conducting.accepted" : "conducting.declined", SUBJECT, asked.trainId(), "person " + personId);
        events.publishEvent(new TrainHelpChanged(asked.trainId()));
    }
}
