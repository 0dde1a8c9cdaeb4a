package org.crosshead.stock;

import static org.crosshead.stock.RevisionTables.ENGINE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Engines in the database. */
@Repository
class EngineStore {

    private final JdbcClient jdbc;
    private final RevisionStore revisions;

    EngineStore(JdbcClient jdbc, RevisionStore revisions) {
        this.jdbc = jdbc;
        this.revisions = revisions;
    }

    static Map<String, Object> columns(EngineDraft draft, long classId) {
        return Map.of("engine_name", draft.name(), "class_id", classId, "remarks", draft.remarks());
    }

    Optional<EngineRevision> current(String number) {
        return revisions.current(ENGINE, number, this::revision);
    }

    Optional<EngineRevision> revision(long id) {
        return revisions.revision(ENGINE, id, this::revision);
    }

    List<EngineRevision> all() {
        return revisions.all(ENGINE, this::revision);
    }

    private EngineRevision revision(ResultSet rs, int row) throws SQLException {
        long id = rs.getLong("id");
        List<FigureEntry> entries = revisions.figures(ENGINE, id);
        EngineDraft content = new EngineDraft(
                rs.getString("code"),
                rs.getString("engine_name"),
                classCode(rs.getLong("class_id")),
                rs.getString("remarks"),
                entries.stream().map(FigureEntry::figure).toList());
        return new EngineRevision(
                id,
                rs.getInt("revision_number"),
                RevisionStore.instant(rs, "made_at"),
                rs.getString("made_by"),
                rs.getString("reason"),
                content,
                entries);
    }

    private String classCode(long classId) {
        return jdbc.sql("select code from locomotive_class where id = ?")
                .param(classId)
                .query(String.class)
                .single();
    }
}
