package org.crosshead.competence.refresh;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.crosshead.competence.Subject;

/**
 * Who must drive what by when, and on which trains they could.
 *
 * @param needs what would lapse, and what learners lack
 * @param options turns that meet some of it, each possible by the hours of whoever would drive it
 */
public record RefreshProblem(List<Need> needs, List<Option> options, Limits limits) {

    /** A lapse weighs as much as a hundred hours of extra duty: own rule. */
    private static final int LAPSE = 6_000;

    /** A trip that a learner lacks weighs as much as twenty-five hours: own rule. */
    private static final int TRIP = 1_500;

    private static final double HOUR_MINUTES = 60;

    public RefreshProblem {
        needs = List.copyOf(needs);
        options = List.copyOf(options);
    }

    /** What a turn is for. */
    public enum Aim {
        /** Something that lapses. */
        REFRESH(LAPSE),
        /** Trips that a learner lacks. */
        TRIPS(TRIP),
        /** Trips in the dark that a learner lacks. */
        DARK_TRIPS(TRIP),
        /** Trips by which somebody who lapsed begins to hold again what too few hold. */
        COVER(TRIP);

        private final int weight;

        Aim(int weight) {
            this.weight = weight;
        }

        /** Returns how many minutes of extra duty it weighs as much as, for each turn that is missed. */
        public int weight() {
            return weight;
        }
    }

    /**
     * Something that lapses, or trips that a learner lacks.
     *
     * @param last last day on which it can be driven
     * @param count turns that are needed, at least 1
     */
    public record Need(long personId, Subject subject, LocalDate last, int count, Aim aim) {

        /** Something that lapses, for which one turn is enough. */
        public Need(long personId, Subject subject, LocalDate last) {
            this(personId, subject, last, 1, Aim.REFRESH);
        }
    }

    /**
     * A person put on a train beside its driver, and driving under them.
     *
     * @param from when the turn begins
     * @param to when it ends
     * @param teacherId the driver booked on it, who holds what is refreshed
     * @param needs indexes of the needs that it meets
     */
    public record Option(
            long personId, long trainId, LocalDate day, Instant from, Instant to, long teacherId, List<Integer> needs) {

        public Option {
            needs = List.copyOf(needs);
        }

        /** Returns the minutes of extra duty. */
        public int minutes() {
            return (int) Math.max(1, Duration.between(from, to).toMinutes());
        }
    }

    /**
     * What nobody is asked beyond.
     *
     * @param perTrain people put on one train besides its crew
     * @param perTeacher turns that one driver has somebody beside them
     * @param perWeek extra turns of one person in seven days following one another
     * @param restHours between two extra turns of one person
     */
    public record Limits(int perTrain, int perTeacher, int perWeek, double restHours) {

        /** One on a train, six for a teacher in eight weeks, two a week: own rules; the customary rest, from memory. */
        public static final Limits COMMON = new Limits(1, 6, 2, 12);

        /** Says whether one person cannot work both: they overlap, or leave less rest than this between them. */
        boolean exclude(Option one, Option other) {
            Option first = one.from().isAfter(other.from()) ? other : one;
            Option second = one.from().isAfter(other.from()) ? one : other;
            return Duration.between(first.to(), second.from()).toMinutes() < restHours * HOUR_MINUTES;
        }
    }
}
