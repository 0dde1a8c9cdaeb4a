package org.crosshead.competence;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.routeknowledge.LearningNeeds;

/**
 * How far a learner has come with the trips that are laid down.
 *
 * @param needs of this learner: of somebody whose knowledge lapsed not long ago the refresher trips alone
 * @param had counted since they last held it
 * @param refresher whether they held it not long ago
 */
public record Learned(LearningNeeds needs, LearningNeeds had, boolean refresher) {

    private static final Set<Kind> LESSONS = EnumSet.of(Kind.LEARNED, Kind.RODE, Kind.WORKED_CONDUCTED);
    private static final Set<Kind> DRIVEN = EnumSet.of(Kind.LEARNED, Kind.WORKED_CONDUCTED);
    private static final Set<Kind> HELD =
            EnumSet.of(Kind.WORKED, Kind.AUTHORISED, Kind.TAKEN_OVER, Kind.CARRIED_OVER, Kind.WITHDRAWN);

    /**
     * Counts.
     *
     * @param events of the person and subject that count
     * @param needs laid down for the subject
     * @param lapseMonths after the last turn worked
     * @param anewMonths after which somebody who lapsed learns as a beginner
     * @param day on which it is asked
     */
    static Learned of(
            List<CompetenceEvent> events, LearningNeeds needs, int lapseMonths, int anewMonths, LocalDate day) {
        Optional<CompetenceEvent> held = lastHeld(events, lapseMonths, day);
        LocalDate since = held.map(CompetenceEvent::day).orElse(LocalDate.MIN);
        boolean refresher = held.filter(event -> event.kind() != Kind.WITHDRAWN).isPresent()
                && !since.plusMonths(lapseMonths).plusMonths(anewMonths).isBefore(day);
        List<CompetenceEvent> lessons = events.stream()
                .filter(event -> LESSONS.contains(event.kind()))
                .filter(event -> event.day().isAfter(since) && !event.day().isAfter(day))
                .toList();
        LearningNeeds had = new LearningNeeds(
                lessons.size(),
                count(lessons, event -> event.circumstances().contains(Circumstance.DARK)),
                count(lessons, event -> DRIVEN.contains(event.kind())),
                count(lessons, event -> event.circumstances().contains(Circumstance.BAD_WEATHER)),
                0);
        LearningNeeds own = refresher ? new LearningNeeds(needs.refresher(), 0, 0, 0, needs.refresher()) : needs;
        return new Learned(own, had, refresher);
    }

    /** Returns the last event by which it was held until then, or withdrawn; work after it had lapsed, or before it was held, is none. */
    private static Optional<CompetenceEvent> lastHeld(List<CompetenceEvent> events, int lapseMonths, LocalDate day) {
        CompetenceEvent last = null;
        for (CompetenceEvent event : events.stream()
                .filter(event -> HELD.contains(event.kind()) && !event.day().isAfter(day))
                .sorted(Comparator.comparing(CompetenceEvent::day))
                .toList()) {
            boolean alive = last != null
                    && last.kind() != Kind.WITHDRAWN
                    && !event.day().isAfter(last.day().plusMonths(lapseMonths));
            if (event.kind() != Kind.WORKED || alive) {
                last = event;
            }
        }
        return Optional.ofNullable(last);
    }

    private static int count(List<CompetenceEvent> lessons, Predicate<CompetenceEvent> which) {
        return (int) lessons.stream().filter(which).count();
    }

    /** Says whether all trips that are laid down have been made. */
    public boolean isEnough() {
        return had.trips() >= needs.trips()
                && had.dark() >= needs.dark()
                && had.driven() >= needs.driven()
                && had.badWeather() >= needs.badWeather();
    }
}
