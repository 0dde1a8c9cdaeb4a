package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.crosshead.competence.Holding.Limit;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Permit.Bar;
import org.crosshead.competence.Permit.Candidate;
import org.crosshead.competence.Permit.Line;
import org.jspecify.annotations.Nullable;

/** Decides from what everybody holds whether a crew may take a train. Pure: equal inputs give equal answers. */
final class PermitRules {

    private static final int LACKS_MOST = 2;
    private static final int CANDIDATES = 20;
    private static final Set<State> NEVER_HELPED = Set.of(State.SUSPENDED, State.WITHDRAWN, State.UNFIT);

    private static final Set<State> HELD_BEFORE = Set.of(State.LAPSED, State.HANDED_BACK, State.LEARN_ANEW);

    private PermitRules() {}

    /**
     * Something that must be held.
     *
     * @param circumstances of this train in which it is worked
     * @param rides from which booked stop to which somebody goes along over it, in words; null where it is no road
     * @param exempt what lifts it where it is not held; null for nothing
     */
    record Duty(
            Subject subject,
            Set<Circumstance> circumstances,
            @Nullable String rides,
            @Nullable Exemption exempt) {

        Duty(Subject subject, Set<Circumstance> circumstances) {
            this(subject, circumstances, null, null);
        }

        Duty {
            circumstances = Set.copyOf(circumstances);
        }
    }

    /**
     * A person of the crew and what they must hold.
     *
     * @param duties in running order
     * @param others who holds the same post and is not of this crew
     */
    record Needs(long personId, List<Duty> duties, List<Long> others) {

        Needs {
            duties = List.copyOf(duties);
            others = List.copyOf(others);
        }
    }

    /**
     * Somebody of the crew who could go along with another.
     *
     * @param conducts codes of the sections over which they go along
     * @param teaches what they teach on this train, in charge
     * @param accepted whom they have accepted to conduct, by a permitted case; null in what was kept before this was asked
     * @param byLetter what they are recognised for by a letter; none in what was kept before this was asked
     */
    record Companion(
            long personId,
            List<String> conducts,
            List<Subject> teaches,
            @Nullable Set<Long> accepted,
            List<Subject> byLetter) {

        Companion {
            conducts = List.copyOf(conducts);
            teaches = List.copyOf(teaches);
            accepted = accepted == null ? null : Set.copyOf(accepted);
            byLetter = List.copyOf(Objects.requireNonNullElse(byLetter, List.of()));
        }

        private boolean accepts(long driverId) {
            return accepted == null || accepted.contains(driverId);
        }
    }

    /** Of somebody who says that they do not sign it. */
    record Declined(long personId, Subject subject) {}

    /**
     * What is held of one subject on that day.
     *
     * @param ofCrew by person, of everybody on the train who has to do with it
     * @param holders ids of all who hold it
     */
    record Held(Subject subject, Map<Long, Holding> ofCrew, List<Long> holders) {

        Held {
            ofCrew = Map.copyOf(ofCrew);
            holders = List.copyOf(holders);
        }
    }

    /**
     * All that a decision rests on.
     *
     * @param day on which the turn ends
     * @param bars found besides road and engine
     * @param detours what the drivers must hold where the train may be diverted; none in what was kept before this was asked
     * @param piloting who may go along with whom; by a driver in what was kept before this was asked
     */
    record Asked(
            LocalDate day,
            int policyVersion,
            List<Needs> crew,
            List<Companion> companions,
            List<Permit.Gap> gaps,
            List<Declined> declined,
            List<Bar> bars,
            List<Held> held,
            List<Needs> detours,
            @Nullable Piloting piloting) {

        Asked(
                LocalDate day,
                int policyVersion,
                List<Needs> crew,
                List<Companion> companions,
                List<Permit.Gap> gaps,
                List<Declined> declined,
                List<Bar> bars,
                List<Held> held,
                List<Needs> detours) {
            this(day, policyVersion, crew, companions, gaps, declined, bars, held, detours, Piloting.BY_A_DRIVER);
        }

        Asked {
            crew = List.copyOf(crew);
            companions = List.copyOf(companions);
            gaps = List.copyOf(gaps);
            declined = List.copyOf(declined);
            bars = List.copyOf(bars);
            held = List.copyOf(held);
            detours = List.copyOf(Objects.requireNonNullElse(detours, List.of()));
        }

        private Optional<Held> of(Subject subject) {
            return held.stream().filter(one -> one.subject().equals(subject)).findFirst();
        }

        private Holding holding(long personId, Subject subject) {
            Holding none = Holding.none(subject);
            return of(subject)
                    .map(one -> one.ofCrew().getOrDefault(personId, none))
                    .orElse(none);
        }

        private List<Long> holders(Subject subject) {
            return of(subject).map(Held::holders).orElse(List.of());
        }

        /** Returns the same as it is kept: without those who could be asked instead. */
        Asked kept() {
            return new Asked(
                    day,
                    policyVersion,
                    crew.stream()
                            .map(needs -> new Needs(needs.personId(), needs.duties(), List.of()))
                            .toList(),
                    companions,
                    gaps,
                    declined,
                    bars,
                    held,
                    detours,
                    piloting);
        }
    }

