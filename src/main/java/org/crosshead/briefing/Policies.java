package org.crosshead.briefing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the railway's own figures. One is never changed: a new version holds from its day on, once a second person has approved it. */
@Service
public class Policies {

    private static final double PER_CENT = 100;

    private record Sensible(double least, double most, String unit) {}

    /** Every figure that there is, by the least and the most that a railway can mean. */
    private static final Map<String, Sensible> SENSIBLE = Map.ofEntries(
            Map.entry(Policy.BRAKING_MARGIN, new Sensible(1, 3, "")),
            Map.entry(Policy.REACTION_TIME, new Sensible(0, 60, "s")),
            Map.entry(Policy.SERVICE_SHARE, new Sensible(0.1, 1, "")),
            Map.entry(Policy.WATER_RESERVE, new Sensible(0, 0.9, "")),
            Map.entry(Policy.LANDMARK_REACH, new Sensible(0, 10_000, "m")),
            Map.entry(Policy.HEATING_STEAM, new Sensible(0, 1_000, "lb/h")),
            Map.entry(Policy.TRAMWAY_TABLE, new Sensible(0, 2, "")),
            Map.entry(Policy.WATER_WEIGHT, new Sensible(0, 1, "lb/lb")),
            Map.entry(Policy.SLIP_WEIGHT, new Sensible(0, 1, "kg/m")),
            Map.entry(Policy.LATE_WEIGHT, new Sensible(1, 50, "")),
            Map.entry(Policy.SCATTER + "coal-heat", new Sensible(0, 0.5, "")),
            Map.entry(Policy.SCATTER + "adhesion", new Sensible(0, 0.5, "")),
            Map.entry(Policy.SCATTER + "resistance", new Sensible(0, 0.5, "")),
            Map.entry(Policy.SCATTER + "load", new Sensible(0, 0.5, "")),
            Map.entry(Policy.SCATTER + "wind", new Sensible(0, 30, "m/s")),
            Map.entry(Policy.SCATTER + "action", new Sensible(0, 60, "s")),
            Map.entry(Policy.SCATTER + "pressure-reading", new Sensible(0, 30, "psi")),
            Map.entry(Policy.SCATTER + "glass-reading", new Sensible(0, 0.5, "")));

    private static final String TABLES = "(" + Policy.HAND_BRAKES + "|" + Policy.PINNED_WAGONS + ")";
    private static final Pattern BY_VEHICLES = Pattern.compile(TABLES + Policy.VEHICLES_TO + "[1-9]\\d{0,2}");
    private static final Pattern BY_SLOPE = Pattern.compile(TABLES + Policy.SHARE_FROM + "([5-9]|[1-9]\\d{1,3})");
    private static final Sensible BRAKES = new Sensible(0, 1_000, "");
    private static final Sensible SHARE = new Sensible(0, PER_CENT, "%");
    private static final int SOURCE_LONGEST = 300;
    private static final int OWNER_LONGEST = 120;

    private final JdbcClient jdbc;
    private final Policy policy;
    private final Journal journal;
    private final CurrentActor actor;

    Policies(JdbcClient jdbc, Policy policy, Journal journal, CurrentActor actor) {
        this.jdbc = jdbc;
        this.policy = policy;
        this.journal = journal;
        this.actor = actor;
    }

    /**
     * A version that nobody has approved yet.
     *
     * @param now what holds on its first day without it; null where there is none
     */
    public record Proposed(Policy.PolicyFigure figure, String enteredBy, Policy.@Nullable PolicyFigure now) {}

    /** Returns the versions that nobody has approved yet. */
    public List<Proposed> proposed() {
        return jdbc
                .sql("select * from policy_figure where approved_by is null order by policy_key, policy_version")
                .query((rs, row) -> new Proposed(Policy.figure(rs, row), rs.getString("entered_by"), null))
                .list()
                .stream()
                .map(one -> new Proposed(
                        one.figure(),
                        one.enteredBy(),
                        policy.on(one.figure().validFrom()).get(one.figure().key())))
                .toList();
    }

