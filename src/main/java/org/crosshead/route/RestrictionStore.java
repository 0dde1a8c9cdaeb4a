package org.crosshead.route;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Temporary restrictions in the database. */
@Repository
class RestrictionStore {

    private static final String SELECT =
            "select t.*, h.code as route_code from restriction t join route h on h.id = t.route_id ";
    private static final String ORDER = " order by t.first_moment, h.code, t.from_measure, t.id";

    private final JdbcClient jdbc;

    RestrictionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    long insert(RestrictionDraft draft, RouteJournal.Stamp stamp) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into restriction (restriction_number, route_id, from_measure, to_measure, speed_limit,
                            limit_unit, direction_scope, first_moment, last_moment, reason, entered_at, entered_by)
                        values (?, (select id from route where code = ?), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(draft.number(), draft.routeCode(), draft.fromMeasure(), draft.toMeasure())
                .params(draft.limit(), draft.limitUnit().name(), draft.scope().name())
                .params(RouteStore.sql(draft.firstMoment()), RouteStore.sql(draft.lastMoment()), draft.reason())
                .params(RouteStore.sql(stamp.at()), stamp.by())
                .update(key, "id");
        return RouteStore.keyOf(key);
    }

    /** Returns whether it was there and not withdrawn before. */
    boolean withdraw(long id, String reason, RouteJournal.Stamp stamp) {
        return jdbc.sql("""
                                update restriction set withdrawn_at = ?, withdrawn_by = ?, withdrawn_reason = ?
                                where id = ? and withdrawn_at is null
                                """)
                        .params(RouteStore.sql(stamp.at()), stamp.by(), reason, id)
                        .update()
                == 1;
    }

    Optional<Restriction> find(long id) {
        return jdbc.sql(SELECT + "where t.id = ?")
                .param(id)
                .query(RestrictionStore::restriction)
                .optional();
    }

    List<Restriction> all() {
        return jdbc.sql(SELECT + ORDER).query(RestrictionStore::restriction).list();
    }

    List<Restriction> inForce(String routeCode, Instant from, Instant to) {
        return jdbc.sql(SELECT + """
                        where h.code = ? and t.first_moment <= ? and t.last_moment >= ?
                            and (t.withdrawn_at is null or t.withdrawn_at > ?)
                        """ + ORDER)
                .params(routeCode, RouteStore.sql(to), RouteStore.sql(from), RouteStore.sql(from))
                .query(RestrictionStore::restriction)
                .list();
    }

    private static Restriction restriction(ResultSet rs, int row) throws SQLException {
        RestrictionDraft draft = new RestrictionDraft(
                rs.getString("restriction_number"),
                rs.getString("route_code"),
                rs.getDouble("from_measure"),
                rs.getDouble("to_measure"),
                rs.getDouble("speed_limit"),
                SpeedUnit.valueOf(rs.getString("limit_unit")),
                Scope.valueOf(rs.getString("direction_scope")),
                RouteStore.instant(rs, "first_moment"),
                RouteStore.instant(rs, "last_moment"),
                rs.getString("reason"));
        OffsetDateTime withdrawnAt = rs.getObject("withdrawn_at", OffsetDateTime.class);
        return new Restriction(
                rs.getLong("id"),
                draft,
                RouteStore.instant(rs, "entered_at"),
                rs.getString("entered_by"),
                withdrawnAt == null ? null : withdrawnAt.toInstant());
    }
}
