package org.crosshead.working;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.crew.Post;
import org.crosshead.route.Direction;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What belongs to a revision of a train, in running order: legs, calls, engines and crew. */
final class TrainParts {

    private static final int AT_ONCE = 1_000;

    private final JdbcClient jdbc;

    TrainParts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(long revisionId, TrainDraft draft) {
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

    /** What belongs to some revisions, by the id of each. */
    record Read(
            Map<Long, List<Leg>> legs,
            Map<Long, List<Call>> calls,
            Map<Long, List<EngineTurn>> engines,
            Map<Long, List<CrewSlot>> crew) {}

    /** Reads what belongs to some revisions, with four queries for every thousand of them. */
    Read read(List<Long> revisionIds) {
        return new Read(
                rows("train_leg", "leg_number", revisionIds, TrainParts::leg),
                rows("train_call", "call_number", revisionIds, TrainParts::call),
                rows("train_engine", "engine_order", revisionIds, TrainParts::engine),
                rows("train_crew_slot", "slot_number", revisionIds, TrainParts::slot));
    }

    private <T> Map<Long, List<T>> rows(String table, String order, List<Long> revisionIds, RowMapper<T> mapper) {
        Map<Long, List<T>> rows = new HashMap<>();
        for (int from = 0; from < revisionIds.size(); from += AT_ONCE) {
            jdbc.sql("select * from %s where revision_id in (:ids) order by revision_id, %s".formatted(table, order))
                    .param("ids", revisionIds.subList(from, Math.min(from + AT_ONCE, revisionIds.size())))
                    .query((rs, row) -> {
                        rows.computeIfAbsent(rs.getLong("revision_id"), key -> new ArrayList<>())
                                .add(mapper.mapRow(rs, row));
                        return row;
                    })
                    .list();
        }
        return rows;
    }

    private static Leg leg(ResultSet rs, int row) throws SQLException {
        return new Leg(
                rs.getString("route_code"),
                rs.getDouble("from_measure"),
                rs.getDouble("to_measure"),
                rs.getString("line_name"),
                Direction.valueOf(rs.getString("direction")),
                rs.getBoolean("tender_first"));
    }

    private static Call call(ResultSet rs, int row) throws SQLException {
        return new Call(
                rs.getInt("leg_number"),
                rs.getDouble("at_measure"),
                rs.getString("place"),
                rs.getBoolean("stops"),
                instant(rs, "arrival"),
                instant(rs, "departure"),
                rs.getBoolean("takes_water"));
    }

    private static EngineTurn engine(ResultSet rs, int row) throws SQLException {
        return new EngineTurn(
                rs.getString("engine_number"),
                EnginePosition.valueOf(rs.getString("engine_position")),
                rs.getString("from_place"),
                rs.getString("to_place"),
                rs.getDouble("pressure_psi_gauge"),
                rs.getDouble("glass_share"),
                rs.getObject("water_gallons", Double.class),
                rs.getObject("coal_cwt", Double.class));
    }

    private static CrewSlot slot(ResultSet rs, int row) throws SQLException {
        return new CrewSlot(
                rs.getString("staff_number"),
                Post.valueOf(rs.getString("crew_role")),
                rs.getString("engine_number"),
                rs.getString("from_place"),
                rs.getString("to_place"),
                instant(rs, "book_on"),
                instant(rs, "book_off"));
    }

    private static @Nullable Instant instant(ResultSet rs, String column) throws SQLException {
        OffsetDateTime moment = rs.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    private static @Nullable OffsetDateTime sqlOrNull(@Nullable Instant moment) {
        return moment == null ? null : moment.atOffset(ZoneOffset.UTC);
    }
}
