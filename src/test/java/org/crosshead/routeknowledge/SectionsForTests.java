package org.crosshead.routeknowledge;

import java.time.Clock;
import org.crosshead.crew.People;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.route.Routes;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Opens the service of sections to tests of other packages. */
public final class SectionsForTests {

    private SectionsForTests() {}

    public static RouteSections on(
            JdbcClient jdbc, Routes routes, People people, Journal journal, CurrentActor actor, Clock clock) {
        return new RouteSections(new SectionStore(jdbc), routes, people, journal, actor, clock, event -> {});
    }
}
