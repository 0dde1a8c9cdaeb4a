package org.crosshead.competence.learning;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.ClassGuide;
import org.crosshead.competence.ClassGuides;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.LaidDown;
import org.crosshead.competence.Learned;
import org.crosshead.competence.Subject;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Plans of learners: what they learn, how far they have come, and what comes next. */
@Service
public class LearningPlans {

    private static final String SUBJECT = "person";

    private final LearningStore store;
    private final Knowledge knowledge;
    private final LaidDown laidDown;
    private final RouteSections sections;
    private final ClassGuides guides;
    private final People people;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;

    LearningPlans(
            LearningStore store,
            Knowledge knowledge,
            LaidDown laidDown,
            RouteSections sections,
            ClassGuides guides,
            People people,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.store = store;
        this.knowledge = knowledge;
        this.laidDown = laidDown;
        this.sections = sections;
        this.guides = guides;
        this.people = people;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    /** What comes next for a learner. */
    public enum Step {
        /** Trips are missing that are laid down. */
        TRIPS,
        /** They say themselves that they are ready. */
        DECLARE,
        /** An assessor asks and rides with them. */
        ASSESS,
        /** A manager authorises. */
        AUTHORISE,
        /** They hold it: the plan can be closed. */
        HELD,
        /** Something stands in the way: the state says what. */
        BARRED
    }

    /** A plan with how far it has come. */
    public record Progress(
            LearningPlan plan,
            Holding.State state,
            Learned learned,
            Step step,
            @Nullable Long teacherId) {}

    /** Returns the open plans that whoever is logged in may see: their own, those of whom they teach it, or all. */
    public List<Progress> visible(boolean all) {
        Long self = actor.get().personId();
        return store.open().stream()
                .map(this::progress)
                .filter(one -> all
                        || (self != null
                                && (self.equals(one.plan().personId()) || Objects.equals(self, one.teacherId()))))
                .toList();
    }

    public Progress progress(long id) {
        return progress(store.plan(id).orElseThrow(() -> new NotFoundException("plan", id)));
    }

    private Progress progress(LearningPlan plan) {
        LocalDate today = today();
        Holding holding = knowledge.holding(plan.personId(), plan.subject(), today, clock.instant());
        Learned learned = knowledge.learned(plan.personId(), plan.subject(), today);
        return new Progress(plan, holding.state(), learned, step(holding, learned), teacher(plan.subject()));
    }

    static Step step(Holding holding, Learned learned) {
        return switch (holding.state()) {
            case HELD, DUE -> Step.HELD;
            case ASSESSED -> Step.AUTHORISE;
            case DECLARED -> Step.ASSESS;
            case NOT_HELD, LEARNING, LAPSED, HANDED_BACK, LEARN_ANEW, WITHDRAWN ->
                learned.isEnough() && holding.state() != Holding.State.LEARN_ANEW ? Step.DECLARE : Step.TRIPS;
            case SUSPENDED, UNFIT, CLOSED -> Step.BARRED;
        };
    }

    /**
     * What is ahead of somebody before they hold something, whether they learn it by a plan or not.
     *
     * @param trips that are still to be made
     */
    public record Ahead(Subject subject, Holding.State state, Step step, int trips) {}

    public Ahead ahead(long personId, Subject subject) {
        LocalDate today = today();
        Holding holding = knowledge.holding(personId, subject, today, clock.instant());
        Learned learned = knowledge.learned(personId, subject, today);
        Step step = step(holding, learned);
        int trips = step == Step.TRIPS
                ? Math.max(1, learned.needs().trips() - learned.had().trips())
                : 0;
        return new Ahead(subject, holding.state(), step, trips);
    }

    private @Nullable Long teacher(Subject subject) {
        return subject.kind() == Subject.Kind.SECTION
                ? sections.find(subject.code()).map(RouteSection::teacherId).orElse(null)
                : guides.find(subject.code()).map(ClassGuide::teacherId).orElse(null);
    }

    /**
     * Opens a plan.
     *
     * @throws ActRefusedException if it cannot be learned now, nobody is named who teaches it, or there is a plan already
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public void open(String staffNumber, Subject subject, @Nullable LocalDate until) {
        Person person = people.byStaffNumber(staffNumber).orElseThrow(() -> new ActRefusedException("not-offered"));
        store.lock(person.id());
        LocalDate today = today();
        if (subject.kind() == Subject.Kind.PERSON) {
            throw new ActRefusedException("other-subject");
        }
        if (!laidDown.isOpen(subject, today)) {
            throw new ActRefusedException("not-open");
        }
        if (teacher(subject) == null) {
            throw new ActRefusedException("no-teacher");
        }
        if (until != null && until.isBefore(today)) {
            throw new ActRefusedException("plan-past");
        }
        if (knowledge.holding(person.id(), subject, today, clock.instant()).counts()) {
            throw new ActRefusedException("held-already");
        }
        boolean there =
                store.open(person.id()).stream().anyMatch(plan -> plan.subject().equals(subject));
        if (there) {
            throw new ActRefusedException("plan-already");
        }
        store.insert(
                new LearningPlan(0, person.id(), subject, today, actor.get().name(), until, null));
        journal.write("learning.opened", SUBJECT, person.id(), subject.code());
    }

    /** Says whether a road or class can be learned now: it is open, and somebody is named who teaches it. */
    public boolean isTaught(Subject subject) {
        return laidDown.isOpen(subject, today()) && teacher(subject) != null;
    }

    /** Opens a plan for somebody who has taken a turn on which they begin, where it can be learned now and there is none. */
    @Transactional
    public void begin(long personId, Subject subject) {
        boolean there =
                store.open(personId).stream().anyMatch(plan -> plan.subject().equals(subject));
        if (!there && isTaught(subject)) {
            store.insert(
                    new LearningPlan(0, personId, subject, today(), actor.get().name(), null, null));
            journal.write("learning.opened", SUBJECT, personId, subject.code());
        }
    }

    /** Closes a plan. */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public void close(long id) {
        LearningPlan plan = store.plan(id).orElseThrow(() -> new NotFoundException("plan", id));
        if (!store.close(id, today())) {
            throw new ActRefusedException("plan-closed");
        }
        journal.write(
                "learning.closed", SUBJECT, plan.personId(), plan.subject().code());
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }
}
