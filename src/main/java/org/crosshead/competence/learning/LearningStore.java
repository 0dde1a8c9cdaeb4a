package org.crosshead.competence.learning;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningTurn.State;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of learning plans and turns; knows no rule. */
@Repository
class LearningStore {

    private static final String TURNS =
            "select l.*, t.code, t.running_day, t.cancelled from learning_turn l join train t on t.id = l.train_id ";

    private final JdbcClient jdbc;

    LearningStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Lets nobody else open a plan for, or put on a train, this person until the transaction ends. */
    void lock(long personId) {
        jdbc.sql("select id from person where id = ? for update")
                .param(personId)
                .query(Long.class)
                .optional();
    }

    void insert(LearningPlan plan) {
        jdbc.sql("insert into learning_plan (person_id, subject_kind, subject_code, opened_on, opened_by, until_day)"
                        + " values (?, ?, ?, ?, ?, ?)")
                .params(
                        plan.personId(),
                        plan.subject().kind().name(),
                        plan.subject().code())
                .params(plan.openedOn(), plan.openedBy())
                .param(plan.until())
                .update();
    }

    /** Returns whether it was open. */
    boolean close(long id, LocalDate day) {
        return jdbc.sql("update learning_plan set closed_on = ? where id = ? and closed_on is null")
                        .params(day, id)
                        .update()
                == 1;
    }

    List<LearningPlan> open() {
        return jdbc.sql(
                        "select * from learning_plan where closed_on is null order by person_id, subject_kind, subject_code")
                .query(LearningStore::plan)
                .list();
    }

    List<LearningPlan> open(long personId) {
        return jdbc.sql("select * from learning_plan where person_id = ? and closed_on is null"
                        + " order by subject_kind, subject_code")
                .param(personId)
                .query(LearningStore::plan)
                .list();
    }

    Optional<LearningPlan> plan(long id) {
        return jdbc.sql("select * from learning_plan where id = ?")
                .param(id)
                .query(LearningStore::plan)
                .optional();
    }

    private static LearningPlan plan(ResultSet rs, int row) throws SQLException {
        return new LearningPlan(
                rs.getLong("id"),
                rs.getLong("person_id"),
                new Subject(Subject.Kind.valueOf(rs.getString("subject_kind")), rs.getString("subject_code")),
                rs.getObject("opened_on", LocalDate.class),
                rs.getString("opened_by"),
                rs.getObject("until_day", LocalDate.class),
                rs.getObject("closed_on", LocalDate.class));
    }

    /** Books a turn, in place of one that did not take place. */
    void book(long trainId, long learnerId, long teacherId, Instant at, String by) {
        jdbc.sql("delete from learning_turn where train_id = ? and learner_id = ? and state = 'NOT_RUN'")
                .params(trainId, learnerId)
                .update();
        jdbc.sql("insert into learning_turn (train_id, learner_id, teacher_id, booked_at, booked_by, state)"
                        + " values (?, ?, ?, ?, ?, 'BOOKED')")
                .params(trainId, learnerId, teacherId, at.atOffset(ZoneOffset.UTC), by)
                .update();
    }

    /** Returns whether it was still booked. */
    boolean end(long id, State state, Instant at) {
        return jdbc.sql("update learning_turn set state = ?, told_at = ? where id = ? and state = 'BOOKED'")
                        .params(state.name(), at.atOffset(ZoneOffset.UTC), id)
                        .update()
                == 1;
    }

    Optional<LearningTurn> turn(long id) {
        return jdbc.sql(TURNS + "where l.id = ?")
                .param(id)
                .query(LearningStore::turn)
                .optional();
    }

    List<LearningTurn> onTrain(long trainId) {
        return jdbc.sql(TURNS + "where l.train_id = ? and l.state <> 'NOT_RUN' order by l.id")
                .param(trainId)
                .query(LearningStore::turn)
                .list();
    }

    /** Returns in what somebody learns or has learned on trains of these days. */
    List<LearningTurn> learned(long learnerId, LocalDate firstDay, LocalDate lastDay) {
        return jdbc.sql(TURNS + "where l.learner_id = ? and l.state <> 'NOT_RUN' and t.cancelled = false"
                        + " and t.running_day between ? and ? order by t.running_day, t.code")
                .params(learnerId, firstDay, lastDay)
                .query(LearningStore::turn)
                .list();
    }

    /** Returns those that are booked, of whoever learns or teaches in them. */
    List<LearningTurn> booked(long personId) {
        return jdbc.sql(TURNS + "where (l.learner_id = ? or l.teacher_id = ?) and l.state = 'BOOKED'"
                        + " order by t.running_day, t.code")
                .params(personId, personId)
                .query(LearningStore::turn)
                .list();
    }

    List<LearningTurn> booked() {
        return jdbc.sql(TURNS + "where l.state = 'BOOKED' order by t.running_day, t.code")
                .query(LearningStore::turn)
                .list();
    }

    private static LearningTurn turn(ResultSet rs, int row) throws SQLException {
        return new LearningTurn(
                rs.getLong("id"),
                rs.getLong("train_id"),
                rs.getString("code"),
                rs.getObject("running_day", LocalDate.class),
                rs.getBoolean("cancelled"),
                rs.getLong("learner_id"),
                rs.getLong("teacher_id"),
                State.valueOf(rs.getString("state")));
    }
}
