package org.crosshead.competence.refresh;

import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningBookings;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.crosshead.crew.Group;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.working.Train;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Plans for the coming eight weeks who should drive which train beside its driver, so that what people hold does not lapse and learners
 * get their trips; in the background, one plan at a time. Nothing is booked by it: it is put to people as proposals, which they take or leave.
 */
@Service
public class RefreshPlans {

    private static final int WEEK_DAYS = 7;
    private static final double SECONDS = 30;
    private static final Logger LOG = LoggerFactory.getLogger(RefreshPlans.class);

    private final Trains trains;
    private final LearningBookings bookings;
    private final LearningPlans learning;
    private final RefreshProblems problems;
    private final ProposalStore store;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;
    private final ExecutorService worker = Executors.newSingleThreadExecutor();
    private volatile Standing standing = new Standing(Phase.NONE, null);

    RefreshPlans(
            Trains trains,
            LearningBookings bookings,
            LearningPlans learning,
            RefreshProblems problems,
            ProposalStore store,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.trains = trains;
        this.bookings = bookings;
        this.learning = learning;
        this.problems = problems;
        this.store = store;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    /** How far the planning has come. */
    public enum Phase {
        NONE,
        READS,
        SOLVES,
        READY,
        FAILED
    }

    /** The latest plan, where there is one. */
    public record Standing(Phase phase, @Nullable Result result) {

        public boolean works() {
            return phase == Phase.READS || phase == Phase.SOLVES;
        }
    }

    /** Why a need is not met. */
    public enum Reason {
        /** No train runs over it in time whose driver holds it and on which the person's hours allow a turn. */
        NO_TRAIN,
        /** Those trains are taken, or the limits on people and teachers are reached. */
        NO_ROOM
    }

    /**
     * A need that stays open.
     *
     * @param lacks turns that it lacks
     */
    public record Open(Need need, int lacks, Reason reason) {}

    /**
     * A plan with what it was made for.
     *
     * @param group whose knowledge and trips are planned
     * @param unmet what stays thin because nobody can begin with it
     */
    public record Result(
            LocalDate day,
            Group group,
            RefreshProblem problem,
            RefreshPlan plan,
            Map<Long, TrainSummary> trains,
            List<Open> open,
            List<ThinCover.Unmet> unmet) {}

    public Standing standing() {
        return standing;
    }

    /** Begins a plan for a group of people from what is known now, unless one is in the making. */
    @PreAuthorize("hasRole('MANAGER')")
    public synchronized void begin(Group group) {
        if (!standing.works()) {
            standing = new Standing(Phase.READS, null);
            worker.execute(new DelegatingSecurityContextRunnable(() -> make(group)));
        }
    }

    private void make(Group group) {
        try {
            LocalDate today = LocalDate.now(clock.withZone(zone));
            List<Train> coming = coming(today);
            RefreshProblems.Read read = problems.of(today, group, coming);
            RefreshProblem problem = read.problem();
            standing = new Standing(Phase.SOLVES, null);
            RefreshPlan plan = RefreshSolver.plan(problem, SECONDS);
            standing = new Standing(
                    Phase.READY,
                    new Result(today, group, problem, plan, named(coming), open(problem, plan), read.unmet()));
        } catch (RuntimeException | Error ex) {
            LOG.error("The plan of refreshing turns could not be made", ex);
            standing = new Standing(Phase.FAILED, null);
        }
    }

    private static Map<Long, TrainSummary> named(List<Train> trains) {
        return trains.stream().map(TrainSummary::of).collect(Collectors.toMap(TrainSummary::id, train -> train));
    }

    private List<Train> coming(LocalDate today) {
        return trains.running(today.plusDays(1), today.plusDays((long) RefreshProblems.WEEKS * WEEK_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .toList();
    }

    static List<Open> open(RefreshProblem problem, RefreshPlan plan) {
        return plan.missed().stream()
                .distinct()
                .map(need -> new Open(
                        problem.needs().get(need),
                        Collections.frequency(plan.missed(), need),
                        problem.options().stream()
                                        .anyMatch(option -> option.needs().contains(need))
                                ? Reason.NO_ROOM
                                : Reason.NO_TRAIN))
                .toList();
    }

    /**
     * Puts the turns of the latest plan to people as proposals.
     *
     * @return how many are new
     * @throws ActRefusedException if there is no plan
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public int propose() {
        Result result = standing.result();
        if (result == null) {
            throw new ActRefusedException("no-plan");
        }
        int made = 0;
        for (int index : result.plan().chosen()) {
            Option option = result.problem().options().get(index);
            List<Subject> begins = option.needs().stream()
                    .map(result.problem().needs()::get)
                    .filter(need -> need.aim() == RefreshProblem.Aim.COVER)
                    .map(Need::subject)
                    .distinct()
                    .toList();
            String subjects = option.needs().stream()
                    .map(need -> result.problem().needs().get(need).subject().code())
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (store.insert(
                    option, subjects, begins, clock.instant(), actor.get().name())) {
                journal.write("refresh.proposed", "person", option.personId(), subjects);
                made++;
            }
        }
        return made;
    }

    public List<Proposal> proposals() {
        return store.all();
    }

    /** Returns what is proposed to whoever is logged in. */
    public List<Proposal> own() {
        Long personId = actor.get().personId();
        return personId == null ? List.of() : store.of(personId);
    }

    /**
     * Takes a person's own answer, once. Who takes a turn on which they begin with something gets a plan of learning; whoever learns something on
     * the train is booked on it under its driver.
     *
     * @throws ActRefusedException if it was not proposed to whoever answers, or is answered already
     */
    @Transactional
    public void answer(long id, boolean yes) {
        Long personId = actor.get().personId();
        Proposal.State state = yes ? Proposal.State.ACCEPTED : Proposal.State.DECLINED;
        if (yes && personId != null) {
            store.of(personId).stream()
                    .filter(one -> one.id() == id && one.state() == Proposal.State.PROPOSED)
                    .forEach(one -> {
                        one.begins().forEach(subject -> learning.begin(personId, subject));
                        bookings.takeUp(one.trainId(), personId, one.teacherId());
                    });
        }
        if (personId == null || !store.answer(id, personId, state)) {
            throw new ActRefusedException("not-theirs");
        }
        journal.write(
                "refresh." + state.name().toLowerCase(java.util.Locale.ROOT), "person", personId, "proposal " + id);
    }

    @PreDestroy
    void stop() {
        worker.shutdownNow();
    }
}
