package org.crosshead.briefing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.HandPointDraft.Kind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Changes of plans by hand in the database; knows no rule. */
@Repository
public class HandPointStore {

    private final JdbcClient jdbc;

    HandPointStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    long insert(long trainId, HandPointDraft draft, Instant at, String by) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        HandSpot to = draft.to();
        jdbc.sql("""
                        insert into hand_point (train_id, hand_kind, route_code, route_measure, path_m, to_route_code,
                            to_route_measure, to_path_m, regulator, cutoff, hand_note, reason, entered_at, entered_by)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(trainId, draft.kind().name())
                .params(draft.at().routeCode(), draft.at().measure(), draft.at().pathM())
                .param(to == null ? null : to.routeCode())
                .param(to == null ? null : to.measure())
                .param(to == null ? null : to.pathM())
                .param(draft.regulator())
                .param(draft.cutoff())
                .params(draft.note(), draft.reason(), at.atOffset(ZoneOffset.UTC), by)
                .update(key, "id");
        return Objects.requireNonNull(key.getKey()).longValue();
    }

    /** Returns whether it was there for this train and not withdrawn before. */
    boolean withdraw(long trainId, long id, Instant at, String by) {
        return jdbc.sql("""
                                update hand_point set withdrawn_at = ?, withdrawn_by = ?
                                where id = ? and train_id = ? and withdrawn_at is null
                                """)
                        .params(at.atOffset(ZoneOffset.UTC), by, id, trainId)
                        .update()
                == 1;
    }

    /** Returns what holds for a train, in the order in which it was entered. */
    public List<HandPoint> of(long trainId) {
        return jdbc.sql("select * from hand_point where train_id = ? and withdrawn_at is null order by id")
                .param(trainId)
                .query(HandPointStore::point)
                .list();
    }

    private static HandPoint point(ResultSet rs, int row) throws SQLException {
        String toRoute = rs.getString("to_route_code");
        HandPointDraft draft = new HandPointDraft(
                Kind.valueOf(rs.getString("hand_kind")),
                new HandSpot(rs.getString("route_code"), rs.getDouble("route_measure"), rs.getDouble("path_m")),
                toRoute == null
                        ? null
                        : new HandSpot(toRoute, rs.getDouble("to_route_measure"), rs.getDouble("to_path_m")),
                number(rs, "regulator"),
                number(rs, "cutoff"),
                rs.getString("hand_note"),
                rs.getString("reason"));
        Instant enteredAt = rs.getObject("entered_at", OffsetDateTime.class).toInstant();
        return new HandPoint(rs.getLong("id"), draft, enteredAt, rs.getString("entered_by"));
    }

    private static @Nullable Double number(ResultSet rs, String column) throws SQLException {
        double value = rs.getDouble(column);
        return rs.wasNull() ? null : value;
    }
}
