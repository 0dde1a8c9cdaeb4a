package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding.Limit;
import org.crosshead.competence.Holding.State;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what everybody holds after all that is entered; derived from the events and made anew from them at any time. */
@Repository
class StandingStore {

    private static final String SELECT = "select * from competence_standing ";

    /** Rows in one statement. */
    private static final int BATCH = 100;

    private final JdbcClient jdbc;

    StandingStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A row.
     *
     * @param lapseMonths by which it was derived
     * @param assessmentMonths by which it was derived
     */
    record Row(long personId, Subject subject, Standing standing, int lapseMonths, int assessmentMonths) {

        /** Says whether it answers for a day by these terms. */
        boolean answers(LocalDate day, HoldingRules.Terms terms) {
            LocalDate last = standing.lastDay();
            return lapseMonths == terms.lapseMonths()
                    && assessmentMonths == terms.policy().assessmentMonths()
                    && (last == null || !day.isBefore(last));
        }
    }

    /** How a person stands with a subject, and the terms by which it was derived. */
    record Derived(HoldingRules.Terms terms, Standing standing) {}

    /** Stores how it stands, in place of what stood before. */
    void put(long personId, Derived derived) {
        Subject subject = derived.terms().subject();
        jdbc.sql("delete from competence_standing where subject_kind = ? and subject_code = ? and person_id = ?")
                .params(subject.kind().name(), subject.code(), personId)
                .update();
        insert(personId, List.of(derived));
    }

    /** Stores how a person stands with every subject, in place of all that stood before. */
    void replace(long personId, List<Derived> derived) {
        clear(personId);
        for (int from = 0; from < derived.size(); from += BATCH) {
            insert(personId, derived.subList(from, Math.min(from + BATCH, derived.size())));
        }
    }

    /** Inserts rows at once; those of which nothing counts are left out. */
    private void insert(long personId, List<Derived> derived) {
        List<Derived> known =
                derived.stream().filter(one -> one.standing().lastDay() != null).toList();
        if (known.isEmpty()) {
            return;
        }
        String rows =
                String.join(", ", Collections.nCopies(known.size(), "(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"));
        JdbcClient.StatementSpec insert = jdbc.sql("""
                        insert into competence_standing (person_id, subject_kind, subject_code, state, suspended, since_day, worked_day,
                            assessed_day, until_day, limits, taught_day, last_day, lapse_months, assessment_months)
                        values %s
                        """.formatted(rows));
        for (Derived one : known) {
            Subject subject = one.terms().subject();
            Standing standing = one.standing();
            insert = insert.params(personId, subject.kind().name(), subject.code())
                    .params(standing.state().name(), standing.suspended())
                    .param(standing.since())
                    .param(standing.worked())
                    .param(standing.assessed())
                    .param(standing.until())
                    .param(standing.limits().stream().map(Limit::name).sorted().collect(Collectors.joining(" ")))
                    .param(standing.taught())
                    .param(standing.lastDay())
                    .params(one.terms().lapseMonths(), one.terms().policy().assessmentMonths());
        }
        insert.update();
    }

    private void clear(long personId) {
        jdbc.sql("delete from competence_standing where person_id = ?")
                .param(personId)
                .update();
    }

    List<Row> of(Subject subject) {
        return jdbc.sql(SELECT + "where subject_kind = ? and subject_code = ?")
                .params(subject.kind().name(), subject.code())
                .query(StandingStore::row)
                .list();
    }

    List<Row> of(long personId) {
        return jdbc.sql(SELECT + "where person_id = ?")
                .param(personId)
                .query(StandingStore::row)
                .list();
    }

    /** Returns the rows of these sections, classes or personal subjects. */
    List<Row> of(Subject.Kind kind, Collection<String> codes) {
        return codes.isEmpty()
                ? List.of()
                : jdbc.sql(SELECT + "where subject_kind = :kind and subject_code in (:codes)")
                        .param("kind", kind.name())
                        .param("codes", codes)
                        .query(StandingStore::row)
                        .list();
    }

    List<Row> all() {
        return jdbc.sql(SELECT).query(StandingStore::row).list();
    }

    /** Returns every subject of which something is entered. */
    List<Subject> subjects() {
        return jdbc.sql("select distinct subject_kind, subject_code from competence_standing")
                .query((rs, row) -> subject(rs))
                .list();
    }

    List<Row> of(Collection<Long> personIds) {
        return personIds.isEmpty()
                ? List.of()
                : jdbc.sql(SELECT + "where person_id in (:people)")
                        .param("people", personIds)
                        .query(StandingStore::row)
                        .list();
    }

    /** Returns every subject of which something is entered about any of these people. */
    List<Subject> subjects(Collection<Long> personIds) {
        return personIds.isEmpty()
                ? List.of()
                : jdbc.sql("select distinct subject_kind, subject_code from competence_standing"
                                + " where person_id in (:people)")
                        .param("people", personIds)
                        .query((rs, row) -> subject(rs))
                        .list();
    }

    boolean isEmpty() {
        return jdbc.sql("select person_id from competence_standing limit 1")
                .query(Long.class)
                .optional()
                .isEmpty();
    }

    /** Says whether some of it was derived by another period between assessments. */
    boolean isDerivedOtherwise(int assessmentMonths) {
        return jdbc.sql("select person_id from competence_standing where assessment_months <> ? limit 1")
                .param(assessmentMonths)
                .query(Long.class)
                .optional()
                .isPresent();
    }

    private static Subject subject(ResultSet rs) throws SQLException {
        return new Subject(Subject.Kind.valueOf(rs.getString("subject_kind")), rs.getString("subject_code"));
    }

    private static Row row(ResultSet rs, int number) throws SQLException {
        Standing standing = new Standing(
                State.valueOf(rs.getString("state")),
                rs.getBoolean("suspended"),
                day(rs, "since_day"),
                day(rs, "worked_day"),
                day(rs, "assessed_day"),
                day(rs, "until_day"),
                limits(rs.getString("limits")),
                day(rs, "taught_day"),
                day(rs, "last_day"));
        return new Row(
                rs.getLong("person_id"),
                subject(rs),
                standing,
                rs.getInt("lapse_months"),
                rs.getInt("assessment_months"));
    }

    private static Set<Limit> limits(String stored) {
        return stored.isEmpty()
                ? Set.of()
                : Arrays.stream(stored.split(" "))
                        .map(Limit::valueOf)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Limit.class)));
    }

    private static @Nullable LocalDate day(ResultSet rs, String column) throws SQLException {
        return rs.getObject(column, LocalDate.class);
    }
}
