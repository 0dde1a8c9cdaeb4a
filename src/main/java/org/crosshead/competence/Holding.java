package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a person holds of a subject on a day, and why.
 *
 * @param lastGoodDay until when it lasts if nothing more is done, included; null where it is not held or has lapsed before
 * @param lastWorked last turn that keeps it alive; null for none
 * @param assessed last assessment passed or taken over; null for none
 * @param limits within which alone it is held
 * @param because ids of the events on which it rests, in order of their days
 */
public record Holding(
        Subject subject,
        State state,
        @Nullable LocalDate lastGoodDay,
        @Nullable LocalDate lastWorked,
        @Nullable LocalDate assessed,
        Set<Limit> limits,
        List<Long> because) {

    /** Within what it is held. */
    public enum Limit {
        DAY_ONLY,
        CHIMNEY_FIRST_ONLY,
        WITH_TEACHER_ONLY
    }

    /** Without limits. */
    public Holding(
            Subject subject,
            State state,
            @Nullable LocalDate lastGoodDay,
            @Nullable LocalDate lastWorked,
            @Nullable LocalDate assessed,
            List<Long> because) {
        this(subject, state, lastGoodDay, lastWorked, assessed, Set.of(), because);
    }

    /** Not held at all, nor ever learned. */
    public static Holding none(Subject subject) {
        return new Holding(subject, State.NOT_HELD, null, null, null, List.of());
    }

    /** How it stands. */
    public enum State {
        NOT_HELD,
        LEARNING,
        /** Declared, not yet assessed. */
        DECLARED,
        /** Both assessments passed, not yet authorised. */
        ASSESSED,
        HELD,
        /** Held, and lapses within the policy's horizon. */
        DUE,
        LAPSED,
        SUSPENDED,
        WITHDRAWN,
        HANDED_BACK,
        /** By a doctor's word. */
        UNFIT,
        /** Held before the section was closed for long: to be taught anew before it counts again. */
        LEARN_ANEW,
        /** The section is closed: it counts for nobody. */
        CLOSED
    }

    public Holding {
        limits = Set.copyOf(limits);
        because = List.copyOf(because);
    }

    /** Says whether the person may work by themselves on that day, within its limits. */
    public boolean counts() {
        return state == State.HELD || state == State.DUE;
    }

    /** Returns until when it lasts, where it is held. */
    public Optional<LocalDate> lasts() {
        return Optional.ofNullable(lastGoodDay);
    }
}
