package org.crosshead.platform.journal;

import java.time.Clock;
import java.time.OffsetDateTime;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.Journal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Adds entries to the journal; outside a transaction it refuses, since an entry must stand or fall with its change. */
@Component
class DatabaseJournal implements Journal {

    private static final int SUMMARY_LENGTH_MAX = 1000;

    private final JdbcClient jdbc;
    private final Clock clock;
    private final CurrentActor actor;

    DatabaseJournal(JdbcClient jdbc, Clock clock, CurrentActor actor) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.actor = actor;
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void write(String kind, String subjectType, long subjectId, String summary) {
        Actor acting = actor.get();
        jdbc.sql("""
                        insert into journal (at, actor, account_id, kind, subject_type, subject_id, summary)
                        values (:at, :actor, :accountId, :kind, :subjectType, :subjectId, :summary)
                        """)
                .param("at", OffsetDateTime.now(clock))
                .param("actor", acting.name())
                .param("accountId", acting.accountId())
                .param("kind", kind)
                .param("subjectType", subjectType)
                .param("subjectId", subjectId)
                .param("summary", summary.substring(0, Math.min(summary.length(), SUMMARY_LENGTH_MAX)))
                .update();
    }
}
