package org.crosshead.competence.refresh;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningPlan;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.competence.refresh.ComingTurns.Turn;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.competence.refresh.RefreshProblem.Limits;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.working.Train;
import org.springframework.stereotype.Component;

/** Reads what lapses, what learners lack, and on which trains of the coming weeks it could be met. */
@Component
class RefreshProblems {

    /** For which turns are planned. */
    static final int WEEKS = 8;

    private static final int WEEK_DAYS = 7;

    private final ComingTurns coming;
    private final ProposalStore proposals;
    private final Knowledge knowledge;
    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final People people;
    private final LearningPlans learning;
    private final LearningTurns turns;

    RefreshProblems(
            ComingTurns coming,
            ProposalStore proposals,
            Knowledge knowledge,
            Holdings holdings,
            KnowledgePolicies policies,
            People people,
            LearningPlans learning,
            LearningTurns turns) {
        this.coming = coming;
        this.proposals = proposals;
        this.knowledge = knowledge;
        this.holdings = holdings;
        this.policies = policies;
        this.people = people;
        this.learning = learning;
        this.turns = turns;
    }

    /** A problem, and what stays thin because nobody can begin with it. */
    record Read(RefreshProblem problem, List<ThinCover.Unmet> unmet) {}

    /** Returns the problem of the eight weeks from a day on for a group of people, with the trains that run in them. */
    Read of(LocalDate today, Group group, List<Train> trains) {
        LocalDate end = today.plusDays((long) WEEKS * WEEK_DAYS);
        Map<Subject, Map<Long, Holding>> all =
                holdings.everybody(holdings.subjects(), List.of(today)).get(0);
        List<Turn> running = coming.of(trains, all);
        ComingTurns.Diaries diaries = coming.diaries(today, end);
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
                                    && !turn.day().isAfter(last));
            if (lapses && last != null) {
                needs.add(new Need(person, subject, last));
            }
        }));
        needs.addAll(lacked(today, end).stream()
                .filter(need -> meant.contains(need.personId()))
                .toList());
        ThinCover.Plan thin = thin(today, end, group, all, running, diaries);
        needs.addAll(thin.needs());
        Limits limits = new Limits(
                Limits.COMMON.perTrain(),
                Limits.COMMON.perTeacher(),
                Limits.COMMON.perWeek(),
                policies.on(today).hours().restLeast());
        return new Read(new RefreshProblem(needs, options(needs, running, diaries), limits), thin.unmet());
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
            List<LearningTurns.Known> own = booked.stream()
                    .filter(turn -> turn.learnerId() == personId && !turn.cancelled())
                    .map(turns::known)
                    .filter(turn -> turn.subjects().contains(one.plan().subject()))
                    .toList();
            int dark = (int) own.stream().filter(LearningTurns.Known::dark).count();
            LearningNeeds asked = one.learned().needs();
            LearningNeeds had = one.learned().had();
            lack(needs, one, last, asked.trips() - had.trips() - own.size(), Aim.TRIPS);
            lack(needs, one, last, asked.dark() - had.dark() - dark, Aim.DARK_TRIPS);
        }
        return needs;
    }

    /** Returns who begins with what too few of the group hold. */
    private ThinCover.Plan thin(
            LocalDate today,
            LocalDate end,
            Group group,
            Map<Subject, Map<Long, Holding>> all,
            List<Turn> running,
            ComingTurns.Diaries diaries) {
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
        List<Proposal> declined = proposals.all().stream()
                .filter(one -> one.state() == Proposal.State.DECLINED)
                .filter(one -> !one.day().isBefore(today))
                .toList();
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

                    @Override
                    public boolean suits(long personId, Subject subject) {
                        return declined.stream()
                                        .noneMatch(one -> one.personId() == personId
                                                && one.begins().contains(subject))
                                && running.stream()
                                        .anyMatch(turn ->
                                                turn.teaches(subject, personId) && diaries.suits(personId, turn));
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

    private static List<Option> options(List<Need> needs, List<Turn> turns, ComingTurns.Diaries diaries) {
        Map<Long, List<Integer>> byPerson = new TreeMap<>();
        for (int i = 0; i < needs.size(); i++) {
            byPerson.computeIfAbsent(needs.get(i).personId(), key -> new ArrayList<>())
                    .add(i);
        }
        List<Option> options = new ArrayList<>();
        byPerson.forEach((personId, own) -> turns.forEach(turn -> {
            List<Integer> met =
                    own.stream().filter(need -> meets(turn, needs.get(need))).toList();
            if (!met.isEmpty() && diaries.suits(personId, turn)) {
                options.add(
                        new Option(personId, turn.trainId(), turn.day(), turn.from(), turn.to(), turn.driverId(), met));
            }
        }));
        return options;
    }

    private static boolean meets(Turn turn, Need need) {
        return turn.teaches(need.subject(), need.personId())
                && !turn.day().isAfter(need.last())
                && (turn.dark() || need.aim() != Aim.DARK_TRIPS);
    }
}
