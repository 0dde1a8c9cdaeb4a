package org.crosshead.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.platform.Origin;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** What the revisions of every kind of stock have in common in the database. Table and column names are constants. */
@Repository
class RevisionStore {

    private final JdbcClient jdbc;

    RevisionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The row that stands for the thing itself; number is its current revision, 0 while it is new. */
    record Head(long id, int number) {}

    Optional<Head> head(RevisionTables tables, String code) {
        return jdbc.sql("select id, revision_count from " + tables.head + " where code = ?")
                .param(code)
                .query((rs, row) -> new Head(rs.getLong("id"), rs.getInt("revision_count")))
                .optional();
    }

    Head insertHead(RevisionTables tables, String code) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into " + tables.head + " (code, revision_count) values (?, 0)")
                .param(code)
                .update(key, "id");
        return new Head(keyOf(key), 0);
    }

    /** Counts one revision more, unless somebody has done so since the head was read. */
    boolean advance(RevisionTables tables, Head head) {
        return jdbc.sql("update " + tables.head
                                + " set revision_count = revision_count + 1 where id = ? and revision_count = ?")
                        .params(head.id(), head.number())
                        .update()
                == 1;
    }

    /** Stores the revision after the head's and returns its id. */
    long insertRevision(RevisionTables tables, Head head, Stamp stamp, Map<String, Object> content) {
        Map<String, Object> columns = new LinkedHashMap<>(content);
        columns.put("head_id", head.id());
        columns.put("revision_number", head.number() + 1);
        columns.put("made_at", sql(stamp.at()));
        columns.put("made_by", stamp.by());
        columns.put("reason", stamp.reason());
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into " + tables.revision + " (" + String.join(", ", columns.keySet()) + ") values (:"
                        + String.join(", :", columns.keySet()) + ")")
                .params(columns)
                .update(key, "id");
        return keyOf(key);
    }

    void insertFigures(RevisionTables tables, long revisionId, List<FigureEntry> entries) {
        for (FigureEntry entry : entries) {
            SourcedFigure figure = entry.figure();
            jdbc.sql("insert into " + tables.figures
                            + " (revision_id, figure_key, figure_value, unit, origin, note, accepted,"
                            + " entered_at, entered_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .param(revisionId)
                    .param(figure.key())
                    .param(figure.value())
                    .param(figure.unit())
                    .param(figure.origin().name())
                    .param(figure.note())
                    .param(figure.accepted())
                    .param(sql(entry.enteredAt()))
                    .param(entry.enteredBy())
                    .update();
        }
    }

    List<FigureEntry> figures(RevisionTables tables, long revisionId) {
        return jdbc.sql("select * from " + tables.figures + " where revision_id = ? order by figure_key")
                .param(revisionId)
                .query((rs, row) -> entry(rs))
                .list();
    }

    List<FigureEntry> currentFigures(RevisionTables tables, long headId) {
        return jdbc.sql("select f.* from " + tables.head + " h join " + tables.revision
                        + " r on r.head_id = h.id and r.revision_number = h.revision_count join " + tables.figures
                        + " f on f.revision_id = r.id where h.id = ?")
                .param(headId)
                .query((rs, row) -> entry(rs))
                .list();
    }

    <T> Optional<T> current(RevisionTables tables, String code, RowMapper<T> mapper) {
        return jdbc.sql(select(tables) + " and r.revision_number = h.revision_count where h.code = ?")
                .param(code)
                .query(mapper)
                .optional();
    }

    <T> Optional<T> revision(RevisionTables tables, long id, RowMapper<T> mapper) {
        return jdbc.sql(select(tables) + " where r.id = ?")
                .param(id)
                .query(mapper)
                .optional();
    }

    <T> List<T> all(RevisionTables tables, RowMapper<T> mapper) {
        return jdbc.sql(select(tables) + " and r.revision_number = h.revision_count order by h.code")
                .query(mapper)
                .list();
    }

    <T> List<T> history(RevisionTables tables, String code, RowMapper<T> mapper) {
        return jdbc.sql(select(tables) + " where h.code = ? order by r.revision_number desc")
                .param(code)
                .query(mapper)
                .list();
    }

    static Instant instant(ResultSet rs, String column) throws SQLException {
        return rs.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static String select(RevisionTables tables) {
        return "select h.code, r.* from " + tables.head + " h join " + tables.revision + " r on r.head_id = h.id";
    }

    private static FigureEntry entry(ResultSet rs) throws SQLException {
        SourcedFigure figure = new SourcedFigure(
                rs.getString("figure_key"),
                rs.getObject("figure_value", Double.class),
                rs.getString("unit"),
                Origin.valueOf(rs.getString("origin")),
                rs.getString("note"),
                rs.getBoolean("accepted"));
        return new FigureEntry(figure, instant(rs, "entered_at"), rs.getString("entered_by"));
    }

    private static OffsetDateTime sql(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static long keyOf(GeneratedKeyHolder key) {
        return Objects.requireNonNull(key.getKey()).longValue();
    }
}
