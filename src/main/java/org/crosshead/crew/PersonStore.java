package org.crosshead.crew;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** Tables of people and their posts. */
@Repository
class PersonStore {

    private static final String PERSON = "select id, staff_number, name, version from person ";
    private static final String POSTS = "select person_id, post, depot, first_day, last_day from person_post ";
    private static final String BY_POST = "order by person_id, post, first_day";

    private final JdbcClient jdbc;

    PersonStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Row> row(String staffNumber) {
        return jdbc.sql(PERSON + "where staff_number = ?")
                .param(staffNumber)
                .query(Row::of)
                .optional();
    }

    Optional<Person> find(long id) {
        return jdbc.sql(PERSON + "where id = ?")
                .param(id)
                .query(Row::of)
                .optional()
                .map(this::person);
    }

    /** Returns everybody, by staff number. */
    List<Person> all() {
        List<Row> rows =
                jdbc.sql(PERSON + "order by staff_number").query(Row::of).list();
        return withPosts(rows, jdbc.sql(POSTS + BY_POST));
    }

    private static List<Person> withPosts(List<Row> rows, JdbcClient.StatementSpec query) {
        Map<Long, List<PostRow>> posts =
                query.query(PostRow::of).list().stream().collect(Collectors.groupingBy(PostRow::personId));
        return rows.stream()
                .map(row -> row.person(posts.getOrDefault(row.id(), List.of())))
                .toList();
    }

    List<Long> holdingAny(LocalDate day) {
        return jdbc.sql("select distinct person_id from person_post where first_day <= ?"
                        + " and (last_day is null or last_day >= ?)")
                .params(day, day)
                .query(Long.class)
                .list();
    }

    List<Long> holding(Post post, LocalDate day) {
        return jdbc.sql("select distinct person_id from person_post where post = ? and first_day <= ?"
                        + " and (last_day is null or last_day >= ?) order by person_id")
                .params(post.name(), day, day)
                .query(Long.class)
                .list();
    }

    List<Person> byStaffNumbers(Set<String> staffNumbers) {
        if (staffNumbers.isEmpty()) {
            return List.of();
        }
        List<Row> rows = jdbc.sql(PERSON + "where staff_number in (:numbers)")
                .param("numbers", staffNumbers)
                .query(Row::of)
                .list();
        return rows.isEmpty()
                ? List.of()
                : withPosts(
                        rows,
                        jdbc.sql(POSTS + "where person_id in (:ids) " + BY_POST)
                                .param("ids", rows.stream().map(Row::id).toList()));
    }

    List<String> depots() {
        return jdbc.sql("select distinct depot from person_post where depot is not null order by depot")
                .query(String.class)
                .list();
    }

    Person person(Row row) {
        return row.person(jdbc.sql(POSTS + "where person_id = ? " + BY_POST)
                .param(row.id())
                .query(PostRow::of)
                .list());
    }

    long insert(PersonDraft draft) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into person (staff_number, name, version) values (?, ?, 1)")
                .params(draft.staffNumber(), draft.name())
                .update(key, "id");
        Number id = key.getKey();
        if (id == null) {
            throw new IllegalStateException("person was stored without an id");
        }
        return id.longValue();
    }

    /** Returns whether the row was still of the version read. */
    boolean update(Row row, String name) {
        return jdbc.sql("update person set name = ?, version = version + 1 where id = ? and version = ?")
                        .params(name, row.id(), row.version())
                        .update()
                == 1;
    }

    void replacePosts(long personId, List<PostHeld> posts) {
        jdbc.sql("delete from person_post where person_id = ?").param(personId).update();
        for (PostHeld held : posts) {
            jdbc.sql("insert into person_post (person_id, post, first_day, last_day, depot) values (?, ?, ?, ?, ?)")
                    .param(1, personId)
                    .param(2, held.post().name())
                    .param(3, held.firstDay())
                    .param(4, held.lastDay())
                    .param(5, held.depot())
                    .update();
        }
    }

    /** One row of the person table. */
    record Row(long id, String staffNumber, String name, int version) {

        static Row of(ResultSet row, int number) throws SQLException {
            return new Row(
                    row.getLong("id"), row.getString("staff_number"), row.getString("name"), row.getInt("version"));
        }

        Person person(List<PostRow> posts) {
            return new Person(
                    id, staffNumber, name, posts.stream().map(PostRow::held).toList());
        }
    }

    /** One row of the table of posts. */
    record PostRow(long personId, PostHeld held) {

        static PostRow of(ResultSet row, int number) throws SQLException {
            @Nullable Date lastDay = row.getDate("last_day");
            PostHeld held = new PostHeld(
                    Post.valueOf(row.getString("post")),
                    row.getString("depot"),
                    row.getDate("first_day").toLocalDate(),
                    lastDay == null ? null : lastDay.toLocalDate());
            return new PostRow(row.getLong("person_id"), held);
        }
    }
}
