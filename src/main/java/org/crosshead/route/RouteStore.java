package org.crosshead.route;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Routes and their revisions in the database. */
@Repository
class RouteStore {

    private static final String REVISIONS =
            "select h.code, r.* from route h join route_revision r on r.head_id = h.id ";
    private static final String CURRENT = REVISIONS + "and r.revision_number = h.revision_count ";

    private final JdbcClient jdbc;
    private final RouteLists lists;

    RouteStore(JdbcClient jdbc, RouteLists lists) {
        this.jdbc = jdbc;
        this.lists = lists;
    }

    /** The row that stands for the route itself; number is its current revision, 0 while it is new. */
    record Head(long id, int number) {}

    /** Who makes a revision, when and why. */
    record Making(RouteJournal.Stamp stamp, String reason) {}

    Optional<Head> head(String code) {
        return jdbc.sql("select id, revision_count from route where code = ?")
                .param(code)
                .query((rs, row) -> new Head(rs.getLong("id"), rs.getInt("revision_count")))
                .optional();
    }

    Head insertHead(String code) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into route (code, revision_count) values (?, 0)")
                .param(code)
                .update(key, "id");
        return new Head(keyOf(key), 0);
    }

    /** Counts one revision more, unless somebody has done so since the head was read. */
    boolean advance(Head head) {
        return jdbc.sql("update route set revision_count = revision_count + 1 where id = ? and revision_count = ?")
                        .params(head.id(), head.number())
                        .update()
                == 1;
    }

    /** Stores the revision after the head's and returns its id. */
    long insertRevision(Head head, Making making, RouteDraft draft) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into route_revision (head_id, revision_number, made_at, made_by, reason, route_name,
                            measure_unit, rising_name, falling_name, from_measure, to_measure, estimates_accepted)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        head.id(),
                        head.number() + 1,
                        sql(making.stamp().at()),
                        making.stamp().by(),
                        making.reason())
                .params(draft.name(), draft.measureUnit().name(), draft.risingName(), draft.fallingName())
                .params(draft.fromMeasure(), draft.toMeasure(), draft.estimatesAccepted())
                .update(key, "id");
        long id = keyOf(key);
        lists.insert(id, draft);
        return id;
    }

    Optional<RouteRevision> current(String code) {
        return jdbc.sql(CURRENT + "where h.code = ?")
                .param(code)
                .query(RouteStore::bare)
                .optional()
                .map(this::filled);
    }

    Optional<RouteRevision> revision(long id) {
        return jdbc.sql(REVISIONS + "where r.id = ?")
                .param(id)
                .query(RouteStore::bare)
                .optional()
                .map(this::filled);
    }

    Optional<RouteRevision> revision(String code, int number) {
        return jdbc.sql(REVISIONS + "where h.code = ? and r.revision_number = ?")
                .params(code, number)
                .query(RouteStore::bare)
                .optional()
                .map(this::filled);
    }

    List<RouteSummary> all() {
        return jdbc.sql(CURRENT + "order by h.code")
                .query((rs, row) -> new RouteSummary(
                        rs.getString("code"),
                        rs.getString("route_name"),
                        rs.getLong("id"),
                        rs.getInt("revision_number"),
                        rs.getDouble("to_measure") - rs.getDouble("from_measure"),
                        MeasureUnit.valueOf(rs.getString("measure_unit"))))
                .list();
    }

    List<RevisionNote> history(String code) {
        return jdbc.sql(REVISIONS + "where h.code = ? order by r.revision_number desc")
                .param(code)
                .query((rs, row) -> new RevisionNote(
                        rs.getLong("id"),
                        rs.getInt("revision_number"),
                        instant(rs, "made_at"),
                        rs.getString("made_by"),
                        rs.getString("reason")))
                .list();
    }

    /** Returns what of the current revision places are checked against. */
    Optional<Extent> extent(String code) {
        return jdbc.sql(CURRENT + "where h.code = ?")
                .param(code)
                .query((rs, row) -> new Extent(
                        rs.getDouble("from_measure"),
                        rs.getDouble("to_measure"),
                        MeasureUnit.valueOf(rs.getString("measure_unit"))))
                .optional();
    }

    /** The row alone: its lists are read once the row's own result is closed, as they need the connection too. */
    private static RouteRevision bare(ResultSet rs, int row) throws SQLException {
        RouteDraft content = new RouteDraft(
                rs.getString("code"),
                rs.getString("route_name"),
                MeasureUnit.valueOf(rs.getString("measure_unit")),
                rs.getString("rising_name"),
                rs.getString("falling_name"),
                rs.getDouble("from_measure"),
                rs.getDouble("to_measure"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                rs.getBoolean("estimates_accepted"));
        return new RouteRevision(
                rs.getLong("id"),
                rs.getLong("head_id"),
                rs.getInt("revision_number"),
                instant(rs, "made_at"),
                rs.getString("made_by"),
                rs.getString("reason"),
                content);
    }

    private RouteRevision filled(RouteRevision bare) {
        RouteDraft head = bare.content();
        long id = bare.id();
        RouteDraft content = new RouteDraft(
                head.code(),
                head.name(),
                head.measureUnit(),
                head.risingName(),
                head.fallingName(),
                head.fromMeasure(),
                head.toMeasure(),
                lists.lines(id),
                lists.gradients(id),
                lists.curves(id),
                lists.limits(id),
                lists.features(id),
                head.estimatesAccepted());
        return new RouteRevision(
                id, bare.routeId(), bare.number(), bare.madeAt(), bare.madeBy(), bare.reason(), content);
    }

    static Instant instant(ResultSet rs, String column) throws SQLException {
        return rs.getObject(column, OffsetDateTime.class).toInstant();
    }

    static OffsetDateTime sql(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    static long keyOf(GeneratedKeyHolder key) {
        return Objects.requireNonNull(key.getKey()).longValue();
    }
}
