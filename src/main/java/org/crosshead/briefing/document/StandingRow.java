package org.crosshead.briefing.document;

import java.util.List;

/**
 * A signal or station at which the train is not simply held by the engine's brake and started again.
 *
 * @param name as on the route
 * @param start how it can be started again, message {@code standing.<kind>}
 * @param hold how it is held, messages {@code standing.hold-<kind>}
 */
public record StandingRow(Place place, String name, Phrase start, List<Phrase> hold) {

    public StandingRow {
        hold = List.copyOf(hold);
    }
}
