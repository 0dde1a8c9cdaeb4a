package org.crosshead.stock;

import static org.crosshead.stock.RevisionTables.VEHICLE_KIND;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.springframework.stereotype.Repository;

/** Kinds of vehicles in the database. */
@Repository
class VehicleKindStore {

    private final RevisionStore revisions;

    VehicleKindStore(RevisionStore revisions) {
        this.revisions = revisions;
    }

    static Map<String, Object> columns(VehicleKindDraft draft) {
        return Map.of(
                "kind_name", draft.name(),
                "family", draft.family().name(),
                "brake", draft.brake().name(),
                "bearing", draft.bearing().name());
    }

    Optional<VehicleKindRevision> current(String code) {
        return revisions.current(VEHICLE_KIND, code, this::revision);
    }

    Optional<VehicleKindRevision> revision(long id) {
        return revisions.revision(VEHICLE_KIND, id, this::revision);
    }

    List<VehicleKindRevision> all() {
        return revisions.all(VEHICLE_KIND, this::revision);
    }

    private VehicleKindRevision revision(ResultSet rs, int row) throws SQLException {
        long id = rs.getLong("id");
        List<FigureEntry> entries = revisions.figures(VEHICLE_KIND, id);
        VehicleKindDraft content = new VehicleKindDraft(
                rs.getString("code"),
                rs.getString("kind_name"),
                ResistanceFamily.valueOf(rs.getString("family")),
                BrakeKind.valueOf(rs.getString("brake")),
                Bearing.valueOf(rs.getString("bearing")),
                entries.stream().map(FigureEntry::figure).toList());
        return new VehicleKindRevision(
                id,
                rs.getInt("revision_number"),
                RevisionStore.instant(rs, "made_at"),
                rs.getString("made_by"),
                rs.getString("reason"),
                content,
                entries);
    }
}
