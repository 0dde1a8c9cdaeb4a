package org.crosshead.route.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.crosshead.platform.Origin;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Scope;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Puts a revision of a route into words. */
@Component
class RoutePageWriter {

    private final RouteWords words;

    RoutePageWriter(RouteWords words) {
        this.words = words;
    }

    RoutePage page(RouteRevision revision) {
        RouteDraft draft = revision.content();
        MeasureUnit unit = draft.measureUnit();
        return new RoutePage(
                head(revision),
                revision.number(),
                draft.hasEstimates() ? estimates(draft) : null,
                outline(revision),
                draft.gradients().stream().map(one -> row(one, unit)).toList(),
                draft.curves().stream().map(one -> row(one, unit)).toList(),
                draft.limits().stream().map(one -> row(one, draft)).toList(),
                draft.features().stream().map(one -> row(one, draft)).toList());
    }

    private RoutePage.Estimates estimates(RouteDraft draft) {
        String which = words.of(
                "route.estimates.which",
                guesses(draft.gradients(), GradientLength::origin),
                guesses(draft.curves(), CurveLength::origin),
                guesses(draft.limits(), LimitLength::origin),
                guesses(draft.features(), Feature::origin));
        String state = words.of(draft.estimatesAccepted() ? "route.estimates.accepted" : "route.estimates.waiting");
        return new RoutePage.Estimates(which + " " + state, !draft.estimatesAccepted());
    }

    private static <T> long guesses(List<T> list, Function<T, Origin> origin) {
        return list.stream().filter(one -> origin.apply(one).isGuess()).count();
    }

    /** A length of route, for a list. */
    String length(double measure, MeasureUnit unit) {
        return unit == MeasureUnit.CHAINS
                ? words.of("route.miles", Numbers.rounded(Units.milesFromMetres(unit.metres(measure))))
                : words.of("route.km", Numbers.rounded(measure));
    }

    String moment(Instant moment) {
        return words.moment(moment);
    }

    String scope(Scope scope, RouteDraft draft) {
        return switch (scope) {
            case BOTH -> words.of("route.both-directions");
            case RISING -> draft.risingName();
            case FALLING -> draft.fallingName();
        };
    }

    private RoutePage.Head head(RouteRevision revision) {
        RouteDraft draft = revision.content();
        MeasureUnit unit = draft.measureUnit();
        return new RoutePage.Head(
                draft.code(),
                draft.name(),
                Measures.exact(draft.fromMeasure(), unit),
                Measures.exact(draft.toMeasure(), unit),
                length(draft.toMeasure() - draft.fromMeasure(), unit),
                words.of("route.directions", draft.risingName(), draft.fallingName()),
                String.join(", ", draft.lines()),
                words.of(
                        "route.revision.made",
                        revision.number(),
                        words.moment(revision.madeAt()),
                        revision.madeBy(),
                        revision.reason()));
    }

    /** The road in one paragraph, as the measure rises: what the diagram shows. */
    private String outline(RouteRevision revision) {
        RouteDraft draft = revision.content();
        MeasureUnit unit = draft.measureUnit();
        List<String> parts = new ArrayList<>();
        for (GradientLength length : draft.gradients()) {
            String at = length.fromMeasure() == draft.fromMeasure() ? "" : places(draft, length.fromMeasure());
            parts.add(at
                    + words.of(
                            "route.outline.length",
                            gradient(length),
                            length(length.toMeasure() - length.fromMeasure(), unit),
                            Measures.exact(length.toMeasure(), unit)));
        }
        return words.of(
                "route.outline",
                draft.risingName(),
                Measures.exact(draft.fromMeasure(), unit),
                places(draft, draft.fromMeasure()) + String.join("; ", parts),
                rise(revision));
    }

    private String places(RouteDraft draft, double measure) {
        return draft.features().stream()
                .filter(one -> one.atMeasure() == measure && !one.name().isEmpty())
                .map(one -> words.of("route.outline.place", one.name()))
                .collect(Collectors.joining());
    }

