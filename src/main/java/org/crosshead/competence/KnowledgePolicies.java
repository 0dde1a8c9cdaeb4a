package org.crosshead.competence;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.KnowledgePolicy.Regime;
import org.crosshead.routeknowledge.Band;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The versions of the railway's policy on what people know. */
@Repository
public class KnowledgePolicies {

    private final JdbcClient jdbc;

    KnowledgePolicies(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the version that holds on a day. */
    public KnowledgePolicy on(LocalDate day) {
        KnowledgePolicy policy = jdbc.sql(
                        "select * from knowledge_policy where valid_from <= ? order by policy_version desc limit 1")
                .param(day)
                .query((rs, row) -> new KnowledgePolicy(
                        rs.getInt("policy_version"),
                        rs.getDate("valid_from").toLocalDate(),
                        new EnumMap<>(Map.of(
                                Band.HARD, rs.getInt("hard_months"),
                                Band.USUAL, rs.getInt("usual_months"),
                                Band.EASY, rs.getInt("easy_months"))),
                        rs.getInt("class_months"),
                        rs.getInt("assessment_months"),
                        rs.getInt("warn_days"),
                        Arrays.stream(rs.getString("keeps_alive").split(" "))
                                .map(Kind::valueOf)
                                .collect(Collectors.toSet()),
                        rs.getBoolean("verifies"),
                        Regime.valueOf(rs.getString("regime")),
                        rs.getString("policy_owner"),
                        rs.getString("approver")))
                .optional()
                .orElseThrow(() -> new IllegalStateException("no policy on knowledge holds on " + day));
        policy.refusal().ifPresent(why -> {
            throw new IllegalStateException("policy " + policy.version() + " on knowledge cannot be: " + why);
        });
        return policy;
    }
}
