package org.crosshead.working;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Trains and their revisions in the database; knows no rule. */
@Repository
class TrainStore {

    private static final String SELECT_TRAIN = """
            select t.id, t.version, t.code, t.running_day, t.cancelled, r.id as revision_id, r.revision_number, r.made_at,
                r.made_by, r.reason, r.title, r.train_kind, r.formation_code, r.rail_state, r.weather, r.dark, r.heated
            from train t join train_revision r on r.train_id = t.id
            """;

    private final JdbcClient jdbc;
    private final TrainParts parts;

    TrainStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.parts = new TrainParts(jdbc);
    }

    long insertTrain(TrainDraft draft) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql(
                        "insert into train (version, code, running_day, cancelled, current_revision) values (1, ?, ?, false, 0)")
                .params(draft.code(), draft.day())
                .update(key, "id");
        return keyOf(key);
    }

    /** Moves the train on by one version, unless it has moved meanwhile. */
    boolean advance(long id, long version, TrainDraft draft) {
        return jdbc.sql(
                                "update train set version = version + 1, code = ?, running_day = ? where id = ? and version = ? and not cancelled")
                        .params(draft.code(), draft.day(), id, version)
                        .update()
                == 1;
    }

    boolean cancel(long id, long version) {
        return jdbc.sql(
                                "update train set version = version + 1, cancelled = true where id = ? and version = ? and not cancelled")
                        .params(id, version)
                        .update()
                == 1;
    }

    long insertRevision(long trainId, TrainDraft draft, Instant madeAt, String madeBy, String reason) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into train_revision (train_id, revision_number, made_at, made_by, reason, title, train_kind,
                            formation_code, rail_state, weather, dark, heated)
                        values (:train, (select coalesce(max(o.revision_number), 0) + 1 from train_revision o
                            where o.train_id = :train), :at, :by, :reason, :title, :kind, :formation, :rail, :weather, :dark, :heated)
                        """)
                .param("train", trainId)
                .param("at", sql(madeAt))
                .param("by", madeBy)
                .param("reason", reason)
                .param("title", draft.title())
                .param("kind", draft.kind().name())
                .param("formation", draft.formationCode())
                .param("rail", draft.rail().name())
                .param("weather", draft.weather())
                .param("dark", draft.dark())
                .param("heated", draft.heated())
                .update(key, "id");
        long revisionId = keyOf(key);
        parts.insert(revisionId, draft);
        jdbc.sql("update train set current_revision = ? where id = ?")
                .params(revisionId, trainId)
                .update();
        return revisionId;
    }

    Optional<Train> current(long id) {
        return whole(jdbc.sql(SELECT_TRAIN + " and r.id = t.current_revision where t.id = ?")
                        .param(id))
                .stream()
                .findFirst();
    }

    List<Train> history(long id) {
        return whole(jdbc.sql(SELECT_TRAIN + " where t.id = ? order by r.revision_number desc")
                .param(id));
    }

    Optional<Long> idOf(String code, LocalDate day) {
        return jdbc.sql("select id from train where code = ? and running_day = ?")
                .params(code, day)
                .query(Long.class)
                .optional();
    }

    /** Returns the trains of these days, both included, in the order of days and codes. */
    List<Train> between(LocalDate firstDay, LocalDate lastDay) {
        return whole(jdbc.sql(
                        SELECT_TRAIN
                                + " and r.id = t.current_revision where t.running_day between ? and ? order by t.running_day, t.code")
                .params(firstDay, lastDay));
    }

    /** Returns the trains of a query with all that belongs to them, read at once for all. */
    private List<Train> whole(JdbcClient.StatementSpec query) {
        List<Train> heads = query.query(TrainStore::head).list();
        TrainParts.Read read = parts.read(heads.stream().map(Train::revisionId).toList());
        return heads.stream().map(head -> whole(head, read)).toList();
    }

    private static Train whole(Train head, TrainParts.Read read) {
        TrainDraft content = head.content();
        long revisionId = head.revisionId();
        return new Train(
                head.id(),
                head.version(),
                head.cancelled(),
                revisionId,
                head.revision(),
                head.madeAt(),
                head.madeBy(),
                head.reason(),
                new TrainDraft(
                        content.code(),
                        content.title(),
                        content.day(),
                        content.kind(),
                        content.formationCode(),
                        content.rail(),
                        content.weather(),
                        content.dark(),
                        content.heated(),
                        read.legs().getOrDefault(revisionId, List.of()),
                        read.calls().getOrDefault(revisionId, List.of()),
                        read.engines().getOrDefault(revisionId, List.of()),
                        read.crew().getOrDefault(revisionId, List.of())));
    }

    /** Returns a train without what belongs to it. */
    private static Train head(ResultSet rs, int row) throws SQLException {
        long revisionId = rs.getLong("revision_id");
        TrainDraft content = new TrainDraft(
                rs.getString("code"),
                rs.getString("title"),
                rs.getObject("running_day", LocalDate.class),
                TrainKind.valueOf(rs.getString("train_kind")),
                rs.getString("formation_code"),
                RailState.valueOf(rs.getString("rail_state")),
                rs.getString("weather"),
                rs.getBoolean("dark"),
                rs.getBoolean("heated"),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new Train(
                rs.getLong("id"),
                rs.getLong("version"),
                rs.getBoolean("cancelled"),
                revisionId,
                rs.getInt("revision_number"),
                rs.getObject("made_at", OffsetDateTime.class).toInstant(),
                rs.getString("made_by"),
                rs.getString("reason"),
                content);
    }

    private static OffsetDateTime sql(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static long keyOf(GeneratedKeyHolder key) {
        return Objects.requireNonNull(key.getKey()).longValue();
    }
}
