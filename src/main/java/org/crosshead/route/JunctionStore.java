package org.crosshead.route;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Junctions in the database. */
@Repository
class JunctionStore {

    private final JdbcClient jdbc;

    JunctionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<JunctionDraft> all() {
        return jdbc.sql("""
                        select j.*, a.code as route_code, b.code as other_route_code from junction j
                        join route a on a.id = j.route_id join route b on b.id = j.other_route_id
                        order by a.code, j.at_measure, b.code
                        """)
                .query((rs, row) -> new JunctionDraft(
                        rs.getString("junction_name"),
                        rs.getString("route_code"),
                        rs.getDouble("at_measure"),
                        rs.getString("other_route_code"),
                        rs.getDouble("other_measure")))
                .list();
    }

    long insert(JunctionDraft draft, RouteJournal.Stamp stamp) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into junction (junction_name, route_id, at_measure, other_route_id, other_measure,
                            entered_at, entered_by)
                        values (?, (select id from route where code = ?), ?, (select id from route where code = ?), ?,
                            ?, ?)
                        """)
                .params(draft.name(), draft.routeCode(), draft.atMeasure(), draft.otherRouteCode())
                .params(draft.otherMeasure(), RouteStore.sql(stamp.at()), stamp.by())
                .update(key, "id");
        return RouteStore.keyOf(key);
    }
}
