package org.crosshead.routeknowledge;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.crosshead.route.Direction;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** The table of sections; knows no rule. */
@Repository
class SectionStore {

    private final JdbcClient jdbc;

    SectionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    long insert(SectionDraft draft, @Nullable Long teacherId, String by) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into route_section (code, title, route_code, from_measure, to_measure, direction, band, hard,
                            teacher_id, entered_by, version)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1)
                        """)
                .params(draft.code(), draft.title(), draft.routeCode(), draft.fromMeasure(), draft.toMeasure())
                .params(draft.direction().name(), draft.band().name(), draft.hard())
                .param(teacherId)
                .param(by)
                .update(key, "id");
        return Objects.requireNonNull(key.getKey()).longValue();
    }

    /** Changes it; it must then be approved anew. */
    void update(long id, SectionDraft draft, @Nullable Long teacherId, String by) {
        jdbc.sql("""
                        update route_section set title = ?, route_code = ?, from_measure = ?, to_measure = ?, direction = ?, band = ?,
                            hard = ?, teacher_id = ?, entered_by = ?, approved_by = null, approved_at = null, version = version + 1
                        where id = ?
                        """)
                .params(draft.title(), draft.routeCode(), draft.fromMeasure(), draft.toMeasure())
                .params(draft.direction().name(), draft.band().name(), draft.hard())
                .param(teacherId)
                .params(by, id)
                .update();
    }

    /** Returns whether it was still of the version read. */
    boolean approve(long id, int version, String by, Instant at) {
        return jdbc.sql("update route_section set approved_by = ?, approved_at = ?, version = version + 1"
                                + " where id = ? and version = ? and approved_by is null")
                        .params(by, at.atOffset(ZoneOffset.UTC), id, version)
                        .update()
                == 1;
    }

    void close(long id, @Nullable LocalDate from) {
        jdbc.sql("update route_section set closed_from = ?, version = version + 1 where id = ?")
                .param(1, from)
                .param(2, id)
                .update();
    }

    Optional<RouteSection> find(String code) {
        return jdbc.sql("select * from route_section where code = ?")
                .param(code)
                .query(SectionStore::section)
                .optional();
    }

    List<RouteSection> all() {
        return jdbc.sql("select * from route_section order by route_code, direction desc, from_measure, code")
                .query(SectionStore::section)
                .list();
    }

    List<RouteSection> ofRoutes(Set<String> routeCodes) {
        return routeCodes.isEmpty()
                ? List.of()
                : jdbc.sql("select * from route_section where route_code in (:routes)"
                                + " order by route_code, direction desc, from_measure, code")
                        .param("routes", routeCodes)
                        .query(SectionStore::section)
                        .list();
    }

    private static RouteSection section(ResultSet rs, int row) throws SQLException {
        long teacher = rs.getLong("teacher_id");
        Long teacherId = rs.wasNull() ? null : Long.valueOf(teacher);
        @Nullable Date closed = rs.getDate("closed_from");
        return new RouteSection(
                rs.getLong("id"),
                rs.getString("code"),
                rs.getString("title"),
                rs.getString("route_code"),
                rs.getDouble("from_measure"),
                rs.getDouble("to_measure"),
                Direction.valueOf(rs.getString("direction")),
                Band.valueOf(rs.getString("band")),
                rs.getString("hard"),
                teacherId,
                rs.getString("entered_by"),
                rs.getString("approved_by"),
                closed == null ? null : closed.toLocalDate(),
                rs.getInt("version"));
    }
}
