package org.crosshead.working;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.crew.People;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.Engines;
import org.crosshead.stock.Formations;
import org.crosshead.stock.WorkingPressures;
import org.crosshead.working.TrainRefusedException.Problem;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Trains on their days. Every change is a new revision; a cancelled train is kept. */
@Service
@Transactional(readOnly = true)
public class Trains {

    private static final String EDITORS = "hasAnyRole('INSPECTOR', 'MANAGER')";
    private static final String SUBJECT = "train";

    private final TrainStore store;
    private final PathRules pathRules;
    private final TrainRules.Known known;
    private final Bookings bookings;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    Trains(
            TrainStore store,
            Bookings bookings,
            PathRules pathRules,
            Engines engines,
            WorkingPressures pressures,
            Formations formations,
            People people,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ApplicationEventPublisher events) {
        this.events = events;
        this.store = store;
        this.bookings = bookings;
        this.pathRules = pathRules;
        this.known = new TrainRules.Known(
                code -> formations.current(code).isPresent(),
                number -> engines.current(number).isPresent(),
                pressures::psiOf,
                staffNumber -> people.byStaffNumber(staffNumber).isPresent(),
                (slot, day) -> people.byStaffNumber(slot.staffNumber())
                        .map(person -> person.mayTake(slot.role(), day))
                        .orElse(true));
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
    }

    /**
     * Stores a new train.
     *
     * @throws TrainRefusedException if anything in it can't be
     */
    @PreAuthorize(EDITORS)
    @Transactional
    public Train enter(TrainDraft draft) {
        refuseProblems(draft, null, List.of());
        long id = store.insertTrain(draft);
        return revise(id, draft, "train.entered", "entered");
    }

    /**
     * Stores the next revision of a train.
     *
     * @param version the version that was opened
     * @throws TrainRefusedException if anything in it can't be, or the reason is missing
     * @throws TrainChangedException if somebody else changed or cancelled the train meanwhile
     */
    @PreAuthorize(EDITORS)
    @Transactional
    public Train change(long id, long version, TrainDraft draft, String reason) {
        refuseProblems(draft, id, TrainRules.problemsOfReason(reason));
        if (!store.advance(id, version, draft)) {
            throw new TrainChangedException(draft.code());
        }
        return revise(id, draft, "train.changed", reason);
    }

    /**
     * Cancels a train. Its record stays, with a last revision of the same content that says why.
     *
     * @throws TrainRefusedException if the reason is missing
     * @throws TrainChangedException if somebody else changed or cancelled the train meanwhile
     */
    @PreAuthorize(EDITORS)
    @Transactional
    public void cancel(long id, long version, String reason) {
        List<Problem> problems = TrainRules.problemsOfReason(reason);
        if (!problems.isEmpty()) {
            throw new TrainRefusedException(problems);
        }
        TrainDraft content = store.current(id).orElseThrow().content();
        if (!store.cancel(id, version)) {
            throw new TrainChangedException(content.code());
        }
        revise(id, content, "train.cancelled", reason);
    }

    /**
     * Enters the same train on another day, at the same times by the railway's clock.
     *
     * @throws TrainRefusedException if a train of that code runs on that day already
     */
    @PreAuthorize(EDITORS)
    @Transactional
    public Train copy(long id, LocalDate day, DayShift shift) {
        TrainDraft content = store.current(id).orElseThrow().content();
        Train copy = enter(shift.to(day, content));
        events.publishEvent(new TrainCopied(id, copy.id()));
        return copy;
    }

    public Optional<Train> find(long id) {
        return store.current(id);
    }

    public Optional<Train> find(String code, LocalDate day) {
        return store.idOf(code, day).flatMap(store::current);
    }

    public List<Train> history(long id) {
        return store.history(id);
    }

    /** Returns the trains of these days, both included, by day and code. */
    public List<TrainSummary> between(LocalDate firstDay, LocalDate lastDay) {
        return running(firstDay, lastDay).stream().map(TrainSummary::of).toList();
    }

    /** Returns the trains of these days whole, both days included, in the order of days and codes. */
    public List<Train> running(LocalDate firstDay, LocalDate lastDay) {
        return store.between(firstDay, lastDay);
    }

    /** Returns for what a person is bound on the trains of these days, both included. */
    public List<CrewBooking> bookings(String staffNumber, LocalDate firstDay, LocalDate lastDay) {
        return bookings.of(staffNumber, firstDay, lastDay);
    }

    private Train revise(long id, TrainDraft draft, String entry, String reason) {
        Instant now = clock.instant();
        store.insertRevision(id, draft, now, actor.get().name(), reason);
        journal.write(entry, SUBJECT, id, draft.code() + " " + draft.day() + ": " + reason);
        events.publishEvent(new TrainRevised(id));
        return store.current(id).orElseThrow();
    }

    private void refuseProblems(TrainDraft draft, @Nullable Long id, List<Problem> found) {
        List<Problem> problems = new ArrayList<>(found);
        problems.addAll(TrainRules.problemsOf(draft, known));
        problems.addAll(pathRules.problemsOf(draft));
        if (draft.formationCode() == null && draft.kind() != TrainKind.LIGHT_ENGINE) {
            problems.add(new Problem("", -1, "formationCode", "formation-needed", List.of()));
        }
        Optional<Long> taken = store.idOf(draft.code(), draft.day());
        if (taken.isPresent() && !taken.get().equals(id)) {
            problems.add(new Problem("", -1, "code", "code-taken", List.of(draft.code(), draft.day())));
        }
        if (problems.isEmpty()) {
            bookings.lock();
            problems.addAll(bookings.problemsOf(draft, id));
        }
        if (!problems.isEmpty()) {
            throw new TrainRefusedException(problems);
        }
    }
}