    static Permit decide(Asked asked) {
        List<Line> lines = new ArrayList<>();
        asked.crew().forEach(needs -> lines.addAll(lines(needs, asked)));
        Answer worst = Stream.of(
                        lines.stream().map(Line::answer),
                        asked.gaps().stream().map(gap -> Answer.REFERRED),
                        asked.bars().stream().map(bar -> Answer.REFUSED))
                .flatMap(answers -> answers)
                .max(Comparator.naturalOrder())
                .orElse(Answer.ALLOWED);
        List<Candidate> instead = asked.crew().stream()
                .filter(needs -> mayNotSimply(needs.personId(), lines, asked))
                .flatMap(needs -> instead(needs, asked).stream())
                .toList();
        List<Line> detours = asked.detours().stream()
                .flatMap(needs -> needs.duties().stream().map(duty -> line(needs.personId(), duty, asked)))
                .toList();
        return new Permit(
                worst, asked.day(), asked.policyVersion(), lines, instead, asked.gaps(), asked.bars(), detours);
    }

    private static boolean mayNotSimply(long personId, List<Line> lines, Asked asked) {
        return barred(personId, asked)
                || lines.stream().anyMatch(line -> line.personId() == personId && line.answer() != Answer.ALLOWED);
    }

    private static boolean barred(long personId, Asked asked) {
        return asked.bars().stream().anyMatch(bar -> bar.personId() == personId);
    }

    /** Returns who could go instead: those who lack nothing, or else who lack least. */
    private static List<Candidate> instead(Needs needs, Asked asked) {
        return needs.others().stream()
                .map(other -> new Candidate(
                        needs.personId(),
                        other,
                        needs.duties().stream()
                                .map(Duty::subject)
                                .filter(subject -> !asked.holders(subject).contains(other))
                                .toList()))
                .filter(candidate -> candidate.lacks().size() <= LACKS_MOST
                        && candidate.lacks().size() < needs.duties().size())
                .sorted(Comparator.comparing(
                                (Candidate candidate) -> candidate.lacks().size())
                        .thenComparing(Candidate::personId))
                .limit(CANDIDATES)
                .toList();
    }

    /**
     * Decides what is asked of one person. An exemption lifts one section at most: what is short and easy in each of several is neither over
     * all of them.
     */
    private static List<Line> lines(Needs needs, Asked asked) {
        List<Line> lines = needs.duties().stream()
                .map(duty -> line(needs.personId(), duty, asked))
                .toList();
        long exempt =
                lines.stream().filter(line -> line.answer() == Answer.EXEMPT).count();
        return exempt <= 1
                ? lines
                : needs.duties().stream()
                        .map(duty -> withoutExemption(needs.personId(), duty, asked))
                        .toList();
    }

    /** Decides one question; where nobody goes along, an exemption of the policy lifts that it is not held. */
    private static Line line(long personId, Duty duty, Asked asked) {
        Line line = withoutExemption(personId, duty, asked);
        Exemption exempt = duty.exempt();
        Holding own = line.holding();
        boolean lifted = (line.answer() == Answer.REFUSED || line.answer() == Answer.REFERRED)
                && !own.counts()
                && !NEVER_HELPED.contains(own.state())
                && own.state() != State.CLOSED
                && !asked.declined().contains(new Declined(personId, duty.subject()));
        return exempt == null || !lifted
                ? line
                : new Line(personId, own, Answer.EXEMPT, "exempt-" + exempt.code(), List.of(), null);
    }

