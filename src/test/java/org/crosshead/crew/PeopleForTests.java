package org.crosshead.crew;

import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Opens the service of people to tests of other packages. */
public final class PeopleForTests {

    private PeopleForTests() {}

    public static People on(JdbcClient jdbc, Journal journal, CurrentActor actor) {
        return new People(new PersonStore(jdbc), journal, actor, event -> {});
    }
}
