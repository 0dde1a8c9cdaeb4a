package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of conductor drivers who are asked; knows no rule. */
@Repository
class ConductingStore {

    private static final String SELECT = "select * from conducting ";

    private final JdbcClient jdbc;

    ConductingStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Asks, in place of what was asked of the same people before. */
    void put(Conducting asked, Instant at) {
        jdbc.sql("delete from conducting where train_id = ? and driver_id = ? and conductor_id = ?")
                .params(asked.trainId(), asked.driverId(), asked.conductorId())
                .update();
        @Nullable Instant informed = asked.informedAt();
        jdbc.sql("""
                        insert into conducting (train_id, driver_id, conductor_id, permitted_case, informed_at, asked_by, asked_at, state)
                        values (?, ?, ?, ?, ?, ?, ?, 'ASKED')
                        """)
                .params(asked.trainId(), asked.driverId(), asked.conductorId())
                .param(asked.permitted().name())
                .param(informed == null ? null : informed.atOffset(ZoneOffset.UTC))
                .params(asked.askedBy(), at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Returns whether it was theirs to answer. */
    boolean answer(long id, long conductorId, Conducting.State state, Instant at) {
        return jdbc.sql("update conducting set state = ?, answered_at = ? where id = ? and conductor_id = ?")
                        .params(state.name(), at.atOffset(ZoneOffset.UTC), id, conductorId)
                        .update()
                == 1;
    }

    Optional<Conducting> find(long id) {
        return jdbc.sql(SELECT + "where id = ?")
                .param(id)
                .query(ConductingStore::conducting)
                .optional();
    }

    List<Conducting> of(long trainId) {
        return jdbc.sql(SELECT + "where train_id = ? order by id")
                .param(trainId)
                .query(ConductingStore::conducting)
                .list();
    }

    /** Returns what is asked of somebody and not answered yet. */
    List<Conducting> asked(long conductorId) {
        return jdbc.sql(SELECT + "where conductor_id = ? and state = 'ASKED' order by id")
                .param(conductorId)
                .query(ConductingStore::conducting)
                .list();
    }

    private static Conducting conducting(ResultSet rs, int row) throws SQLException {
        @Nullable OffsetDateTime informed = rs.getObject("informed_at", OffsetDateTime.class);
        return new Conducting(
                rs.getLong("id"),
                rs.getLong("train_id"),
                rs.getLong("driver_id"),
                rs.getLong("conductor_id"),
                Conducting.Case.valueOf(rs.getString("permitted_case")),
                informed == null ? null : informed.toInstant(),
                rs.getString("asked_by"),
                Conducting.State.valueOf(rs.getString("state")));
    }
}
