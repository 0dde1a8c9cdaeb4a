package org.crosshead.stock;

import static org.crosshead.stock.RevisionTables.LOCOMOTIVE_CLASS;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.stock.LocomotiveClassDraft.ClassNote;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Classes of engines in the database. */
@Repository
class LocomotiveClassStore {

    private final JdbcClient jdbc;
    private final RevisionStore revisions;

    LocomotiveClassStore(JdbcClient jdbc, RevisionStore revisions) {
        this.jdbc = jdbc;
        this.revisions = revisions;
    }

    static Map<String, Object> columns(LocomotiveClassDraft draft) {
        return Map.of(
                "class_name", draft.name(),
                "description", draft.description(),
                "tender_engine", draft.tenderEngine(),
                "valve_family", draft.valveFamily().name(),
                "engine_brake", draft.engineBrake().name(),
                "train_brake", draft.trainBrake().name());
    }

    void insertNotes(long revisionId, List<ClassNote> notes) {
        for (int i = 0; i < notes.size(); i++) {
            jdbc.sql("insert into class_note (revision_id, note_order, topic, note_text) values (?, ?, ?, ?)")
                    .params(
                            revisionId,
                            i + 1,
                            notes.get(i).topic().name(),
                            notes.get(i).text())
                    .update();
        }
    }

    Optional<ClassRevision> current(String code) {
        return revisions.current(LOCOMOTIVE_CLASS, code, this::revision);
    }

    Optional<ClassRevision> revision(long id) {
        return revisions.revision(LOCOMOTIVE_CLASS, id, this::revision);
    }

    List<ClassRevision> all() {
        return revisions.all(LOCOMOTIVE_CLASS, this::revision);
    }

    List<ClassRevision> history(String code) {
        return revisions.history(LOCOMOTIVE_CLASS, code, this::revision);
    }

    private ClassRevision revision(ResultSet rs, int row) throws SQLException {
        long id = rs.getLong("id");
        List<FigureEntry> entries = revisions.figures(LOCOMOTIVE_CLASS, id);
        LocomotiveClassDraft content = new LocomotiveClassDraft(
                rs.getString("code"),
                rs.getString("class_name"),
                rs.getString("description"),
                rs.getBoolean("tender_engine"),
                ValveFamily.valueOf(rs.getString("valve_family")),
                BrakeKind.valueOf(rs.getString("engine_brake")),
                BrakeKind.valueOf(rs.getString("train_brake")),
                entries.stream().map(FigureEntry::figure).toList(),
                notes(id));
        return new ClassRevision(
                id,
                rs.getInt("revision_number"),
                RevisionStore.instant(rs, "made_at"),
                rs.getString("made_by"),
                rs.getString("reason"),
                content,
                entries);
    }

    private List<ClassNote> notes(long revisionId) {
        return jdbc.sql("select topic, note_text from class_note where revision_id = ? order by note_order")
                .param(revisionId)
                .query((rs, row) -> new ClassNote(NoteTopic.valueOf(rs.getString("topic")), rs.getString("note_text")))
                .list();
    }
}
