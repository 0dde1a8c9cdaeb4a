package org.crosshead.competence.refresh;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.competence.Subject;

/**
 * Who must drive what by when, and on which trains they could.
 *
 * @param needs what would lapse
 * @param options turns by which it would not, each possible by the hours of whoever would drive it
 */
public record RefreshProblem(List<Need> needs, List<Option> options, Limits limits) {

    public RefreshProblem {
        needs = List.copyOf(needs);
        options = List.copyOf(options);
    }

    /**
     * Something that lapses.
     *
     * @param last last day on which it can be driven
     */
    public record Need(long personId, Subject subject, LocalDate last) {}

    /**
     * A person put on a train beside its driver, and driving under them.
     *
     * @param minutes of extra duty
     * @param teacherId the driver booked on it, who holds what is refreshed
     * @param needs indexes of the needs that it meets
     */
    public record Option(long personId, long trainId, LocalDate day, int minutes, long teacherId, List<Integer> needs) {

        public Option {
            needs = List.copyOf(needs);
        }
    }

    /**
     * What nobody is asked beyond.
     *
     * @param perTrain people put on one train besides its crew
     * @param perTeacher turns that one driver has somebody beside them
     * @param perWeek extra turns of one person in seven days following one another
     */
    public record Limits(int perTrain, int perTeacher, int perWeek) {

        /** One on a train, six for a teacher in eight weeks, two a week: own rules. */
        public static final Limits COMMON = new Limits(1, 6, 2);
    }
}
