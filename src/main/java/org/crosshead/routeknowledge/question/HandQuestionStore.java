package org.crosshead.routeknowledge.question;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of questions by hand: rows are only ever added. */
@Repository
class HandQuestionStore {

    private final JdbcClient jdbc;

    HandQuestionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Lets nobody else write a question on this section until the transaction ends. */
    void lock(String sectionCode) {
        jdbc.sql("select id from route_section where code = ? for update")
                .param(sectionCode)
                .query(Long.class)
                .optional();
    }

    void insert(HandQuestion question, Instant at) {
        jdbc.sql("""
                        insert into hand_question (section_code, question_number, question_version, at_measure, words, right_answer,
                            wrong_answers, because, safety_critical, withdrawn, entered_by, entered_at)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(question.sectionCode(), question.number(), question.version(), question.atMeasure())
                .params(question.words(), question.right(), String.join("\n", question.wrong()), question.because())
                .params(question.safetyCritical(), question.withdrawn(), question.enteredBy())
                .param(at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Returns every version of every question on a section, by number and version. */
    List<HandQuestion> of(String sectionCode) {
        return jdbc.sql("select * from hand_question where section_code = ? order by question_number, question_version")
                .param(sectionCode)
                .query(HandQuestionStore::question)
                .list();
    }

    private static HandQuestion question(ResultSet rs, int row) throws SQLException {
        return new HandQuestion(
                rs.getString("section_code"),
                rs.getInt("question_number"),
                rs.getInt("question_version"),
                rs.getDouble("at_measure"),
                rs.getString("words"),
                rs.getString("right_answer"),
                rs.getString("wrong_answers").lines().toList(),
                rs.getString("because"),
                rs.getBoolean("safety_critical"),
                rs.getBoolean("withdrawn"),
                rs.getString("entered_by"));
    }
}
