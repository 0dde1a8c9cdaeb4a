package org.crosshead.route;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.springframework.stereotype.Component;

/** Says who changes a route and when, and writes the journal entry. Callers hold the transaction. */
@Component
class RouteJournal {

    private final Clock clock;
    private final CurrentActor actor;
    private final Journal journal;

    RouteJournal(Clock clock, CurrentActor actor, Journal journal) {
        this.clock = clock;
        this.actor = actor;
        this.journal = journal;
    }

    /** Who acts now. */
    record Stamp(Instant at, String by) {}

    /** Returns the present moment as exactly as both databases keep it. */
    Stamp stamp() {
        return new Stamp(
                clock.instant().truncatedTo(ChronoUnit.MICROS), actor.get().name());
    }

    /** Writes what was done to a thing, for example {@code revised} to a {@code route}. */
    void write(String subjectType, String change, long id, String summary) {
        journal.write(subjectType + "." + change, subjectType, id, summary);
    }
}
