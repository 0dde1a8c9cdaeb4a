package org.crosshead.platform.journal;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;

/** Reads the journal, newest first. */
@Service
public class JournalEntries {

    private final JdbcClient jdbc;

    JournalEntries(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns at most {@code count} entries older than the entry {@code beforeId}, which is not included. */
    @PreAuthorize("hasAnyRole('INSPECTOR', 'MANAGER', 'ASSESSOR', 'ADMINISTRATOR')")
    public List<JournalEntry> before(long beforeId, int count) {
        return jdbc.sql("""
                        select id, at, actor, kind, subject_type, subject_id, summary from journal
                        where id < :before order by id desc limit :count
                        """)
                .param("before", beforeId)
                .param("count", count)
                .query(JournalEntry.class)
                .list();
    }
}
