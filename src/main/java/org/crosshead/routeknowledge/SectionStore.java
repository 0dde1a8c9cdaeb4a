package org.crosshead.routeknowledge;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private static final String IN_ORDER = " order by closed_from, id";

    private final JdbcClient jdbc;

    SectionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    long insert(SectionDraft draft, @Nullable Long teacherId, String by) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into route_section (code, title, route_code, from_measure, to_measure, direction, band, hard,
                            teacher_id, entered_by, line_name, trips_least, dark_least, driven_least, weather_least,
                            refresher_least, version)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1)
                        """)
                .params(draft.code(), draft.title(), draft.routeCode(), draft.fromMeasure(), draft.toMeasure())
                .params(draft.direction().name(), draft.band().name(), draft.hard())
                .param(teacherId)
                .params(by, draft.line())
                .params(needs(draft.needs()))
                .update(key, "id");
        return Objects.requireNonNull(key.getKey()).longValue();
    }

    /** Changes it; it must then be approved anew. */
    void update(long id, SectionDraft draft, @Nullable Long teacherId, String by) {
        jdbc.sql("""
                        update route_section set title = ?, route_code = ?, from_measure = ?, to_measure = ?, direction = ?, band = ?,
                            hard = ?, teacher_id = ?, entered_by = ?, line_name = ?, trips_least = ?, dark_least = ?,
                            driven_least = ?, weather_least = ?, refresher_least = ?,
                            approved_by = null, approved_at = null, version = version + 1
                        where id = ?
                        """)
                .params(draft.title(), draft.routeCode(), draft.fromMeasure(), draft.toMeasure())
                .params(draft.direction().name(), draft.band().name(), draft.hard())
                .param(teacherId)
                .params(by, draft.line())
                .params(needs(draft.needs()))
                .param(id)
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

    private static List<Object> needs(LearningNeeds needs) {
        return List.of(needs.trips(), needs.dark(), needs.driven(), needs.badWeather(), needs.refresher());
    }

    /** Closes it; returns whether it was open. */
    boolean close(long id, LocalDate from, String by) {
        if (!counted(id)) {
            return false;
        }
        boolean open = jdbc.sql("select count(*) from section_closure where section_id = ? and reopened_on is null")
                        .param(id)
                        .query(Integer.class)
                        .single()
                == 0;
        if (open) {
            jdbc.sql("insert into section_closure (section_id, closed_from, closed_by) values (?, ?, ?)")
                    .params(id, from, by)
                    .update();
        }
        return open;
    }

    /** Opens it again; returns whether it was closed. */
    boolean reopen(long id, Closure closure, String by) {
        return counted(id)
                && jdbc.sql("""
                                update section_closure set reopened_on = ?, reopened_by = ?, learn_anew = ?, proved_on = ?,
                                    proved_by = ?, changes = ?
                                where section_id = ? and reopened_on is null
                                """)
                                .param(closure.reopenedOn())
                                .param(by)
                                .param(closure.learnAnew())
                                .param(closure.provedOn())
                                .param(closure.provedBy())
                                .params(closure.changes(), id)
                                .update()
                        == 1;
    }

    /** Counts a change, which lets nobody else change it until the transaction ends. */
    private boolean counted(long id) {
        return jdbc.sql("update route_section set version = version + 1 where id = ?")
                        .param(id)
                        .update()
                == 1;
    }

    Optional<RouteSection> find(String code) {
        Map<Long, List<Closure>> closures = closures(jdbc.sql(
                        "select * from section_closure where section_id = (select id from route_section where code = ?)"
                                + IN_ORDER)
                .param(code));
        return jdbc.sql("select * from route_section where code = ?")
                .param(code)
                .query((rs, row) -> section(rs, closures))
                .optional();
    }

    List<RouteSection> all() {
        Map<Long, List<Closure>> closures = closures(jdbc.sql("select * from section_closure" + IN_ORDER));
        return jdbc.sql("select * from route_section order by route_code, direction desc, from_measure, code")
                .query((rs, row) -> section(rs, closures))
                .list();
    }

    /** Returns closures by section, in order of their days. */
    private static Map<Long, List<Closure>> closures(JdbcClient.StatementSpec select) {
        Map<Long, List<Closure>> closures = new HashMap<>();
        select.query(rs -> {
            closures.computeIfAbsent(rs.getLong("section_id"), id -> new ArrayList<>())
                    .add(closure(rs));
        });
        return closures;
    }

    private static Closure closure(ResultSet rs) throws SQLException {
        long provedBy = rs.getLong("proved_by");
        Long prover = rs.wasNull() ? null : Long.valueOf(provedBy);
        return new Closure(
                rs.getObject("closed_from", LocalDate.class),
                rs.getObject("reopened_on", LocalDate.class),
                rs.getBoolean("learn_anew"),
                rs.getObject("proved_on", LocalDate.class),
                prover,
                rs.getString("changes"));
    }

    List<RouteSection> ofRoutes(Set<String> routeCodes) {
        return where("route_code", routeCodes);
    }

    List<RouteSection> ofCodes(Set<String> codes) {
        return where("code", codes);
    }

    private List<RouteSection> where(String column, Set<String> values) {
        if (values.isEmpty()) {
            return List.of();
        }
        Map<Long, List<Closure>> closures = closures(jdbc.sql("select * from section_closure" + IN_ORDER));
        return jdbc.sql("select * from route_section where " + column + " in (:values)"
                        + " order by route_code, direction desc, from_measure, code")
                .param("values", values)
                .query((rs, row) -> section(rs, closures))
                .list();
    }

    private static RouteSection section(ResultSet rs, Map<Long, List<Closure>> closures) throws SQLException {
        long teacher = rs.getLong("teacher_id");
        Long teacherId = rs.wasNull() ? null : Long.valueOf(teacher);
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
                rs.getInt("version"),
                rs.getString("line_name"),
                new LearningNeeds(
                        rs.getInt("trips_least"),
                        rs.getInt("dark_least"),
                        rs.getInt("driven_least"),
                        rs.getInt("weather_least"),
                        rs.getInt("refresher_least")),
                closures.getOrDefault(rs.getLong("id"), List.of()));
    }
}
