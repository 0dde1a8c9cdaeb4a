package org.crosshead.competence.learning;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Circumstance;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.ExtraTurns;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgeChanged;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.competence.TurnDay;
import org.crosshead.competence.learning.LearningTurn.State;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Learning turns on real trains: booked by the office, told of by the teacher under whom they were. */
@Service
public class LearningTurns implements ExtraTurns {

    private static final int AHEAD_DAYS = 56;
    private static final int OFFERED = 12;
    private static final String SUBJECT = "person";

    private final LearningStore store;
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

    LearningTurns(
            LearningStore store,
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
                                subjects(train, learner.id(), teacher))))
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
                .filter(teacher -> holds(teacher, subject, day))
                .toList();
    }

    private boolean holds(long personId, Subject subject, LocalDate day) {
        return knowledge.mayTeach(personId, subject, day);
    }

    /** Returns what of a learner's plans the train runs over under a teacher who holds it. */
    private List<Subject> subjects(Train train, long learnerId, long teacherId) {
        LocalDate day = TurnDay.of(train.content(), zone);
        List<Subject> planned =
                store.open(learnerId).stream().map(LearningPlan::subject).toList();
        return demands.of(train).stream()
                .filter(demand -> demand.personId() == teacherId)
                .flatMap(demand -> demand.subjects().stream())
                .distinct()
                .filter(planned::contains)
                .filter(subject -> holds(teacherId, subject, day))
                .toList();
    }

    /** Returns what can be told of in a learning turn: what of the learner's plans its train runs over. */
    public List<Subject> subjects(LearningTurn turn) {
        return subjects(train(turn.trainId()), turn.learnerId(), turn.teacherId());
    }

    public boolean isDark(LearningTurn turn) {
        return train(turn.trainId()).content().dark();
    }

    /** Says whether a turn has come, so that it can be told of. */
    public boolean hasCome(LearningTurn turn) {
        return !TurnDay.of(train(turn.trainId()).content(), zone).isAfter(today());
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
        if (subjects(train, learner.id(), teacherId).isEmpty()) {
            return Optional.of("plan-not-on-train");
        }
        List<CrewBooking> booked = new ArrayList<>(trains.bookings(
                learner.staffNumber(),
                day.minusDays(TrainDemands.AROUND_DAYS),
                day.plusDays(TrainDemands.AROUND_DAYS)));
        booked.addAll(
                of(learner.id(), day.minusDays(TrainDemands.AROUND_DAYS), day.plusDays(TrainDemands.AROUND_DAYS)));
        boolean fits = demands.fits(running(train), booked, policies.on(day).hours());
        return fits ? Optional.empty() : Optional.of("turn-hours");
    }

    @Override
    public List<CrewBooking> of(long personId, LocalDate firstDay, LocalDate lastDay) {
        return store.learned(personId, firstDay, lastDay).stream()
                .map(turn -> running(train(turn.trainId())))
                .toList();
    }

    /** The time for which whoever rides with a train is bound to it. */
    private static CrewBooking running(Train train) {
        TrainDraft content = train.content();
        TrainDraft.Call first = content.calls().get(0);
        TrainDraft.Call last = content.calls().get(content.calls().size() - 1);
        if (first.departure() == null || last.arrival() == null) {
            throw new IllegalStateException("train " + train.id() + " has no times");
        }
        return new CrewBooking(train.id(), first.departure(), last.arrival());
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
        if (subjects(train, learnerId, teacherId).isEmpty()) {
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

    /**
     * What a teacher tells of a learning turn.
     *
     * @param subjects what was run over
     * @param drove whether the learner was at the controls
     */
    public record Telling(Set<Subject> subjects, boolean drove, boolean dark, boolean badWeather, String note) {

        public Telling {
            subjects = Set.copyOf(subjects);
        }
    }

    /**
     * Enters what a teacher tells of a learning turn.
     *
     * @throws ActRefusedException if whoever tells is not its teacher, it has not come, it is told already, or the train did not run over it
     */
    @Transactional
    public void tell(long turnId, Telling telling) {
        LearningTurn turn = own(turnId);
        Train train = train(turn.trainId());
        LocalDate day = TurnDay.of(train.content(), zone);
        if (train.cancelled()) {
            throw new ActRefusedException("train-cancelled");
        }
        if (day.isAfter(today())) {
            throw new ActRefusedException("in-the-future");
        }
        List<Subject> possible = subjects(train, turn.learnerId(), turn.teacherId());
        if (telling.subjects().isEmpty() || !possible.containsAll(telling.subjects())) {
            throw new ActRefusedException("train-not-over");
        }
        ended(turn, State.TOLD);
        Set<Circumstance> circumstances = circumstances(train, telling);
        for (Subject subject : telling.subjects()) {
            knowledge.enterLesson(new Knowledge.Entry(
                    turn.learnerId(),
                    telling.drove() ? Kind.LEARNED : Kind.RODE,
                    subject,
                    day,
                    turn.teacherId(),
                    null,
                    null,
                    null,
                    (train.content().code() + " " + telling.note()).strip(),
                    circumstances));
        }
    }

    private static Set<Circumstance> circumstances(Train train, Telling telling) {
        Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
        if (telling.dark()) {
            circumstances.add(Circumstance.DARK);
        }
        if (telling.badWeather()) {
            circumstances.add(Circumstance.BAD_WEATHER);
        }
        if (train.content().legs().stream().allMatch(TrainDraft.Leg::tenderFirst)) {
            circumstances.add(Circumstance.TENDER_FIRST);
        }
        return circumstances;
    }

    private LearningTurn own(long turnId) {
        LearningTurn turn = store.turn(turnId).orElseThrow(() -> new NotFoundException("learning turn", turnId));
        Long self = actor.get().personId();
        if (self == null || self != turn.teacherId()) {
            throw new ActRefusedException("not-their-lesson");
        }
        return turn;
    }

    private void ended(LearningTurn turn, State state) {
        if (!store.end(turn.id(), state, clock.instant())) {
            throw new ActRefusedException("turn-told");
        }
        journal.write(
                "learning." + (state == State.TOLD ? "told" : "not-run"), SUBJECT, turn.learnerId(), turn.trainCode());
    }

    /** Enters that a learning turn did not take place: by its teacher, or by the office. */
    @Transactional
    public void notRun(long turnId) {
        Set<String> posts = actor.get().posts();
        boolean office = Stream.of("MANAGER", "INSPECTOR").anyMatch(posts::contains);
        LearningTurn turn = office
                ? store.turn(turnId).orElseThrow(() -> new NotFoundException("learning turn", turnId))
                : own(turnId);
        ended(turn, State.NOT_RUN);
        events.publishEvent(new KnowledgeChanged(turn.learnerId()));
    }

    /** Returns the booked turns that whoever is logged in learns or teaches in, or all. */
    public List<LearningTurn> visible(boolean all) {
        Long self = actor.get().personId();
        if (all) {
            return store.booked();
        }
        return self == null ? List.of() : store.booked(self);
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
