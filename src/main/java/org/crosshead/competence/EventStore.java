package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** The table of events: rows are only ever added. */
@Repository
class EventStore {

    private static final String SELECT = "select * from competence_event ";

    private final JdbcClient jdbc;

    EventStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Lets nobody else enter anything about this person until the transaction ends. */
    void lock(long personId) {
        jdbc.sql("select id from person where id = ? for update")
                .param(personId)
                .query(Long.class)
                .optional();
    }

    long insert(CompetenceEvent event, String by) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("""
                        insert into competence_event (person_id, event_kind, subject_kind, subject_code, event_day, entered_at,
                            entered_by, other_id, struck_id, until_day, note, circumstances)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(event.personId(), event.kind().name())
                .params(event.subject().kind().name(), event.subject().code())
                .params(event.day(), event.enteredAt().atOffset(ZoneOffset.UTC), by)
                .param(event.otherId())
                .param(event.struckId())
                .param(event.until())
                .params(event.note(), words(event.circumstances()))
                .update(key, "id");
        return Objects.requireNonNull(key.getKey()).longValue();
    }

    List<CompetenceEvent> of(long personId) {
        return jdbc.sql(SELECT + "where person_id = ?")
                .param(personId)
                .query(EventStore::event)
                .list();
    }

    /** Returns all that is entered about a person, with no more of each than says what they hold; who, when entered and notes left out. */
    List<CompetenceEvent> toDerive(long personId) {
        return jdbc.sql("select id, event_kind, subject_kind, subject_code, event_day, struck_id, until_day"
                        + " from competence_event where person_id = ?")
                .param(personId)
                .query((rs, row) -> new CompetenceEvent(
                        rs.getLong("id"),
                        personId,
                        Kind.valueOf(rs.getString("event_kind")),
                        new Subject(Subject.Kind.valueOf(rs.getString("subject_kind")), rs.getString("subject_code")),
                        rs.getObject("event_day", LocalDate.class),
                        Instant.EPOCH,
                        null,
                        number(rs, "struck_id"),
                        rs.getObject("until_day", LocalDate.class),
                        ""))
                .list();
    }

    List<CompetenceEvent> of(long personId, Subject subject) {
        return jdbc.sql(SELECT + "where person_id = ? and subject_kind = ? and subject_code = ?")
                .params(personId, subject.kind().name(), subject.code())
                .query(EventStore::event)
                .list();
    }

    /** Returns the latest that was entered about a person, the latest first. */
    List<CompetenceEvent> latestOf(long personId, int most) {
        return jdbc.sql(SELECT + "where person_id = ? order by id desc limit ?")
                .params(personId, most)
                .query(EventStore::event)
                .list();
    }

    Optional<CompetenceEvent> find(long id) {
        return jdbc.sql(SELECT + "where id = ?")
                .param(id)
                .query(EventStore::event)
                .optional();
    }

    List<CompetenceEvent> of(Subject subject) {
        return jdbc.sql(SELECT + "where subject_kind = ? and subject_code = ?")
                .params(subject.kind().name(), subject.code())
                .query(EventStore::event)
                .list();
    }

    /** Returns what is entered of these sections, classes or personal subjects, of everybody. */
    List<CompetenceEvent> of(Subject.Kind kind, Collection<String> codes) {
        return codes.isEmpty()
                ? List.of()
                : jdbc.sql(SELECT + "where subject_kind = :kind and subject_code in (:codes)")
                        .param("kind", kind.name())
                        .param("codes", codes)
                        .query(EventStore::event)
                        .list();
    }

    /** Returns what is entered of these sections, classes or personal subjects about some people. */
    List<CompetenceEvent> of(Set<Long> personIds, Subject.Kind kind, Collection<String> codes) {
        return codes.isEmpty() || personIds.isEmpty()
                ? List.of()
                : jdbc.sql(SELECT
                                + "where person_id in (:people) and subject_kind = :kind and subject_code in (:codes)")
                        .param("people", personIds)
                        .param("kind", kind.name())
                        .param("codes", codes)
                        .query(EventStore::event)
                        .list();
    }

    /** Returns the ids of all people about whom something is entered. */
    List<Long> people() {
        return jdbc.sql(
                        "select id from person p where exists (select 1 from competence_event e where e.person_id = p.id) order by id")
                .query(Long.class)
                .list();
    }

    private static CompetenceEvent event(ResultSet rs, int row) throws SQLException {
        Instant enteredAt = rs.getObject("entered_at", OffsetDateTime.class).toInstant();
        return new CompetenceEvent(
                rs.getLong("id"),
                rs.getLong("person_id"),
                Kind.valueOf(rs.getString("event_kind")),
                new Subject(Subject.Kind.valueOf(rs.getString("subject_kind")), rs.getString("subject_code")),
                rs.getDate("event_day").toLocalDate(),
                enteredAt,
                number(rs, "other_id"),
                number(rs, "struck_id"),
                rs.getObject("until_day", LocalDate.class),
                rs.getString("note"),
                circumstances(rs.getString("circumstances")));
    }

    private static String words(Set<Circumstance> circumstances) {
        return circumstances.stream().map(Circumstance::name).sorted().collect(Collectors.joining(" "));
    }

    private static Set<Circumstance> circumstances(String words) {
        return words.isEmpty()
                ? Set.of()
                : Stream.of(words.split(" ")).map(Circumstance::valueOf).collect(Collectors.toSet());
    }

    private static @Nullable Long number(ResultSet rs, String column) throws SQLException {
        long value = rs.getLong(column);
        return rs.wasNull() ? null : value;
    }
}
