package org.crosshead.competence.refresh;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.KnowledgePolicy;
import org.crosshead.competence.Subject;
import org.crosshead.competence.TrainDemands;
import org.crosshead.competence.learning.LearningPlan;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.competence.refresh.RefreshProblem.Limits;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
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

    /**
     * A train to come, with one of its drivers.
     *
     * @param subjects of what is asked of the driver, those that they hold then
     */
    private record Turn(
            Train train, Instant from, Instant to, long driverId, Set<Subject> asked, List<Subject> subjects) {}

    /** A problem, and what stays thin because nobody can begin with it. */
    record Read(RefreshProblem problem, List<ThinCover.Unmet> unmet) {}

    /** Returns the problem of the eight weeks from a day on for a group of people, with the trains that run in them. */
    Read of(LocalDate today, Group group, Map<Long, TrainSummary> coming) {
        LocalDate end = today.plusDays((long) WEEKS * WEEK_DAYS);
        Map<Subject, Map<Long, Holding>> all =
                knowledge.everybody(knowledge.subjects(), List.of(today)).get(0);
        List<Turn> running = turns(coming, all);
        Set<Long> meant = group.members(people.all(), today);
        List<Need> needs = new ArrayList<>();
        all.forEach((subject, holders) -> holders.forEach((person, holding) -> {
            LocalDate last = holding.lastGoodDay();
            boolean lapses = meant.contains(person)
                    && subject.kind() != Subject.Kind.PERSON
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
        needs.addAll(lacked(today, end).stream()
                .filter(need -> meant.contains(need.personId()))
                .toList());
        ThinCover.Plan thin = thin(today, end, group, all, running);
        needs.addAll(thin.needs());
        Limits limits = new Limits(
                Limits.COMMON.perTrain(),
                Limits.COMMON.perTeacher(),
                Limits.COMMON.perWeek(),
                policies.on(today).hours().restLeast());
        return new Read(new RefreshProblem(needs, options(needs, running, today), limits), thin.unmet());
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

    /** Returns who begins with what too few of the group hold. */
    private ThinCover.Plan thin(
            LocalDate today, LocalDate end, Group group, Map<Subject, Map<Long, Holding>> all, List<Turn> running) {
        List<Person> everybody = people.all();
        Map<Subject, Set<Long>> learners = learning.visible(true).stream()
                .map(LearningPlans.Progress::plan)
                .collect(Collectors.groupingBy(
                        LearningPlan::subject, Collectors.mapping(LearningPlan::personId, Collectors.toSet())));
        ThinCover cover = new ThinCover(
                all,
                group.members(everybody, today),
                new Group(Post.DRIVER, group.depot()).members(everybody, today),
                learners,
                running.stream()
                        .map(turn -> new ThinCover.Asked(turn.driverId(), turn.asked()))
                        .distinct()
                        .toList(),
                policies.on(today).upkeep().holdersLeast());
        return cover.plan(
                new ThinCover.Teaching() {
                    @Override
                    public boolean isTaught(Subject subject) {
                        return learning.isTaught(subject);
                    }

                    @Override
                    public boolean isRun(Subject subject) {
                        return running.stream().anyMatch(turn -> turn.subjects().contains(subject));
                    }

                    /** Where nothing is laid down, one trip. */
                    @Override
                    public int trips(long personId, Subject subject) {
                        return Math.max(
                                1,
                                knowledge
                                        .learned(personId, subject, today)
                                        .needs()
                                        .trips());
                    }
                },
                end);
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
                    turns.add(new Turn(
                            train,
                            summary.departs(),
                            summary.arrives(),
                            demand.personId(),
                            Set.copyOf(demand.subjects()),
                            held));
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
                    today.minusDays(TrainDemands.AROUND_DAYS),
                    today.plusDays((long) WEEKS * WEEK_DAYS + TrainDemands.AROUND_DAYS));
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
                        Duration.between(booking.from(), turn.from()).abs().toDays() <= TrainDemands.AROUND_DAYS)
                .toList();
        return demands.fits(new CrewBooking(turn.train().id(), turn.from(), turn.to()), around, hours)
                ? Optional.of(new Option(
                        person.id(), turn.train().id(), content.day(), turn.from(), turn.to(), turn.driverId(), met))
                : Optional.empty();
    }
}
