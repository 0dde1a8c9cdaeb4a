package org.crosshead.competence.refresh;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.Subject;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of proposed turns. */
@Repository
class ProposalStore {

    private static final String SELECT =
            "select p.*, t.code, t.running_day from refresh_proposal p join train t on t.id = p.train_id ";

    private static final String SEPARATOR = "\n";

    private final JdbcClient jdbc;

    ProposalStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Proposes a turn unless it is proposed already; returns whether it is new. */
    boolean insert(RefreshProblem.Option option, String subjects, List<Subject> begins, Instant at, String by) {
        boolean there = jdbc.sql("select id from refresh_proposal where person_id = ? and train_id = ?")
                .params(option.personId(), option.trainId())
                .query(Long.class)
                .optional()
                .isPresent();
        if (!there) {
            jdbc.sql(
                            "insert into refresh_proposal (person_id, train_id, teacher_id, subjects, begins, state, made_at, made_by)"
                                    + " values (?, ?, ?, ?, ?, 'PROPOSED', ?, ?)")
                    .params(option.personId(), option.trainId(), option.teacherId(), subjects, words(begins))
                    .params(at.atOffset(ZoneOffset.UTC), by)
                    .update();
        }
        return !there;
    }

    List<Proposal> all() {
        return query("order by t.running_day, t.code", List.of());
    }

    List<Proposal> of(long personId) {
        return query("where p.person_id = ? order by t.running_day, t.code", List.of(personId));
    }

    private List<Proposal> query(String rest, List<Object> params) {
        return jdbc.sql(SELECT + rest)
                .params(params)
                .query((rs, row) -> new Proposal(
                        rs.getLong("id"),
                        rs.getLong("person_id"),
                        rs.getLong("train_id"),
                        rs.getString("code"),
                        rs.getDate("running_day").toLocalDate(),
                        rs.getLong("teacher_id"),
                        rs.getString("subjects"),
                        subjects(rs.getString("begins")),
                        Proposal.State.valueOf(rs.getString("state"))))
                .list();
    }

    private static String words(List<Subject> subjects) {
        return subjects.stream()
                .map(subject -> subject.kind() + ":" + subject.code())
                .collect(Collectors.joining(SEPARATOR));
    }

    private static List<Subject> subjects(String stored) {
        return Stream.of(stored.split(SEPARATOR))
                .filter(word -> !word.isEmpty())
                .map(word -> word.split(":", 2))
                .map(parts -> new Subject(Subject.Kind.valueOf(parts[0]), parts[1]))
                .toList();
    }

    /** Returns whether it was theirs to answer, and not answered yet. */
    boolean answer(long id, long personId, Proposal.State state) {
        return jdbc.sql("update refresh_proposal set state = ? where id = ? and person_id = ? and state = 'PROPOSED'")
                        .params(state.name(), id, personId)
                        .update()
                == 1;
    }
}
