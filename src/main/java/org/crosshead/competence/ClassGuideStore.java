package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.crosshead.routeknowledge.LearningNeeds;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of class guides; knows no rule. */
@Repository
class ClassGuideStore {

    private final JdbcClient jdbc;

    ClassGuideStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ClassGuide> all() {
        return jdbc.sql("select * from class_guide order by class_code")
                .query(ClassGuideStore::guide)
                .list();
    }

    Optional<ClassGuide> find(String classCode) {
        return jdbc.sql("select * from class_guide where class_code = ?")
                .param(classCode)
                .query(ClassGuideStore::guide)
                .optional();
    }

    /** Stores a guide in place of the one of the same class; it must then be approved anew. */
    void put(ClassGuide guide) {
        int version = find(guide.classCode()).map(ClassGuide::version).orElse(0) + 1;
        jdbc.sql("delete from class_guide where class_code = ?")
                .param(guide.classCode())
                .update();
        LearningNeeds needs = guide.needs();
        jdbc.sql("""
                        insert into class_guide (class_code, similar_to, differences, teacher_id, trips_least, dark_least, driven_least,
                            weather_least, refresher_least, briefed_from, entered_by, version)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(guide.classCode(), guide.similarTo(), guide.differences())
                .param(guide.teacherId())
                .params(needs.trips(), needs.dark(), needs.driven(), needs.badWeather(), needs.refresher())
                .param(guide.briefedFrom())
                .params(guide.enteredBy(), version)
                .update();
    }

    /** Returns whether it was still of the version read, and not approved. */
    boolean approve(String classCode, int version, String by) {
        return jdbc.sql("update class_guide set approved_by = ?, version = version + 1"
                                + " where class_code = ? and version = ? and approved_by is null")
                        .params(by, classCode, version)
                        .update()
                == 1;
    }

    private static ClassGuide guide(ResultSet rs, int row) throws SQLException {
        long teacher = rs.getLong("teacher_id");
        @Nullable Long teacherId = rs.wasNull() ? null : Long.valueOf(teacher);
        return new ClassGuide(
                rs.getString("class_code"),
                rs.getString("similar_to"),
                rs.getString("differences"),
                teacherId,
                new LearningNeeds(
                        rs.getInt("trips_least"),
                        rs.getInt("dark_least"),
                        rs.getInt("driven_least"),
                        rs.getInt("weather_least"),
                        rs.getInt("refresher_least")),
                rs.getObject("briefed_from", LocalDate.class),
                rs.getString("entered_by"),
                rs.getString("approved_by"),
                rs.getInt("version"));
    }
}
