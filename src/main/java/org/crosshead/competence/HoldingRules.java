package org.crosshead.competence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.Limit;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.Closure;
import org.jspecify.annotations.Nullable;

/**
 * Derives what is held from the events of one person and one subject. Pure: the same events in whatever order of entry give the same
 * holding; only the day of each counts, and on one day the order of entry.
 *
 * <p>Months are calendar months: from 31 August six of them end on the last of February. A period's last day is a good day. Knowledge that
 * has lapsed is not brought back by working: it is assessed and authorised anew.
 */
public final class HoldingRules {

    private HoldingRules() {}

    /**
     * What decides about one subject.
     *
     * @param lapseMonths after the last turn worked
     * @param closures of the section, in order of their days
     */
    public record Terms(Subject subject, int lapseMonths, List<Closure> closures, KnowledgePolicy policy) {

        public Terms {
            closures = List.copyOf(closures);
        }

        boolean isClosed(LocalDate day) {
            return closures.stream().anyMatch(closure -> closure.covers(day));
        }

        /** Returns the last closure before a day after which it is learned anew by those who held it before. */
        Optional<Closure> anew(LocalDate day) {
            return closures.stream()
                    .filter(closure -> closure.learnAnew() && !closure.covers(day))
                    .filter(closure -> !closure.from().isAfter(day))
                    .reduce((earlier, later) -> later);
        }
    }

    /**
     * Returns what is held on a day.
     *
     * @param events of this person and subject, in any order
     * @param day on which it is asked
     * @param knownAt as it was known then; later entries are left out
     */
    public static Holding on(List<CompetenceEvent> events, Terms terms, LocalDate day, Instant knownAt) {
        List<Long> because = new ArrayList<>();
        Standing standing = standing(counted(events, day, knownAt), terms, because);
        return standing.on(day, terms, because);
    }

    /** Returns how it stands after all events, by which every day from the last of them on can be answered. */
    static Standing standing(List<CompetenceEvent> events, Terms terms) {
        return standing(counted(events, LocalDate.MAX, Instant.MAX), terms, new ArrayList<>());
    }

    private static Standing standing(List<CompetenceEvent> counted, Terms terms, List<Long> because) {
        if (terms.subject().kind() == Subject.Kind.PERSON) {
            return PersonalRules.standing(counted, because);
        }
        Fold fold = new Fold(terms, because);
        counted.forEach(fold::take);
        return fold.standing(
                counted.isEmpty() ? null : counted.get(counted.size() - 1).day());
    }

    /** Returns the events that count, by day. */
    private static List<CompetenceEvent> counted(List<CompetenceEvent> events, LocalDate day, Instant knownAt) {
        Set<Long> struck = new HashSet<>();
        for (CompetenceEvent event : events) {
            Long struckId = event.struckId();
            if (event.kind() == Kind.STRUCK
                    && struckId != null
                    && !event.enteredAt().isAfter(knownAt)) {
                struck.add(struckId);
            }
        }
        return events.stream()
                .filter(event -> event.kind() != Kind.STRUCK && !struck.contains(event.id()))
                .filter(event ->
                        !event.enteredAt().isAfter(knownAt) && !event.day().isAfter(day))
                .sorted(Comparator.comparing(CompetenceEvent::day).thenComparing(CompetenceEvent::id))
                .toList();
    }

    /** What is known of a person while their events are read in the order of their days. */
    private static final class Fold {

        private final Terms terms;
        private final List<Long> because;
        private State state = State.NOT_HELD;
        private final Set<Limit> limits = EnumSet.noneOf(Limit.class);
        private boolean suspended;
        private boolean questions;
        private boolean practice;
        private @Nullable LocalDate since;
        private @Nullable LocalDate worked;
        private @Nullable LocalDate assessed;
        private @Nullable LocalDate taught;

        Fold(Terms terms, List<Long> because) {
            this.terms = terms;
            this.because = because;
        }

        void take(CompetenceEvent event) {
            lapse(event.day());
            boolean counts = terms.policy().keepsAlive(event.kind());
            if (counts) {
                worked = event.day();
            }
            switch (event.kind()) {
                case VERIFIED -> {}
                case LICENSED, FIT, FIT_RESTRICTED, UNFIT, OBSERVED, TESTED, RECOGNISED -> {
                    return;
                }
                case WORKED, WORKED_CONDUCTED, RODE, CONDUCTED, STRUCK -> {
                    if (!counts || state != State.HELD) {
                        return;
                    }
                }
                case LEARNED -> {
                    state = state == State.HELD ? state : State.LEARNING;
                    taught = event.day();
                }
                case PROVED -> taught = event.day();
                case BRIEFED -> taught = terms.subject().kind() == Subject.Kind.CLASS ? event.day() : taught;
                case DECLARED -> {
                    if (state != State.HELD) {
                        state = State.DECLARED;
                        questions = false;
                        practice = false;
                    }
                }
                case QUESTIONS_PASSED -> {
                    questions = true;
                    assess(event.day());
                }
                case PRACTICE_PASSED -> {
                    practice = true;
                    assess(event.day());
                }
                case QUESTIONS_FAILED, PRACTICE_FAILED -> fail();
                case AUTHORISED -> {
                    if (state == State.ASSESSED) {
                        hold(event.day());
                    }
                }
                case TAKEN_OVER -> {
                    assessed = event.day();
                    hold(event.day());
                }
                case CARRIED_OVER -> {
                    worked = event.day();
                    assessed = event.until();
                    hold(event.day());
                }
                case SUSPENDED -> suspended = true;
                case REINSTATED -> suspended = false;
                case WITHDRAWN -> end(State.WITHDRAWN);
                case HANDED_BACK -> end(State.HANDED_BACK);
                case DAY_ONLY -> limits.add(Limit.DAY_ONLY);
                case CHIMNEY_FIRST_ONLY -> limits.add(Limit.CHIMNEY_FIRST_ONLY);
                case WITH_TEACHER_ONLY -> limits.add(Limit.WITH_TEACHER_ONLY);
                case LIMITS_LIFTED -> limits.clear();
            }
            because.add(event.id());
        }

        private void assess(LocalDate day) {
            if (state == State.HELD || state == State.ASSESSED) {
                assessed = practice ? day : assessed;
                practice = false;
                questions = false;
            } else if (state == State.DECLARED && questions && practice) {
                state = State.ASSESSED;
                assessed = day;
                practice = false;
                questions = false;
            }
        }

        private void fail() {
            state = State.LEARNING;
            questions = false;
            practice = false;
            since = null;
        }

        private void hold(LocalDate day) {
            state = State.HELD;
            limits.clear();
            since = day;
            questions = false;
            practice = false;
        }

        private void end(State ended) {
            state = ended;
            limits.clear();
            since = null;
            questions = false;
            practice = false;
            suspended = false;
        }

        private void lapse(LocalDate day) {
            LocalDate last = lastGoodDay();
            if (state == State.HELD && last != null && day.isAfter(last)) {
                state = State.LAPSED;
            }
        }

        private @Nullable LocalDate lastGoodDay() {
            return Standing.lastGoodDay(since, worked, assessed, terms);
        }

        Standing standing(@Nullable LocalDate lastDay) {
            return new Standing(state, suspended, since, worked, assessed, null, limits, taught, lastDay);
        }
    }
}