    private String rise(RouteRevision revision) {
        PathGeometry path = RoutePaths.rising(revision);
        GradientProfile profile = path.profile();
        double riseM = profile.heightM(profile.endM());
        boolean chains = revision.content().measureUnit() == MeasureUnit.CHAINS;
        String size = Numbers.rounded(Math.rint(Math.abs(chains ? Units.feetFromMetres(riseM) : riseM)));
        String code = "route.outline." + (riseM < 0 ? "lower." : "higher.")
                + revision.content().measureUnit();
        return words.of(code, size);
    }

    private String gradient(GradientLength length) {
        String way = length.value() < 0 ? "fall" : "rise";
        String size = Numbers.typed(Math.abs(length.value()));
        return switch (length.notation()) {
            case ONE_IN -> words.of("route.gradient." + way + "-one-in", size);
            case PER_MILLE -> words.of("route.gradient." + way + "-per-mille", size);
            case LEVEL -> words.of("route.gradient.level");
        };
    }

    private RoutePage.Row row(GradientLength length, MeasureUnit unit) {
        return new RoutePage.Row(
                Measures.exact(length.fromMeasure(), unit),
                Measures.exact(length.toMeasure(), unit),
                gradient(length),
                "",
                words.of(length.origin()),
                style(length.origin()),
                length.note());
    }

    private RoutePage.Row row(CurveLength length, MeasureUnit unit) {
        return new RoutePage.Row(
                Measures.exact(length.fromMeasure(), unit),
                Measures.exact(length.toMeasure(), unit),
                lengthWords(length.radius(), length.radiusUnit()),
                "",
                words.of(length.origin()),
                style(length.origin()),
                length.note());
    }

    private RoutePage.Row row(LimitLength length, RouteDraft draft) {
        List<String> holdsFor = new ArrayList<>(List.of(scope(length.scope(), draft)));
        if (length.trainKind() != null) {
            holdsFor.add(words.of(length.trainKind()));
        }
        if (length.tenderFirst()) {
            holdsFor.add(words.of("route.tender-first"));
        }
        return new RoutePage.Row(
                Measures.exact(length.fromMeasure(), draft.measureUnit()),
                Measures.exact(length.toMeasure(), draft.measureUnit()),
                words.of("route.speed." + length.limitUnit(), Numbers.typed(length.limit())),
                String.join(", ", holdsFor),
                words.of(length.origin()),
                style(length.origin()),
                length.note());
    }

    private RoutePage.FeatureRow row(Feature feature, RouteDraft draft) {
        MeasureUnit unit = draft.measureUnit();
        Double to = feature.toMeasure();
        String from = Measures.exact(feature.atMeasure(), unit);
        String line = feature.line();
        String holdsFor = scope(feature.scope(), draft);
        return new RoutePage.FeatureRow(
                to == null ? from : words.of("route.from-to", from, Measures.exact(to, unit)),
                words.of(feature.kind()),
                feature.name(),
                line == null ? holdsFor : words.of("route.on-line", holdsFor, line),
                details(feature),
                words.of(feature.origin()),
                style(feature.origin()),
                feature.note());
    }

    private String details(Feature feature) {
        List<String> details = new ArrayList<>();
        if (!feature.detail().isEmpty()) {
            details.add(feature.detail());
        }
        addLength(details, "route.feature.length", feature.length(), feature.lengthUnit());
        addLength(details, "route.feature.sighting", feature.sighting(), feature.lengthUnit());
        if (feature.seenByDay() || feature.seenByNight()) {
            String times = feature.seenByDay() ? (feature.seenByNight() ? "day-and-night" : "day") : "night";
            details.add(words.of("route.feature.seen." + times));
        }
        return String.join("; ", details);
    }

    private void addLength(List<String> details, String code, @Nullable Double length, @Nullable LengthUnit unit) {
        if (length != null && unit != null) {
            details.add(words.of(code, lengthWords(length, unit)));
        }
    }

    private String lengthWords(double length, LengthUnit unit) {
        return words.of("route.length." + unit, Numbers.typed(length));
    }

    private static String style(Origin origin) {
        return switch (origin) {
            case ESTIMATED -> "estimate";
            case UNKNOWN -> "unknown";
            default -> "";
        };
    }
}
