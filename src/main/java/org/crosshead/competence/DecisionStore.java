package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.crosshead.competence.Decision.Occasion;
import org.crosshead.competence.PermitRules.Asked;
import org.crosshead.competence.PermitRules.Declined;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** The tables of decisions, to which rows are only ever added, and of what a crew says they do not sign. */
@Repository
class DecisionStore {

    private static final String SELECT = "select * from permit_decision ";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    DecisionStore(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** What is stored of a decision besides when, by whom and why. */
    private record Content(String train, Asked asked, Permit permit) {}

    void insert(long trainId, Instant at, String by, Occasion occasion, String train, Asked asked, Permit permit) {
        jdbc.sql("insert into permit_decision (train_id, decided_at, decided_by, occasion, answer, content)"
                        + " values (?, ?, ?, ?, ?, ?)")
                .params(trainId, at.atOffset(ZoneOffset.UTC), by, occasion.name())
                .params(permit.answer().name(), json.writeValueAsString(new Content(train, asked.kept(), permit)))
                .update();
    }

    /** Returns a train's decisions, the latest first. */
    List<Decision> of(long trainId) {
        return jdbc.sql(SELECT + "where train_id = ? order by id desc")
                .param(trainId)
                .query(this::decision)
                .list();
    }

    Optional<Decision> latest(long trainId) {
        return jdbc.sql(SELECT + "where train_id = ? order by id desc limit 1")
                .param(trainId)
                .query(this::decision)
                .optional();
    }

    private Decision decision(ResultSet rs, int row) throws SQLException {
        Content content = json.readValue(rs.getString("content"), Content.class);
        return new Decision(
                rs.getLong("id"),
                rs.getLong("train_id"),
                rs.getObject("decided_at", OffsetDateTime.class).toInstant(),
                rs.getString("decided_by"),
                Occasion.valueOf(rs.getString("occasion")),
                content.train(),
                content.permit(),
                new KeptQuestion(content.asked()));
    }

    /** Returns what the crew of a train say they do not sign, in the order in which they said it. */
    List<Declined> declined(long trainId) {
        return jdbc.sql("select * from road_declined where train_id = ? order by id")
                .param(trainId)
                .query((rs, row) -> new Declined(
                        rs.getLong("person_id"),
                        new Subject(Subject.Kind.valueOf(rs.getString("subject_kind")), rs.getString("subject_code"))))
                .list();
    }

    /** Keeps that somebody does not sign something on a train; said twice it is kept once. */
    void decline(long trainId, Declined declined, Instant at, String note) {
        if (!declined(trainId).contains(declined)) {
            jdbc.sql("insert into road_declined (train_id, person_id, subject_kind, subject_code, said_at, note)"
                            + " values (?, ?, ?, ?, ?, ?)")
                    .params(trainId, declined.personId())
                    .params(declined.subject().kind().name(), declined.subject().code())
                    .params(at.atOffset(ZoneOffset.UTC), note)
                    .update();
        }
    }
}
