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
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
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
        return jdbc.sql(SELECT_TRAIN + " and r.id = t.current_revision where t.id = ?")
                .param(id)
                .query((rs, row) -> train(rs))
                .optional();
    }

    List<Train> history(long id) {
        return jdbc.sql(SELECT_TRAIN + " where t.id = ? order by r.revision_number desc")
                .param(id)
                .query((rs, row) -> train(rs))
                .list();
    }

    Optional<Long> idOf(String code, LocalDate day) {
        return jdbc.sql("select id from train where code = ? and running_day = ?")
                .params(code, day)
                .query(Long.class)
                .optional();
    }

    List<TrainSummary> between(LocalDate firstDay, LocalDate lastDay) {
        return jdbc.sql(
                        SELECT_TRAIN
                                + " and r.id = t.current_revision where t.running_day between ? and ? order by t.running_day, t.code")
                .params(firstDay, lastDay)
                .query((rs, row) -> summary(rs))
                .list();
    }

    private TrainSummary summary(ResultSet rs) throws SQLException {
        Train train = train(rs);
        TrainDraft content = train.content();
        Call first = content.calls().get(0);
        Call last = content.calls().get(content.calls().size() - 1);
        return new TrainSummary(
                train.id(),
                content.code(),
                content.day(),
                content.title(),
                train.cancelled(),
                first.place(),
                Objects.requireNonNull(first.departure()),
                last.place(),
                Objects.requireNonNull(last.arrival()),
                content.formationCode(),
                content.engines().stream().map(EngineTurn::engineNumber).toList(),
                content.crew().stream().map(CrewSlot::staffNumber).toList());
    }

    private Train train(ResultSet rs) throws SQLException {
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
                parts.legs(revisionId),
                parts.calls(revisionId),
                parts.engines(revisionId),
                parts.slots(revisionId));
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
