package org.crosshead.briefing;

import java.time.Clock;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.HandRow;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.TrainCopied;
import org.springframework.context.event.EventListener;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes a train's plan by hand. Each change prepares the briefing anew and is kept through every later one until it is withdrawn. */
@Service
public class PlansByHand {

    private static final String SUBJECT = "train";

    private final HandPointStore store;
    private final Briefings briefings;
    private final BriefingStore documents;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;

    PlansByHand(
            HandPointStore store,
            Briefings briefings,
            BriefingStore documents,
            Journal journal,
            CurrentActor actor,
            Clock clock) {
        this.store = store;
        this.briefings = briefings;
        this.documents = documents;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
    }

    /**
     * Keeps a change and prepares the train's briefing with it.
     *
     * @return the id of the briefing
     * @throws BriefingRefusedException if it would break a limit, or there is nothing at its place to be changed; then nothing is kept
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public long enter(long trainId, HandPointDraft draft) {
        long pointId = store.insert(trainId, draft, clock.instant(), actor.get().name());
        journal.write("plan.by-hand", SUBJECT, trainId, draft.kind() + ": " + draft.reason());
        long briefingId = briefings.prepare(trainId);
        HandRow row = row(briefingId, pointId);
        if (!row.applied()) {
            throw new BriefingRefusedException("hand-" + row.fate(), row.limit());
        }
        return briefingId;
    }

    /**
     * Ends a change and prepares the train's briefing without it.
     *
     * @return the id of the briefing
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public long withdraw(long trainId, long pointId) {
        if (!store.withdraw(trainId, pointId, clock.instant(), actor.get().name())) {
            throw new NotFoundException("change by hand", pointId);
        }
        journal.write("plan.by-hand-withdrawn", SUBJECT, trainId, "change " + pointId);
        return briefings.prepare(trainId);
    }

    /** A copy of a train takes along what was changed by hand in its plan, with the names and reasons of those who did. */
    @EventListener
    void takeAlong(TrainCopied copied) {
        for (HandPoint point : store.of(copied.fromId())) {
            store.insert(copied.toId(), point.draft(), point.enteredAt(), point.enteredBy());
            journal.write("plan.by-hand", SUBJECT, copied.toId(), "taken along from train " + copied.fromId());
        }
    }

    private HandRow row(long briefingId, long pointId) {
        BriefingDocument document = documents
                .find(briefingId)
                .map(StoredBriefing::document)
                .orElseThrow(() -> new NotFoundException("briefing", briefingId));
        return document.changedByHand().stream()
                .filter(row -> row.id() == pointId)
                .findFirst()
                .orElseThrow(() -> new BriefingRefusedException("what-if-missing"));
    }
}
