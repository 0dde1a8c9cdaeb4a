package org.crosshead.route.web;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.crosshead.route.TrainKind;
import org.crosshead.route.web.Entry.Quantity;
import org.jspecify.annotations.Nullable;

/** The entries of a route's lists as lines of text, both ways. */
final class TypedLists {

    static final int GRADIENT_FIELDS = 5;
    static final int CURVE_FIELDS = 5;
    static final int LIMIT_FIELDS = 8;
    static final int FEATURE_FIELDS = 12;

    private static final String ALL = "all";
    private static final String ANY = "any";
    private static final String TENDER_FIRST = "tender first";
    private static final String DAY = "day";
    private static final String NIGHT = "night";
    private static final String DAY_AND_NIGHT = "day and night";
    private static final Pattern GRADIENT = Pattern.compile(
            "level|(rise|fall) (?:1 in (\\d{1,6}(?:\\.\\d{1,6})?)|(\\d{1,3}(?:\\.\\d{1,6})?) per mille)");

    private TypedLists() {}

    static GradientLength gradient(Entry entry) {
        double from = entry.measure(0);
        double to = entry.measure(1);
        Matcher matcher = GRADIENT.matcher(entry.text(2).replaceAll("\\s+", " "));
        if (!matcher.matches()) {
            entry.refuse("gradient", entry.text(2));
            return new GradientLength(from, to, GradientNotation.LEVEL, 0, entry.origin(3), entry.text(4));
        }
        double sign = "fall".equals(matcher.group(1)) ? -1 : 1;
        String oneIn = matcher.group(2);
        String perMille = matcher.group(3);
        GradientNotation notation = GradientNotation.LEVEL;
        double value = 0;
        if (oneIn != null) {
            notation = GradientNotation.ONE_IN;
            value = sign * Double.parseDouble(oneIn);
        } else if (perMille != null) {
            notation = GradientNotation.PER_MILLE;
            value = sign * Double.parseDouble(perMille);
        }
        return new GradientLength(from, to, notation, value, entry.origin(3), entry.text(4));
    }

    static String line(GradientLength length, MeasureUnit unit) {
        String way = length.value() < 0 ? "fall " : "rise ";
        String size = Numbers.typed(Math.abs(length.value()));
        String gradient = switch (length.notation()) {
            case ONE_IN -> way + "1 in " + size;
            case PER_MILLE -> way + size + " per mille";
            case LEVEL -> "level";
        };
        return Entry.line(
                Measures.exact(length.fromMeasure(), unit),
                Measures.exact(length.toMeasure(), unit),
                gradient,
                Entry.word(length.origin()),
                length.note());
    }

    static CurveLength curve(Entry entry) {
        double from = entry.measure(0);
        double to = entry.measure(1);
        Quantity<LengthUnit> radius = entry.quantityNeeded(2, LengthUnit.class);
        return new CurveLength(from, to, radius.number(), radius.unit(), entry.origin(3), entry.text(4));
    }

    static String line(CurveLength length, MeasureUnit unit) {
        return Entry.line(
                Measures.exact(length.fromMeasure(), unit),
                Measures.exact(length.toMeasure(), unit),
                Quantity.typed(length.radius(), length.radiusUnit()),
                Entry.word(length.origin()),
                length.note());
    }

    static LimitLength limit(Entry entry) {
        double from = entry.measure(0);
        double to = entry.measure(1);
        Quantity<SpeedUnit> limit = entry.quantityNeeded(2, SpeedUnit.class);
        Scope scope = entry.choice(3, Scope.BOTH);
        TrainKind kind = isDefault(entry.text(4), ALL) ? null : entry.choiceNeeded(4, TrainKind.class);
        boolean tenderFirst = entry.text(5).equalsIgnoreCase(TENDER_FIRST);
        if (!tenderFirst && !isDefault(entry.text(5), ANY)) {
            entry.refuse("choice", entry.text(5), ANY + ", " + TENDER_FIRST);
        }
        return new LimitLength(
                from, to, limit.number(), limit.unit(), scope, kind, tenderFirst, entry.origin(6), entry.text(7));
    }

    static String line(LimitLength length, MeasureUnit unit) {
        TrainKind kind = length.trainKind();
        return Entry.line(
                Measures.exact(length.fromMeasure(), unit),
                Measures.exact(length.toMeasure(), unit),
                Quantity.typed(length.limit(), length.limitUnit()),
                Entry.word(length.scope()),
                kind == null ? ALL : Entry.word(kind),
                length.tenderFirst() ? TENDER_FIRST : ANY,
                Entry.word(length.origin()),
                length.note());
    }

    static Feature feature(Entry entry) {
        FeatureKind kind = entry.choiceNeeded(0, FeatureKind.class);
        double at = entry.measure(1);
        Double to = entry.measureIfAny(2);
        Quantity<LengthUnit> sighting = entry.quantity(7, LengthUnit.class).orElse(null);
        Quantity<LengthUnit> length = entry.quantity(8, LengthUnit.class).orElse(null);
        if (sighting != null && length != null && sighting.unit() != length.unit()) {
            entry.refuse("two-units");
        }
        String seen = entry.text(9).toLowerCase(Locale.ROOT);
        if (!seen.isEmpty() && !seen.equals(DAY) && !seen.equals(NIGHT) && !seen.equals(DAY_AND_NIGHT)) {
            entry.refuse("choice", entry.text(9), DAY + ", " + NIGHT + ", " + DAY_AND_NIGHT);
        }
        return new Feature(
                kind,
                at,
                to,
                entry.text(3),
                entry.choice(4, Scope.BOTH),
                isDefault(entry.text(5), ALL) ? null : entry.text(5),
                entry.text(6),
                sighting == null ? null : Double.valueOf(sighting.number()),
                length == null ? null : Double.valueOf(length.number()),
                unit(sighting, length),
                seen.startsWith(DAY),
                seen.endsWith(NIGHT),
                entry.origin(10),
                entry.text(11));
    }

    static String line(Feature feature, MeasureUnit unit) {
        Double to = feature.toMeasure();
        String line = feature.line();
        return Entry.line(
                Entry.word(feature.kind()),
                Measures.exact(feature.atMeasure(), unit),
                to == null ? "" : Measures.exact(to, unit),
                feature.name(),
                Entry.word(feature.scope()),
                line == null ? ALL : line,
                feature.detail(),
                Quantity.typed(feature.sighting(), feature.lengthUnit()),
                Quantity.typed(feature.length(), feature.lengthUnit()),
                seen(feature),
                Entry.word(feature.origin()),
                feature.note());
    }

    private static String seen(Feature feature) {
        if (feature.seenByDay()) {
            return feature.seenByNight() ? DAY_AND_NIGHT : DAY;
        }
        return feature.seenByNight() ? NIGHT : "";
    }

    private static @Nullable LengthUnit unit(
            @Nullable Quantity<LengthUnit> sighting, @Nullable Quantity<LengthUnit> length) {
        if (sighting != null) {
            return sighting.unit();
        }
        return length == null ? null : length.unit();
    }

    private static boolean isDefault(String text, String word) {
        return text.isEmpty() || text.equalsIgnoreCase(word);
    }
}
