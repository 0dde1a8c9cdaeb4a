package org.crosshead.stock;

import static org.crosshead.stock.RevisionTables.FORMATION;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Formations in the database. */
@Repository
class FormationStore {

    private final JdbcClient jdbc;
    private final RevisionStore revisions;

    FormationStore(JdbcClient jdbc, RevisionStore revisions) {
        this.jdbc = jdbc;
        this.revisions = revisions;
    }

    static Map<String, Object> columns(FormationDraft draft) {
        return Map.of("formation_name", draft.name());
    }

    void insertItems(long revisionId, List<FormationDraft.Item> items) {
        for (int i = 0; i < items.size(); i++) {
            FormationDraft.Item item = items.get(i);
            jdbc.sql("""
                            insert into formation_item (revision_id, item_order, kind_id, vehicle_count, load_tons,
                                vehicle_number, brake_working)
                            values (?, ?, (select id from vehicle_kind where code = ?), ?, ?, ?, ?)
                            """)
                    .param(revisionId)
                    .param(i + 1)
                    .param(item.vehicleKindCode())
                    .param(item.count())
                    .param(item.loadTons())
                    .param(item.vehicleNumber())
                    .param(item.brakeWorking())
                    .update();
        }
    }

    Optional<FormationRevision> current(String code) {
        return revisions.current(FORMATION, code, this::revision);
    }

    Optional<FormationRevision> revision(long id) {
        return revisions.revision(FORMATION, id, this::revision);
    }

    List<FormationRevision> all() {
        return revisions.all(FORMATION, this::revision);
    }

    private FormationRevision revision(ResultSet rs, int row) throws SQLException {
        long id = rs.getLong("id");
        return new FormationRevision(
                id,
                rs.getInt("revision_number"),
                RevisionStore.instant(rs, "made_at"),
                rs.getString("made_by"),
                rs.getString("reason"),
                new FormationDraft(rs.getString("code"), rs.getString("formation_name"), items(id)));
    }

    private List<FormationDraft.Item> items(long revisionId) {
        return jdbc.sql("""
                        select i.*, k.code as kind_code from formation_item i join vehicle_kind k on k.id = i.kind_id
                        where i.revision_id = ? order by i.item_order
                        """)
                .param(revisionId)
                .query((rs, row) -> new FormationDraft.Item(
                        rs.getString("kind_code"),
                        rs.getInt("vehicle_count"),
                        rs.getObject("load_tons", Double.class),
                        rs.getString("vehicle_number"),
                        rs.getBoolean("brake_working")))
                .list();
    }
}
