package org.crosshead.route;

import java.util.List;
import org.crosshead.platform.Origin;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What a revision of a route consists of, in the database: each list in the order in which it lies along the route. */
@Repository
class RouteLists {

    private final JdbcClient jdbc;

    RouteLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(long revisionId, RouteDraft draft) {
        for (int i = 0; i < draft.lines().size(); i++) {
            jdbc.sql("insert into running_line (revision_id, line_order, line_name) values (?, ?, ?)")
                    .params(revisionId, i + 1, draft.lines().get(i))
                    .update();
        }
        for (int i = 0; i < draft.gradients().size(); i++) {
            insert(revisionId, i + 1, draft.gradients().get(i));
        }
        for (int i = 0; i < draft.curves().size(); i++) {
            insert(revisionId, i + 1, draft.curves().get(i));
        }
        for (int i = 0; i < draft.limits().size(); i++) {
            insert(revisionId, i + 1, draft.limits().get(i));
        }
        for (int i = 0; i < draft.features().size(); i++) {
            insert(revisionId, i + 1, draft.features().get(i));
        }
    }

    private void insert(long revisionId, int order, GradientLength length) {
        jdbc.sql("""
                        insert into gradient_length (revision_id, length_order, from_measure, to_measure, notation,
                            gradient_value, origin, note)
                        values (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(revisionId, order, length.fromMeasure(), length.toMeasure())
                .params(
                        length.notation().name(),
                        length.value(),
                        length.origin().name(),
                        length.note())
                .update();
    }

    private void insert(long revisionId, int order, CurveLength length) {
        jdbc.sql("""
                        insert into curve_length (revision_id, length_order, from_measure, to_measure, radius,
                            radius_unit, origin, note)
                        values (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(revisionId, order, length.fromMeasure(), length.toMeasure(), length.radius())
                .params(length.radiusUnit().name(), length.origin().name(), length.note())
                .update();
    }

    private void insert(long revisionId, int order, LimitLength length) {
        jdbc.sql("""
                        insert into limit_length (revision_id, length_order, from_measure, to_measure, speed_limit,
                            limit_unit, direction_scope, train_kind, tender_first, origin, note)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(revisionId, order, length.fromMeasure(), length.toMeasure(), length.limit())
                .params(length.limitUnit().name(), length.scope().name())
                .param(name(length.trainKind()))
                .params(length.tenderFirst(), length.origin().name(), length.note())
                .update();
    }

    private void insert(long revisionId, int order, Feature feature) {
        jdbc.sql("""
                        insert into feature (revision_id, feature_order, kind, at_measure, to_measure, feature_name,
                            direction_scope, line_name, detail, sighting, platform_length, length_unit, seen_by_day,
                            seen_by_night, origin, note)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(revisionId, order, feature.kind().name(), feature.atMeasure())
                .param(feature.toMeasure())
                .params(feature.name(), feature.scope().name())
                .param(feature.line())
                .param(feature.detail())
                .param(feature.sighting())
                .param(feature.length())
                .param(name(feature.lengthUnit()))
                .params(
                        feature.seenByDay(),
                        feature.seenByNight(),
                        feature.origin().name(),
                        feature.note())
                .update();
    }

    List<String> lines(long revisionId) {
        return jdbc.sql("select line_name from running_line where revision_id = ? order by line_order")
                .param(revisionId)
                .query(String.class)
                .list();
    }

    List<GradientLength> gradients(long revisionId) {
        return jdbc.sql("select * from gradient_length where revision_id = ? order by length_order")
                .param(revisionId)
                .query((rs, row) -> new GradientLength(
                        rs.getDouble("from_measure"),
                        rs.getDouble("to_measure"),
                        GradientNotation.valueOf(rs.getString("notation")),
                        rs.getDouble("gradient_value"),
                        Origin.valueOf(rs.getString("origin")),
                        rs.getString("note")))
                .list();
    }

    List<CurveLength> curves(long revisionId) {
        return jdbc.sql("select * from curve_length where revision_id = ? order by length_order")
                .param(revisionId)
                .query((rs, row) -> new CurveLength(
                        rs.getDouble("from_measure"),
                        rs.getDouble("to_measure"),
                        rs.getDouble("radius"),
                        LengthUnit.valueOf(rs.getString("radius_unit")),
                        Origin.valueOf(rs.getString("origin")),
                        rs.getString("note")))
                .list();
    }

    List<LimitLength> limits(long revisionId) {
        return jdbc.sql("select * from limit_length where revision_id = ? order by length_order")
                .param(revisionId)
                .query((rs, row) -> new LimitLength(
                        rs.getDouble("from_measure"),
                        rs.getDouble("to_measure"),
                        rs.getDouble("speed_limit"),
                        SpeedUnit.valueOf(rs.getString("limit_unit")),
                        Scope.valueOf(rs.getString("direction_scope")),
                        constant(TrainKind.class, rs.getString("train_kind")),
                        rs.getBoolean("tender_first"),
                        Origin.valueOf(rs.getString("origin")),
                        rs.getString("note")))
                .list();
    }

    List<Feature> features(long revisionId) {
        return jdbc.sql("select * from feature where revision_id = ? order by feature_order")
                .param(revisionId)
                .query((rs, row) -> new Feature(
                        FeatureKind.valueOf(rs.getString("kind")),
                        rs.getDouble("at_measure"),
                        rs.getObject("to_measure", Double.class),
                        rs.getString("feature_name"),
                        Scope.valueOf(rs.getString("direction_scope")),
                        rs.getString("line_name"),
                        rs.getString("detail"),
                        rs.getObject("sighting", Double.class),
                        rs.getObject("platform_length", Double.class),
                        constant(LengthUnit.class, rs.getString("length_unit")),
                        rs.getBoolean("seen_by_day"),
                        rs.getBoolean("seen_by_night"),
                        Origin.valueOf(rs.getString("origin")),
                        rs.getString("note")))
                .list();
    }

    private static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    private static <E extends Enum<E>> @Nullable E constant(Class<E> type, @Nullable String name) {
        return name == null ? null : Enum.valueOf(type, name);
    }
}
