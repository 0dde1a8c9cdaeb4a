package org.crosshead.competence;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        KnowledgePolicy policy = jdbc.sql("select * from knowledge_policy where valid_from <= ? and approver <> ''"
                        + " order by policy_version desc limit 1")
                .param(day)
                .query(KnowledgePolicies::policy)
                .optional()
                .orElseThrow(() -> new IllegalStateException("no policy on knowledge holds on " + day));
        policy.refusal().ifPresent(why -> {
            throw new IllegalStateException("policy " + policy.version() + " on knowledge cannot be: " + why);
        });
        return policy;
    }

    /** Returns all versions, the newest first; those that nobody has approved have no approver. */
    public List<KnowledgePolicy> all() {
        return jdbc.sql("select * from knowledge_policy order by policy_version desc")
                .query(KnowledgePolicies::policy)
                .list();
    }

    private static KnowledgePolicy policy(ResultSet rs, int row) throws SQLException {
        Set<Subject> needs = new HashSet<>();
        if (rs.getBoolean("needs_licence")) {
            needs.add(Subject.LICENCE);
        }
        if (rs.getBoolean("needs_medical")) {
            needs.add(Subject.MEDICAL);
        }
        if (rs.getBoolean("needs_observed")) {
            needs.add(Subject.OBSERVED);
        }
        if (rs.getBoolean("needs_tested")) {
            needs.add(Subject.TESTED);
        }
        return new KnowledgePolicy(
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
                needs,
                new KnowledgePolicy.Hours(
                        rs.getDouble("turn_hours_most"),
                        rs.getDouble("rest_hours_least"),
                        rs.getDouble("break_hours_most"),
                        rs.getDouble("week_hours_most"),
                        rs.getInt("fortnight_turns_most"),
                        new KnowledgePolicy.Accrued(
                                rs.getDouble("month_hours_most"),
                                rs.getInt("days_running_most"),
                                rs.getDouble("days_off_hours"),
                                rs.getDouble("long_turn_rest_hours"))),
                new KnowledgePolicy.Upkeep(
                        rs.getInt("anew_months"),
                        rs.getBoolean("proving_run"),
                        rs.getInt("holders_least"),
                        rs.getBoolean("easy_grades"),
                        rs.getInt("urgent_days")),
                Regime.valueOf(rs.getString("regime")),
                rs.getString("policy_owner"),
                rs.getString("approver"));
    }

    /** Puts a version forward; it holds once somebody else has approved it. */
    void insert(KnowledgePolicy policy) {
        jdbc.sql("""
                        insert into knowledge_policy (policy_version, valid_from, hard_months, usual_months, easy_months,
                            class_months, assessment_months, warn_days, keeps_alive, verifies, needs_licence, needs_medical,
                            turn_hours_most, rest_hours_least, break_hours_most, week_hours_most, fortnight_turns_most,
                            anew_months, proving_run, holders_least, needs_observed, needs_tested, month_hours_most, days_running_most,
                            days_off_hours, long_turn_rest_hours, easy_grades, urgent_days, regime, policy_owner, approver)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, '')
                        """)
                .params(policy.version(), policy.validFrom())
                .params(
                        policy.lapseMonths(Band.HARD),
                        policy.lapseMonths(Band.USUAL),
                        policy.lapseMonths(Band.EASY),
                        policy.classLapseMonths(),
                        policy.assessmentMonths(),
                        policy.warnDays())
                .param(policy.keepsAlive().stream().map(Kind::name).sorted().collect(Collectors.joining(" ")))
                .param(policy.verifies())
                .params(policy.needs().contains(Subject.LICENCE), policy.needs().contains(Subject.MEDICAL))
                .params(
                        policy.hours().turnMost(),
                        policy.hours().restLeast(),
                        policy.hours().breakMost(),
                        policy.hours().weekMost(),
                        policy.hours().turnsMost())
                .params(
                        policy.upkeep().anewMonths(),
                        policy.upkeep().provingRun(),
                        policy.upkeep().holdersLeast())
                .params(
                        policy.needs().contains(Subject.OBSERVED),
                        policy.needs().contains(Subject.TESTED))
                .params(
                        policy.hours().accrued().monthMost(),
                        policy.hours().accrued().daysMost(),
                        policy.hours().accrued().offLeast(),
                        policy.hours().accrued().longRest())
                .params(policy.upkeep().easyGrades(), policy.upkeep().urgentDays())
                .params(policy.regime().name(), policy.owner())
                .update();
    }

    /** Approves a version that nobody has; returns whether there was one. */
    boolean approve(int version, String approver) {
        return jdbc.sql("update knowledge_policy set approver = ? where policy_version = ? and approver = ''")
                        .params(approver, version)
                        .update()
                == 1;
    }
}