    /**
     * Approves a version of a figure.
     *
     * @throws PolicyRefusedException if it was entered by the same person, or there is no such version to be approved
     */
    @PreAuthorize("hasAnyRole('MANAGER', 'ASSESSOR', 'INSPECTOR')")
    @Transactional
    public void approve(String key, int version) {
        CurrentActor.Actor acting = actor.get();
        boolean own = proposed().stream()
                .filter(one -> one.figure().key().equals(key) && one.figure().version() == version)
                .anyMatch(one -> one.enteredBy().equals(acting.name()));
        if (own && acting.accountId() != null) {
            throw new PolicyRefusedException("", "own", List.of());
        }
        boolean approved =
                jdbc.sql("update policy_figure set approved_by = ? where policy_key = ? and policy_version = ?"
                                        + " and approved_by is null")
                                .params(acting.name(), key, version)
                                .update()
                        == 1;
        if (!approved) {
            throw new PolicyRefusedException("", "gone", List.of());
        }
        journal.write("policy-figure.approved", "policy-figure", version, key);
    }

    /**
     * Enters a new version of a figure, to be approved by a second person. What is there already with the same value is left as it is.
     *
     * @throws PolicyRefusedException if there is no such figure, the value cannot be meant, or a later version is there already
     */
    @PreAuthorize("hasRole('INSPECTOR')")
    @Transactional
    public void enter(PolicyDraft draft) {
        Sensible sensible = sensible(draft.key());
        boolean whole = draft.key().equals(Policy.TRAMWAY_TABLE) || sensible.equals(BRAKES);
        if (draft.value() < sensible.least() || draft.value() > sensible.most()) {
            throw new PolicyRefusedException(
                    "value", "value", List.of(plain(sensible.least()), plain(sensible.most()), sensible.unit()));
        }
        if (whole && draft.value() != Math.rint(draft.value())) {
            throw new PolicyRefusedException("value", "whole", List.of());
        }
        lengths(draft);
        boolean there = Optional.ofNullable(policy.on(draft.validFrom()).get(draft.key()))
                        .filter(holds -> same(holds, draft))
                        .isPresent()
                || proposed().stream()
                        .map(Proposed::figure)
                        .anyMatch(one -> one.key().equals(draft.key())
                                && same(one, draft)
                                && one.validFrom().equals(draft.validFrom()));
        if (there) {
            return;
        }
        Versions versions = jdbc.sql(
                        "select coalesce(max(policy_version), 0) as newest,"
                                + " count(case when valid_from > ? then 1 end) as later from policy_figure where policy_key = ?")
                .params(draft.validFrom(), draft.key())
                .query((rs, row) -> new Versions(rs.getInt("newest"), rs.getInt("later")))
                .single();
        if (versions.later() > 0) {
            throw new PolicyRefusedException("valid_from", "later-there", List.of());
        }
        jdbc.sql(
                        "insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner,"
                                + " valid_from, entered_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        draft.key(),
                        versions.newest() + 1,
                        draft.value(),
                        sensible.unit(),
                        draft.origin().name(),
                        draft.source(),
                        draft.owner(),
                        draft.validFrom(),
                        actor.get().name())
                .update();
        journal.write("policy-figure.entered", "policy-figure", versions.newest() + 1L, draft.key());
    }

    private static boolean same(Policy.PolicyFigure figure, PolicyDraft draft) {
        return figure.value() == draft.value()
                && figure.origin() == draft.origin()
                && figure.source().equals(draft.source())
                && figure.owner().equals(draft.owner());
    }

    private record Versions(int newest, int later) {}

    private static Sensible sensible(String key) {
        Sensible sensible = BY_VEHICLES.matcher(key).matches()
                ? BRAKES
                : BY_SLOPE.matcher(key).matches() ? SHARE : SENSIBLE.get(key);
        if (sensible == null) {
            throw new PolicyRefusedException("key", "unknown", List.of());
        }
        return sensible;
    }

    private static void lengths(PolicyDraft draft) {
        if (draft.source().length() > SOURCE_LONGEST) {
            throw new PolicyRefusedException("source", "too-long", List.of(Integer.toString(SOURCE_LONGEST)));
        }
        if (draft.owner().length() > OWNER_LONGEST) {
            throw new PolicyRefusedException("owner", "too-long", List.of(Integer.toString(OWNER_LONGEST)));
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
