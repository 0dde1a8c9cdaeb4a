package org.crosshead.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.exchange.Sheets.Owned;
import org.crosshead.exchange.Sheets.Owners;
import org.crosshead.platform.Origin;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.crosshead.route.TrainKind;

/** Reads routes with their gradients, curves, limits and features. */
final class RouteReader {

    private static final String ROUTE = "route_code";

    private final Sheets sheets;
    private final MeasureUnits units;
    private final ProblemList problems;

    RouteReader(Sheets sheets, MeasureUnits units, ProblemList problems) {
        this.sheets = sheets;
        this.units = units;
        this.problems = problems;
    }

    List<Located<RouteDraft>> routes() {
        Owners owners = Owners.of(sheets, Owned.by(ImportFile.ROUTES, "code"), problems);
        Map<String, List<Line>> gradients = owned(ImportFile.GRADIENTS, owners);
        Map<String, List<Line>> curves = owned(ImportFile.CURVES, owners);
        Map<String, List<Line>> limits = owned(ImportFile.LIMITS, owners);
        Map<String, List<Line>> features = owned(ImportFile.FEATURES, owners);
        return sheets.lines(ImportFile.ROUTES).stream()
                .map(line -> {
                    String code = line.text("code");
                    return route(
                            line,
                            new Lists(
                                    gradients.getOrDefault(code, List.of()),
                                    curves.getOrDefault(code, List.of()),
                                    limits.getOrDefault(code, List.of()),
                                    features.getOrDefault(code, List.of())));
                })
                .toList();
    }

    /** The lines of one route. */
    private record Lists(List<Line> gradients, List<Line> curves, List<Line> limits, List<Line> features) {}

    private Map<String, List<Line>> owned(ImportFile file, Owners owners) {
        return sheets.lines(Owned.by(file, ROUTE), owners, problems);
    }

    private Located<RouteDraft> route(Line line, Lists lists) {
        Optional<MeasureUnit> unit = units.of(line, "code");
        Parts parts = new Parts();
        RouteDraft draft = new RouteDraft(
                line.text("code"),
                line.text("name"),
                line.word("measure_unit", MeasureUnit.class),
                line.text("rising_name"),
                line.text("falling_name"),
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                Arrays.stream(line.text("lines").split("\\|"))
                        .map(String::strip)
                        .toList(),
                parts.list("gradients", lists.gradients(), one -> gradient(one, unit)),
                parts.list("curves", lists.curves(), one -> curve(one, unit)),
                parts.list("limits", lists.limits(), one -> limit(one, unit)),
                parts.list("features", lists.features(), one -> feature(one, unit)),
                line.yes("estimates_accepted"));
        return new Located<>(draft, line, parts.byPath());
    }

    private RouteDraft.GradientLength gradient(Line line, Optional<MeasureUnit> unit) {
        GradientNotation notation = line.word("notation", GradientNotation.class);
        if (notation != GradientNotation.LEVEL && line.text("value").isEmpty()) {
            problems.refuse(line, "value", "cell-missing");
        }
        return new RouteDraft.GradientLength(
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                notation,
                line.number("value"),
                line.word("origin", Origin.class),
                line.text("note"));
    }

    private RouteDraft.CurveLength curve(Line line, Optional<MeasureUnit> unit) {
        return new RouteDraft.CurveLength(
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                line.number("radius"),
                line.word("radius_unit", LengthUnit.class),
                line.word("origin", Origin.class),
                line.text("note"));
    }

    private RouteDraft.LimitLength limit(Line line, Optional<MeasureUnit> unit) {
        return new RouteDraft.LimitLength(
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                line.number("limit"),
                line.word("limit_unit", SpeedUnit.class),
                line.word("scope", Scope.class),
                line.wordOrNull("train_kind", TrainKind.class),
                line.yes("tender_first"),
                line.word("origin", Origin.class),
                line.text("note"));
    }

    private RouteDraft.Feature feature(Line line, Optional<MeasureUnit> unit) {
        return new RouteDraft.Feature(
                line.word("kind", FeatureKind.class),
                units.measure(line, "at_measure", unit),
                units.measureOrNull(line, "to_measure", unit),
                line.text("name"),
                line.word("scope", Scope.class),
                line.textOrNull("line"),
                line.text("detail"),
                line.numberOrNull("sighting"),
                line.numberOrNull("length"),
                line.wordOrNull("length_unit", LengthUnit.class),
                line.yes("seen_by_day"),
                line.yes("seen_by_night"),
                line.word("origin", Origin.class),
                line.text("note"));
    }
}
