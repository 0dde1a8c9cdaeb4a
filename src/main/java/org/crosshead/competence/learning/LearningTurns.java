package org.crosshead.competence.learning;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Circumstance;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.ExtraTurns;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgeChanged;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.competence.TurnDay;
import org.crosshead.competence.learning.LearningTurn.State;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.Trains;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Learning turns on real trains, told of by the teacher under whom they were; {@link LearningBookings} books them. */
@Service
public class LearningTurns implements ExtraTurns {

    private static final String SUBJECT = "person";

    private final LearningStore store;
    private final Trains trains;
    private final TrainDemands demands;
    private final Knowledge knowledge;
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
            Journal journal,
            ApplicationEventPublisher events,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.store = store;
        this.trains = trains;
        this.demands = demands;
        this.knowledge = knowledge;
        this.journal = journal;
        this.events = events;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    private boolean holds(long personId, Subject subject, LocalDate day) {
        return knowledge.mayTeach(personId, subject, day);
    }

    /** Returns what of a learner's plans the train runs over under a teacher who holds it. */
    List<Subject> subjects(Train train, long learnerId, long teacherId) {
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

    /**
     * What is known of a learning turn from its train.
     *
     * @param come whether it has come, so that it can be told of
     * @param subjects that can be told of: what of the learner's plans its train runs over
     */
    public record Known(boolean dark, boolean come, List<Subject> subjects) {

        public Known {
            subjects = List.copyOf(subjects);
        }
    }

    public Known known(LearningTurn turn) {
        Train train = train(turn.trainId());
        return new Known(
                train.content().dark(),
                !TurnDay.of(train.content(), zone).isAfter(today()),
                subjects(train, turn.learnerId(), turn.teacherId()));
    }

    @Override
    public List<CrewBooking> of(long personId, LocalDate firstDay, LocalDate lastDay) {
        return store.learned(personId, firstDay, lastDay).stream()
                .map(turn -> running(train(turn.trainId())))
                .toList();
    }

    /** The time for which whoever rides with a train is bound to it. */
    static CrewBooking running(Train train) {
        TrainDraft content = train.content();
        TrainDraft.Call first = content.calls().get(0);
        TrainDraft.Call last = content.calls().get(content.calls().size() - 1);
        if (first.departure() == null || last.arrival() == null) {
            throw new IllegalStateException("train " + train.id() + " has no times");
        }
        return new CrewBooking(train.id(), first.departure(), last.arrival());
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

    private Train train(long id) {
        return trains.find(id).orElseThrow(() -> new NotFoundException("train", id));
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }
}
