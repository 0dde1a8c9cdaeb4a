package org.crosshead.routeknowledge;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.route.Direction;
import org.jspecify.annotations.Nullable;

/**
 * A section of a route in one direction: what a person signs.
 *
 * @param code unique, by which it is signed
 * @param fromMeasure by the route's measure, rising, below {@code toMeasure}
 * @param hard what makes it hard, by day and by night, in fog and at leaf fall; the gist of its risk assessment
 * @param teacherId who teaches it; null where nobody is named yet
 * @param approvedBy who approved its risk assessment; null until then
 * @param version counts changes
 * @param line running line, as on the path of a train; blank where it is signed for every one of the route's lines together
 * @param needs of a learner
 * @param closures all there have been, in order of their days
 */
public record RouteSection(
        long id,
        String code,
        String title,
        String routeCode,
        double fromMeasure,
        double toMeasure,
        Direction direction,
        Band band,
        String hard,
        @Nullable Long teacherId,
        String enteredBy,
        @Nullable String approvedBy,
        int version,
        String line,
        LearningNeeds needs,
        List<Closure> closures) {

    public RouteSection {
        closures = List.copyOf(closures);
    }

    /** Says whether it can be signed on a day: approved, and not closed. */
    public boolean isOpen(LocalDate day) {
        return approvedBy != null && closures.stream().noneMatch(closure -> closure.covers(day));
    }

    /** Returns the first day of the closure that has not ended; null where there is none. */
    public @Nullable LocalDate closedFrom() {
        return closed().map(Closure::from).orElse(null);
    }

    /** Returns the closure that has not ended. */
    public Optional<Closure> closed() {
        return closures.stream().filter(closure -> closure.reopenedOn() == null).findFirst();
    }

    /** Says whether a train on a line of this route runs on the line of the section. */
    public boolean isOnLine(String runningLine) {
        return line.isEmpty() || line.equals(runningLine);
    }

    /** Returns those of the sections that a stretch on a running line runs over, in running order. */
    public static List<RouteSection> over(
            List<RouteSection> all,
            String routeCode,
            String runningLine,
            Direction direction,
            double fromMeasure,
            double toMeasure) {
        double low = Math.min(fromMeasure, toMeasure);
        double high = Math.max(fromMeasure, toMeasure);
        Comparator<RouteSection> rising = Comparator.comparing(RouteSection::fromMeasure);
        return all.stream()
                .filter(section -> section.routeCode().equals(routeCode) && section.direction() == direction)
                .filter(section -> section.isOnLine(runningLine) && section.covers(low, high) > 0)
                .sorted(direction == Direction.RISING ? rising : rising.reversed())
                .toList();
    }

    /** Returns how much of a stretch it covers, in the route's measure. */
    public double covers(double lowMeasure, double highMeasure) {
        return Math.max(0, Math.min(highMeasure, toMeasure) - Math.max(lowMeasure, fromMeasure));
    }
}
