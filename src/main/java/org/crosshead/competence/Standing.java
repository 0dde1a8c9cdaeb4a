package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.crosshead.competence.Holding.Limit;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.Closure;
import org.jspecify.annotations.Nullable;

/**
 * How it stands with a person and a subject after the last of some events: all that is needed to say what is held on that day or any later
 * one, if nothing more happens.
 *
 * @param state as the events left it; what lapses afterwards is still held here
 * @param since when it was authorised or taken over; null where it is not held
 * @param worked last turn that keeps it alive; null for none
 * @param assessed last assessment, or first day of what has a last day of its own; null for none
 * @param until last good day that was said; null where it follows from the policy
 * @param taught last lesson, or run by which the road was proved; null for none
 * @param lastDay day of the last of the events; null for none
 */
record Standing(
        State state,
        boolean suspended,
        @Nullable LocalDate since,
        @Nullable LocalDate worked,
        @Nullable LocalDate assessed,
        @Nullable LocalDate until,
        Set<Limit> limits,
        @Nullable LocalDate taught,
        @Nullable LocalDate lastDay) {

    Standing {
        limits = Set.copyOf(limits);
    }

    /** Returns until when it lasts if nothing more happens; null where it is not held. */
    @Nullable
    LocalDate lastGoodDay(HoldingRules.Terms terms) {
        if (state != State.HELD) {
            return null;
        }
        if (terms.subject().kind() == Subject.Kind.PERSON) {
            return until;
        }
        return lastGoodDay(since, worked, assessed, terms);
    }

    /** The later of the last turn and of the day since which it is held, plus the policy's months; not beyond the next assessment. */
    static @Nullable LocalDate lastGoodDay(
            @Nullable LocalDate since,
            @Nullable LocalDate worked,
            @Nullable LocalDate assessed,
            HoldingRules.Terms terms) {
        if (since == null) {
            return null;
        }
        LocalDate base = worked != null && worked.isAfter(since) ? worked : since;
        LocalDate byWork = base.plusMonths(terms.lapseMonths());
        LocalDate checked = assessed == null ? since : assessed;
        LocalDate byAssessment = checked.plusMonths(terms.policy().assessmentMonths());
        return byWork.isBefore(byAssessment) ? byWork : byAssessment;
    }

    /** Says whether it was held before a closure and has not been taught since. */
    private boolean isToLearnAnew(Closure closure) {
        LocalDate opened = closure.reopenedOn();
        boolean heldBefore = since == null || opened == null || since.isBefore(opened);
        return heldBefore && (taught == null || taught.isBefore(closure.from()));
    }

    /**
     * Returns what is held on a day.
     *
     * @param day not before {@link #lastDay}
     * @param because ids of the events on which it rests, where they are asked for
     */
    Holding on(LocalDate day, HoldingRules.Terms terms, List<Long> because) {
        LocalDate last = lastGoodDay(terms);
        boolean lapsed = last != null && day.isAfter(last);
        State shown = state;
        if (last != null) {
            boolean due = !day.plusDays(terms.policy().warnDays()).isBefore(last);
            shown = lapsed ? State.LAPSED : due ? State.DUE : State.HELD;
        }
        if (suspended && shown != State.WITHDRAWN) {
            shown = State.SUSPENDED;
        }
        if (shown == State.HELD || shown == State.DUE) {
            shown = terms.anew(day).filter(this::isToLearnAnew).isPresent() ? State.LEARN_ANEW : shown;
        }
        if (terms.isClosed(day)) {
            shown = State.CLOSED;
        }
        boolean personal = terms.subject().kind() == Subject.Kind.PERSON;
        return new Holding(
                terms.subject(), shown, lapsed && !personal ? null : last, worked, assessed, limits, because);
    }
}
