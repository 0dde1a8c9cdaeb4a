package org.crosshead.briefing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.briefing.document.BriefingDocument;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Briefings and acknowledgements in the database; knows no rule. */
@Repository
class BriefingStore {

    private static final String COLUMNS =
            "id, train_id, issue_number, briefing_state, prepared_at, prepared_by, issued_at, issued_by, issued_despite";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    BriefingStore(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        // What a later schema asks for as yes or no was no in an earlier one.
        this.json = json.rebuild()
                .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .build();
    }

    long insert(long trainId, BriefingDocument document) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into briefing (version, train_id, briefing_state, prepared_at, prepared_by, schema_version,
                            document) values (1, ?, 'PREPARED', ?, ?, ?, ?)
                        """)
                .params(
                        trainId,
                        sql(document.madeAt()),
                        document.madeBy(),
                        document.schema(),
                        json.writeValueAsString(document))
                .update(key, "id");
        return Objects.requireNonNull(key.getKey()).longValue();
    }

    /** Removes what was prepared for the train and never issued. */
    void deletePrepared(long trainId) {
        jdbc.sql("delete from briefing where train_id = ? and briefing_state = 'PREPARED'")
                .param(trainId)
                .update();
    }

    void replaceIssued(long trainId) {
        jdbc.sql(
                        "update briefing set briefing_state = 'REPLACED', version = version + 1 where train_id = ? and briefing_state = 'ISSUED'")
                .param(trainId)
                .update();
    }

    int nextIssueNumber(long trainId) {
        return jdbc.sql("select coalesce(max(issue_number), 0) + 1 from briefing where train_id = ?")
                .param(trainId)
                .query(Integer.class)
                .single();
    }

    /** Freezes a prepared briefing, unless somebody has issued or replaced it meanwhile. */
    boolean issue(long id, Issue issue) {
        return jdbc.sql("""
                                update briefing set briefing_state = 'ISSUED', issue_number = :number, issued_at = :at, issued_by = :by,
                                    issued_despite = :despite, version = version + 1 where id = :id and briefing_state = 'PREPARED'
                                """)
                        .param("number", issue.number())
                        .param("at", sql(issue.at()))
                        .param("by", issue.by())
                        .param("despite", issue.despite())
                        .param("id", id)
                        .update()
                == 1;
    }

    /**
     * What freezes a briefing.
     *
     * @param despite why it is issued although it names a danger, or null where it names none
     */
    record Issue(
            int number, Instant at, String by, @Nullable String despite) {}

    /** An issue in force. */
    record InForce(int number, BriefingDocument document) {}

    Optional<InForce> inForce(long trainId) {
        return jdbc.sql("select issue_number, document from briefing where train_id = ? and briefing_state = 'ISSUED'")
                .param(trainId)
                .query((rs, row) -> new InForce(
                        rs.getInt("issue_number"), json.readValue(rs.getString("document"), BriefingDocument.class)))
                .optional();
    }

    Optional<StoredBriefing> find(long id) {
        return jdbc.sql("select " + COLUMNS + ", document from briefing where id = ?")
                .param(id)
                .query((rs, row) -> stored(rs))
                .optional();
    }

    List<BriefingSummary> ofTrain(long trainId) {
        return jdbc.sql("select " + COLUMNS + " from briefing where train_id = ? order by id desc")
                .param(trainId)
                .query((rs, row) -> summary(rs))
                .list();
    }

    /** Stores an acknowledgement; false if this id or this person has one already. */
    boolean acknowledge(long briefingId, String clientId, Acknowledgement reading) {
        Integer known = jdbc.sql(
                        "select count(*) from briefing_acknowledgement where client_id = ? or (briefing_id = ? and staff_number = ?)")
                .params(clientId, briefingId, reading.staffNumber())
                .query(Integer.class)
                .single();
        if (known > 0) {
            return false;
        }
        jdbc.sql("""
                        insert into briefing_acknowledgement (briefing_id, client_id, staff_number, person_name, device_time,
                            received_at) values (?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        briefingId,
                        clientId,
                        reading.staffNumber(),
                        reading.personName(),
                        sql(reading.deviceTime()),
                        sql(reading.receivedAt()))
                .update();
        return true;
    }

    List<Acknowledgement> acknowledgements(long briefingId) {
        return jdbc.sql("select * from briefing_acknowledgement where briefing_id = ? order by id")
                .param(briefingId)
                .query((rs, row) -> new Acknowledgement(
                        rs.getString("staff_number"),
                        rs.getString("person_name"),
                        instant(rs, "device_time"),
                        instant(rs, "received_at")))
                .list();
    }

    private StoredBriefing stored(ResultSet rs) throws SQLException {
        BriefingSummary head = summary(rs);
        return new StoredBriefing(
                head.id(),
                head.trainId(),
                head.issueNumber(),
                head.state(),
                head.preparedAt(),
                head.preparedBy(),
                head.issuedAt(),
                head.issuedBy(),
                rs.getString("issued_despite"),
                json.readValue(rs.getString("document"), BriefingDocument.class));
    }

    private static BriefingSummary summary(ResultSet rs) throws SQLException {
        return new BriefingSummary(
                rs.getLong("id"),
                rs.getLong("train_id"),
                rs.getObject("issue_number", Integer.class),
                BriefingState.valueOf(rs.getString("briefing_state")),
                instant(rs, "prepared_at"),
                rs.getString("prepared_by"),
                instantOrNull(rs, "issued_at"),
                rs.getString("issued_by"));
    }

    private static Instant instant(ResultSet rs, String column) throws SQLException {
        return rs.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static @Nullable Instant instantOrNull(ResultSet rs, String column) throws SQLException {
        OffsetDateTime moment = rs.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    private static OffsetDateTime sql(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }
}
