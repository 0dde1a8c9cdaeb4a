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
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Trains and their revisions in the database; knows no rule. */
@Repository
class TrainStore {

    private static final String SELECT_TRAIN = """
            select t.id, t.version, t.code, t.running_day, t.cancelled, r.id as revision_id, r.revision_number, r.made_at,
                r.made_by, r.reason, r.title, r.train_kind, r.formation_code, r.rail_state, r.weather, r.dark
            from train t join train_revision r on r.train_id = t.id
            """;

    private final JdbcClient jdbc;

    TrainStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
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
                            formation_code, rail_state, weather, dark)
                        values (:train, (select coalesce(max(o.revision_number), 0) + 1 from train_revision o
                            where o.train_id = :train), :at, :by, :reason, :title, :kind, :formation, :rail, :weather, :dark)
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
                .update(key, "id");
        long revisionId = keyOf(key);
        insertParts(revisionId, draft);
        jdbc.sql("update train set current_revision = ? where id = ?")
                .params(revisionId, trainId)
                .update();
        return revisionId;
    }

    private void insertParts(long revisionId, TrainDraft draft) {
        for (int i = 0; i < draft.legs().size(); i++) {
            insertLeg(revisionId, i + 1, draft.legs().get(i));
        }
        for (int i = 0; i < draft.calls().size(); i++) {
            insertCall(revisionId, i + 1, draft.calls().get(i));
        }
        for (int i = 0; i < draft.engines().size(); i++) {
            insertEngine(revisionId, i + 1, draft.engines().get(i));
        }
        for (int i = 0; i < draft.crew().size(); i++) {
            insertSlot(revisionId, i + 1, draft.crew().get(i));
        }
    }

    private void insertLeg(long revisionId, int number, Leg leg) {
        jdbc.sql("""
                        insert into train_leg (revision_id, leg_number, route_code, from_measure, to_measure, line_name,
                            direction, tender_first) values (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        revisionId,
                        number,
                        leg.routeCode(),
                        leg.fromMeasure(),
                        leg.toMeasure(),
                        leg.line(),
                        leg.direction().name(),
                        leg.tenderFirst())
                .update();
    }

    private void insertCall(long revisionId, int number, Call call) {
        jdbc.sql("""
                        insert into train_call (revision_id, call_number, leg_number, at_measure, place, stops, arrival,
                            departure, takes_water) values (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(revisionId)
                .param(number)
                .param(call.legNumber())
                .param(call.atMeasure())
                .param(call.place())
                .param(call.stops())
                .param(sqlOrNull(call.arrival()))
                .param(sqlOrNull(call.departure()))
                .param(call.takesWater())
                .update();
    }

    private void insertEngine(long revisionId, int number, EngineTurn engine) {
        jdbc.sql("""
                        insert into train_engine (revision_id, engine_order, engine_number, engine_position, from_place,
                            to_place, pressure_psi_gauge, glass_share, water_gallons, coal_cwt)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(revisionId)
                .param(number)
                .param(engine.engineNumber())
                .param(engine.position().name())
                .param(engine.fromPlace())
                .param(engine.toPlace())
                .param(engine.pressurePsi())
                .param(engine.glassShare())
                .param(engine.waterGallons())
                .param(engine.coalCwt())
                .update();
    }

    private void insertSlot(long revisionId, int number, CrewSlot slot) {
        jdbc.sql("""
                        insert into train_crew_slot (revision_id, slot_number, staff_number, crew_role, engine_number,
                            from_place, to_place, book_on, book_off) values (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(revisionId)
                .param(number)
                .param(slot.staffNumber())
                .param(slot.role().name())
                .param(slot.engineNumber())
                .param(slot.fromPlace())
                .param(slot.toPlace())
                .param(sqlOrNull(slot.bookOn()))
                .param(sqlOrNull(slot.bookOff()))
                .update();
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
                legs(revisionId),
                calls(revisionId),
                engines(revisionId),
                slots(revisionId));
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

    private List<Leg> legs(long revisionId) {
        return jdbc.sql("select * from train_leg where revision_id = ? order by leg_number")
                .param(revisionId)
                .query((rs, row) -> new Leg(
                        rs.getString("route_code"),
                        rs.getDouble("from_measure"),
                        rs.getDouble("to_measure"),
                        rs.getString("line_name"),
                        Direction.valueOf(rs.getString("direction")),
                        rs.getBoolean("tender_first")))
                .list();
    }

    private List<Call> calls(long revisionId) {
        return jdbc.sql("select * from train_call where revision_id = ? order by call_number")
                .param(revisionId)
                .query((rs, row) -> new Call(
                        rs.getInt("leg_number"),
                        rs.getDouble("at_measure"),
                        rs.getString("place"),
                        rs.getBoolean("stops"),
                        instant(rs, "arrival"),
                        instant(rs, "departure"),
                        rs.getBoolean("takes_water")))
                .list();
    }

    private List<EngineTurn> engines(long revisionId) {
        return jdbc.sql("select * from train_engine where revision_id = ? order by engine_order")
                .param(revisionId)
                .query((rs, row) -> new EngineTurn(
                        rs.getString("engine_number"),
                        EnginePosition.valueOf(rs.getString("engine_position")),
                        rs.getString("from_place"),
                        rs.getString("to_place"),
                        rs.getDouble("pressure_psi_gauge"),
                        rs.getDouble("glass_share"),
                        rs.getObject("water_gallons", Double.class),
                        rs.getObject("coal_cwt", Double.class)))
                .list();
    }

    private List<CrewSlot> slots(long revisionId) {
        return jdbc.sql("select * from train_crew_slot where revision_id = ? order by slot_number")
                .param(revisionId)
                .query((rs, row) -> new CrewSlot(
                        rs.getString("staff_number"),
                        Post.valueOf(rs.getString("crew_role")),
                        rs.getString("engine_number"),
                        rs.getString("from_place"),
                        rs.getString("to_place"),
                        instant(rs, "book_on"),
                        instant(rs, "book_off")))
                .list();
    }

    private static @Nullable Instant instant(ResultSet rs, String column) throws SQLException {
        OffsetDateTime moment = rs.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    private static OffsetDateTime sql(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static @Nullable OffsetDateTime sqlOrNull(@Nullable Instant moment) {
        return moment == null ? null : sql(moment);
    }

    private static long keyOf(GeneratedKeyHolder key) {
        return Objects.requireNonNull(key.getKey()).longValue();
    }
}