    private static Line withoutExemption(long personId, Duty duty, Asked asked) {
        Subject subject = duty.subject();
        Holding own = asked.holding(personId, subject);
        boolean declines = asked.declined().contains(new Declined(personId, subject));
        Optional<String> hindered = declines ? Optional.of("declined") : hindrance(own, duty);
        if (own.counts() && hindered.isEmpty()) {
            return new Line(personId, own, Answer.ALLOWED, "held", List.of(), null);
        }
        String why = hindered.orElse("state");
        if (subject.kind() == Subject.Kind.PERSON || NEVER_HELPED.contains(own.state())) {
            return new Line(personId, own, Answer.REFUSED, why, List.of(), null);
        }
        List<Long> teachers = asked.companions().stream()
                .filter(one -> one.personId() != personId && one.teaches().contains(subject))
                .filter(one -> one.byLetter().contains(subject)
                        ? mayGo(one.personId(), duty, asked)
                        : mayHelp(one.personId(), duty, asked))
                .map(Companion::personId)
                .sorted()
                .toList();
        if (!teachers.isEmpty()) {
            return new Line(personId, own, Answer.INSTRUCTED, why, teachers, null);
        }
        List<Long> others = asked.holders(subject).stream()
                .filter(other -> other != personId)
                .sorted()
                .toList();
        if (others.isEmpty()) {
            return new Line(personId, own, Answer.REFERRED, why, List.of(), null);
        }
        boolean conducted =
                subject.kind() == Subject.Kind.SECTION && !own.limits().contains(Limit.WITH_TEACHER_ONLY);
        if (!conducted) {
            return new Line(personId, own, Answer.REFUSED, why, List.of(), null);
        }
        List<Companion> along = asked.companions().stream()
                .filter(one -> one.personId() != personId && one.conducts().contains(subject.code()))
                .filter(one -> mayHelp(one.personId(), duty, asked) || maySimplyPilot(one.personId(), own, duty, asked))
                .toList();
        List<Long> accepted = ids(along.stream().filter(one -> one.accepts(personId)));
        if (!accepted.isEmpty()) {
            return new Line(personId, own, Answer.CONDUCTED, why, accepted, duty.rides());
        }
        return along.isEmpty()
                ? new Line(personId, own, Answer.REFUSED, why, others, duty.rides())
                : new Line(personId, own, Answer.REFUSED, Line.NOT_ACCEPTED, ids(along.stream()), duty.rides());
    }

    private static List<Long> ids(Stream<Companion> companions) {
        return companions.map(Companion::personId).sorted().toList();
    }

    /** Says whether somebody who goes along holds it in these circumstances, and has no bar of their own. */
    private static boolean mayHelp(long personId, Duty duty, Asked asked) {
        Holding own = asked.holding(personId, duty.subject());
        return own.counts() && hindrance(own, duty).isEmpty() && mayGo(personId, duty, asked);
    }

    /** Says whether somebody who goes along need hold no more than the road, because the driver has held it before. */
    private static boolean maySimplyPilot(long personId, Holding driver, Duty duty, Asked asked) {
        Holding own = asked.holding(personId, duty.subject());
        return asked.piloting() == Piloting.NOT_OF_THE_CREW
                && HELD_BEFORE.contains(driver.state())
                && own.counts()
                && hindrance(own, duty).isEmpty()
                && isFree(personId, duty, asked);
    }

    /** Says whether somebody who goes along has no bar of their own. */
    private static boolean mayGo(long personId, Duty duty, Asked asked) {
        boolean mayDrive = asked.held().stream()
                .filter(held -> held.subject().kind() == Subject.Kind.PERSON)
                .allMatch(held -> asked.holding(personId, held.subject()).counts());
        return mayDrive && isFree(personId, duty, asked);
    }

    private static boolean isFree(long personId, Duty duty, Asked asked) {
        return !barred(personId, asked) && !asked.declined().contains(new Declined(personId, duty.subject()));
    }

    /** Returns why what is held does not count on this train, by its limits. */
    private static Optional<String> hindrance(Holding own, Duty duty) {
        if (!own.counts()) {
            return Optional.empty();
        }
        if (own.limits().contains(Limit.WITH_TEACHER_ONLY)) {
            return Optional.of("limit-teacher");
        }
        if (own.limits().contains(Limit.DAY_ONLY) && duty.circumstances().contains(Circumstance.DARK)) {
            return Optional.of("limit-day");
        }
        boolean tender = own.limits().contains(Limit.CHIMNEY_FIRST_ONLY)
                && duty.circumstances().contains(Circumstance.TENDER_FIRST);
        return tender ? Optional.of("limit-chimney") : Optional.empty();
    }
}
