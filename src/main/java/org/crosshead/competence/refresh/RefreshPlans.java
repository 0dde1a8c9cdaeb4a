package org.crosshead.competence.refresh;

import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.KnowledgePolicy;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.competence.refresh.RefreshProblem.Limits;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
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
 * Plans for the coming eight weeks who should drive which train beside its driver, so that what people hold does not lapse; in the
 * background, one plan at a time. Nothing is booked by it: it is put to people as proposals, which they take or leave.
 */
@Service
public class RefreshPlans {

    static final int WEEKS = 8;
    private static final int WEEK_DAYS = 7;
    private static final int FORTNIGHT_DAYS = 15;
    private static final double SECONDS = 30;
    private static final Logger LOG = LoggerFactory.getLogger(RefreshPlans.class);

    private final Trains trains;
    private final TrainDemands demands;
    private final Knowledge knowledge;
    private final KnowledgePolicies policies;
    private final People people;
    private final LearningPlans learning;
    private final LearningTurns turns;
    private final ProposalStore store;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;
    private final ExecutorService worker = Executors.newSingleThreadExecutor();
    private volatile Standing standing = new Standing(Phase.NONE, null);

    RefreshPlans(
            Trains trains,
            TrainDemands demands,
            Knowledge knowledge,
            KnowledgePolicies policies,
            People people,
            LearningPlans learning,
            LearningTurns turns,
            ProposalStore store,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.trains = trains;
        this.demands = demands;
        this.knowledge = knowledge;
        this.policies = policies;
        this.people = people;
        this.learning = learning;
        this.turns = turns;
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

    /** A plan with what it was made for. */
    public record Result(
            LocalDate day, RefreshProblem problem, RefreshPlan plan, Map<Long, TrainSummary> trains, List<Open> open) {}

    public Standing standing() {
        return standing;
    }

    /** Begins a plan from what is known now, unless one is in the making. */
    @PreAuthorize("hasRole('MANAGER')")
    public synchronized void begin() {
        if (!standing.works()) {
            standing = new Standing(Phase.READS, null);
            worker.execute(new DelegatingSecurityContextRunnable(this::make));
        }
    }

    private void make() {
        try {
            LocalDate today = LocalDate.now(clock.withZone(zone));
            Map<Long, TrainSummary> coming = coming(today);
            RefreshProblem problem = problem(today, coming);
            standing = new Standing(Phase.SOLVES, null);
            RefreshPlan plan = RefreshSolver.plan(problem, SECONDS);
            standing = new Standing(Phase.READY, new Result(today, problem, plan, coming, open(problem, plan)));
        } catch (RuntimeException | Error ex) {
            LOG.error("The plan of refreshing turns could not be made", ex);
            standing = new Standing(Phase.FAILED, null);
        }
    }

    private Map<Long, TrainSummary> coming(LocalDate today) {
        return trains.between(today.plusDays(1), today.plusDays((long) WEEKS * WEEK_DAYS)).stream()
                .filter(train -> !train.cancelled())
                .collect(Collectors.toMap(TrainSummary::id, train -> train));
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

    /** A train to come, with its driver who holds all of it that is told. */
    private record Turn(Train train, Instant from, Instant to, long driverId, List<Subject> subjects) {}

    RefreshProblem problem(LocalDate today, Map<Long, TrainSummary> coming) {
        LocalDate end = today.plusDays((long) WEEKS * WEEK_DAYS);
        Map<Subject, Map<Long, Holding>> all =
                knowledge.everybody(knowledge.subjects(), List.of(today)).get(0);
        List<Turn> running = turns(coming, all);
        List<Need> needs = new ArrayList<>();
        all.forEach((subject, holders) -> holders.forEach((person, holding) -> {
            LocalDate last = holding.lastGoodDay();
            boolean lapses = subject.kind() != Subject.Kind.PERSON
                    && holding.counts()
                    && last != null
                    && !last.isAfter(end)
                    && running.stream()
                            .noneMatch(turn -> turn.driverId() == person
                                    && turn.subjects().contains(subject)
                                    && !turn.train().content().day().isAfter(last));
            if (lapses && last != null) {
                needs.add(new Need(person, subject, last));
            }
        }));
        needs.addAll(lacked(today, end));
        Limits limits = new Limits(
                Limits.COMMON.perTrain(),
                Limits.COMMON.perTeacher(),
                Limits.COMMON.perWeek(),
                policies.on(today).hours().restLeast());
        return new RefreshProblem(needs, options(needs, running, today), limits);
    }

    /** Returns the trips that learners lack by their plans, those that are booked already left out. */
    private List<Need> lacked(LocalDate today, LocalDate end) {
        List<Need> needs = new ArrayList<>();
        List<LearningTurn> booked = turns.visible(true);
        for (LearningPlans.Progress one : learning.visible(true)) {
            long personId = one.plan().personId();
            LocalDate until = one.plan().until();
            LocalDate last = until == null || until.isAfter(end) ? end : until;
            if (one.step() != LearningPlans.Step.TRIPS || !last.isAfter(today)) {
                continue;
            }
            List<LearningTurn> own = booked.stream()
                    .filter(turn -> turn.learnerId() == personId && !turn.cancelled())
                    .filter(turn -> turns.subjects(turn).contains(one.plan().subject()))
                    .toList();
            int dark = (int) own.stream().filter(turns::isDark).count();
            LearningNeeds asked = one.learned().needs();
            LearningNeeds had = one.learned().had();
            lack(needs, one, last, asked.trips() - had.trips() - own.size(), Aim.TRIPS);
            lack(needs, one, last, asked.dark() - had.dark() - dark, Aim.DARK_TRIPS);
        }
        return needs;
    }

    private static void lack(List<Need> needs, LearningPlans.Progress one, LocalDate last, int count, Aim aim) {
        if (count > 0) {
            needs.add(new Need(one.plan().personId(), one.plan().subject(), last, count, aim));
        }
    }

    private List<Turn> turns(Map<Long, TrainSummary> coming, Map<Subject, Map<Long, Holding>> all) {
        List<Turn> turns = new ArrayList<>();
        for (TrainSummary summary : coming.values().stream()
                .sorted(Comparator.comparing(TrainSummary::day).thenComparing(TrainSummary::code))
                .toList()) {
            Train train = trains.find(summary.id()).orElseThrow();
            for (TrainDemands.Demand demand : demands.of(train)) {
                List<Subject> held = demand.subjects().stream()
                        .filter(subject -> holdsThen(all, subject, demand.personId(), summary.day()))
                        .toList();
                boolean driver = demand.subjects().stream().anyMatch(subject -> subject.kind() == Subject.Kind.SECTION);
                if (driver && !held.isEmpty()) {
                    turns.add(new Turn(train, summary.departs(), summary.arrives(), demand.personId(), held));
                }
            }
        }
        return turns;
    }

    private static boolean holdsThen(
            Map<Subject, Map<Long, Holding>> all, Subject subject, long personId, LocalDate day) {
        Holding holding = all.getOrDefault(subject, Map.of()).get(personId);
        LocalDate last = holding == null ? null : holding.lastGoodDay();
        return holding != null && holding.counts() && last != null && !last.isBefore(day);
    }

    private List<Option> options(List<Need> needs, List<Turn> turns, LocalDate today) {
        Map<Long, List<Integer>> byPerson = new TreeMap<>();
        for (int i = 0; i < needs.size(); i++) {
            byPerson.computeIfAbsent(needs.get(i).personId(), key -> new ArrayList<>())
                    .add(i);
        }
        List<Option> options = new ArrayList<>();
        byPerson.forEach((personId, own) -> people.find(personId).ifPresent(person -> {
            List<CrewBooking> booked = trains.bookings(
                    person.staffNumber(),
                    today.minusDays(FORTNIGHT_DAYS),
                    today.plusDays((long) WEEKS * WEEK_DAYS + FORTNIGHT_DAYS));
            turns.forEach(turn -> option(person, turn, own, needs, booked).ifPresent(options::add));
        }));
        return options;
    }

    private Optional<Option> option(
            Person person, Turn turn, List<Integer> own, List<Need> needs, List<CrewBooking> booked) {
        TrainDraft content = turn.train().content();
        List<Integer> met = own.stream()
                .filter(need -> turn.subjects().contains(needs.get(need).subject()))
                .filter(need -> !content.day().isAfter(needs.get(need).last()))
                .filter(need -> content.dark() || needs.get(need).aim() != Aim.DARK_TRIPS)
                .toList();
        if (met.isEmpty() || turn.driverId() == person.id()) {
            return Optional.empty();
        }
        KnowledgePolicy.Hours hours = policies.on(content.day()).hours();
        List<CrewBooking> around = booked.stream()
                .filter(booking ->
                        Duration.between(booking.from(), turn.from()).abs().toDays() <= FORTNIGHT_DAYS)
                .toList();
        return TrainDemands.fits(new CrewBooking(turn.train().id(), turn.from(), turn.to()), around, hours)
                ? Optional.of(new Option(
                        person.id(), turn.train().id(), content.day(), turn.from(), turn.to(), turn.driverId(), met))
                : Optional.empty();
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
            String subjects = option.needs().stream()
                    .map(need -> result.problem().needs().get(need).subject().code())
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (store.insert(option, subjects, clock.instant(), actor.get().name())) {
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
     * Takes a person's own answer; whoever learns something on the train is booked on it under its driver.
     *
     * @throws ActRefusedException if it was not proposed to whoever answers
     */
    @Transactional
    public void answer(long id, boolean yes) {
        Long personId = actor.get().personId();
        Proposal.State state = yes ? Proposal.State.ACCEPTED : Proposal.State.DECLINED;
        if (yes && personId != null) {
            store.of(personId).stream()
                    .filter(one -> one.id() == id && one.state() == Proposal.State.PROPOSED)
                    .forEach(one -> turns.takeUp(one.trainId(), personId, one.teacherId()));
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
