package org.crosshead.competence.refresh;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.working.CrewBooking;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Component;

/** Reads what lapses, what learners lack, and on which trains of the coming weeks it could be met. */
@Component
class RefreshProblems {

    /** For which turns are planned. */
    static final int WEEKS = 8;

    private static final int WEEK_DAYS = 7;
    private static final int FORTNIGHT_DAYS = 15;

    private final Trains trains;
    private final TrainDemands demands;
    private final Knowledge knowledge;
    private final KnowledgePolicies policies;
    private final People people;
    private final LearningPlans learning;
    private final LearningTurns turns;

    RefreshProblems(
            Trains trains,
            TrainDemands demands,
            Knowledge knowledge,
            KnowledgePolicies policies,
            People people,
            LearningPlans learning,
            LearningTurns turns) {
        this.trains = trains;
        this.demands = demands;
        this.knowledge = knowledge;
        this.policies = policies;
        this.people = people;
        this.learning = learning;
        this.turns = turns;
    }

    /** A train to come, with its driver who holds all of it that is told. */
    private record Turn(Train train, Instant from, Instant to, long driverId, List<Subject> subjects) {}

    /** Returns the problem of the eight weeks from a day on, with the trains that run in them. */
    RefreshProblem of(LocalDate today, Map<Long, TrainSummary> coming) {
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
        needs.addAll(thin(today, end, all));
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

    /** Returns trips for those who lapsed last on what fewer hold than the policy's least; who learns it by a plan is left out. */
    private List<Need> thin(LocalDate today, LocalDate end, Map<Subject, Map<Long, Holding>> all) {
        int least = policies.on(today).upkeep().holdersLeast();
        List<LearningPlans.Progress> plans = learning.visible(true);
        List<Need> needs = new ArrayList<>();
        all.forEach((subject, holders) -> {
            long hold = holders.values().stream().filter(Holding::counts).count();
            if (subject.kind() == Subject.Kind.PERSON || hold >= least) {
                return;
            }
            holders.entrySet().stream()
                    .filter(one -> one.getValue().state() == Holding.State.LAPSED)
                    .filter(one -> plans.stream()
                            .noneMatch(plan -> plan.plan().personId() == one.getKey()
                                    && plan.plan().subject().equals(subject)))
                    .sorted(Comparator.comparing((Map.Entry<Long, Holding> one) -> worked(one.getValue()))
                            .reversed())
                    .limit(least - hold)
                    .forEach(one -> needs.add(
                            new Need(one.getKey(), subject, end, trips(one.getKey(), subject, today), Aim.COVER)));
        });
        return needs;
    }

    private static LocalDate worked(Holding holding) {
        LocalDate worked = holding.lastWorked();
        return worked == null ? LocalDate.MIN : worked;
    }

    /** Where nothing is laid down, one trip. */
    private int trips(long personId, Subject subject, LocalDate today) {
        return Math.max(1, knowledge.learned(personId, subject, today).needs().trips());
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
}
