package org.crosshead.routeknowledge.question;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of answers: rows are only ever added. */
@Repository
class AnswerStore {

    private final JdbcClient jdbc;

    AnswerStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** An answer that somebody gave. */
    record Given(String questionKey, boolean correct, Instant at) {}

    void insert(long personId, String sectionCode, Question question, boolean correct, Instant at) {
        jdbc.sql(
                        "insert into self_test_answer (person_id, section_code, question_key, at_measure, correct, answered_at)"
                                + " values (?, ?, ?, ?, ?, ?)")
                .params(personId, sectionCode, question.key(), question.atMeasure(), correct)
                .param(at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Returns what a person answered on a section, in the order in which they did. */
    List<Given> of(long personId, String sectionCode) {
        return jdbc.sql("select * from self_test_answer where person_id = ? and section_code = ? order by id")
                .params(personId, sectionCode)
                .query((rs, row) -> new Given(
                        rs.getString("question_key"),
                        rs.getBoolean("correct"),
                        rs.getObject("answered_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /** Returns for each place of a section how often it was asked of anybody and how often answered wrongly, the worst first. */
    List<SelfTests.Place> places(String sectionCode, int most) {
        return jdbc.sql("""
                        select at_measure, count(*) as asked, sum(case when correct then 0 else 1 end) as wrong
                        from self_test_answer where section_code = ? group by at_measure
                        having sum(case when correct then 0 else 1 end) > 0 order by wrong desc, asked, at_measure limit ?
                        """)
                .params(sectionCode, most)
                .query((rs, row) ->
                        new SelfTests.Place(rs.getDouble("at_measure"), rs.getInt("asked"), rs.getInt("wrong")))
                .list();
    }
}
