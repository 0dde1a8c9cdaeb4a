package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.briefing.document.Term;
import org.crosshead.diagram.StripModel.MarkKind;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.MeasureUnit;
import org.jspecify.annotations.Nullable;

/**
 * The strip in words: for each panel the sentences in running order. At one spot what is there comes before what it limits,
 * what the road does, what happens if stopped there, and what is done there.
 */
public final class StripText {

    private static final double LEVEL_WITHIN = 1e-9;

    private final Road road;

    @Nullable
    private final Sureness sureness;

    private final RoadWords words;
    private final boolean mph;

    private StripText(Road road, @Nullable Sureness sureness, RoadWords words) {
        this.road = road;
        this.sureness = sureness;
        this.words = words;
        this.mph = StripFigures.mph(road);
    }

    /** A sentence and the spot it is about. */
    private record Told(double positionM, Phrase phrase) {}

    /** Returns one paragraph for each panel, worded from the messages phrase.strip. */
    public static List<List<Phrase>> paragraphs(
            Road road, List<HandlingRow> handling, @Nullable Sureness sureness, RoadWords words) {
        StripText text = new StripText(road, sureness, words);
        List<List<Phrase>> paragraphs = new ArrayList<>();
        for (int i = 1; i < road.panels().size(); i++) {
            boolean last = i == road.panels().size() - 1;
            paragraphs.add(
                    text.paragraph(road.panels().get(i - 1), road.panels().get(i), last, handling));
        }
        return List.copyOf(paragraphs);
    }

    private List<Phrase> paragraph(double fromM, double toM, boolean last, List<HandlingRow> handling) {
        List<Told> told = new ArrayList<>();
        String start = Posts.at(road, fromM, words);
        road.things().stream().filter(thing -> !thing.name().equals(start)).forEach(thing -> thing(told, thing));
        road.limits().stream()
                .filter(limit -> limit.toM() > fromM)
                .forEach(limit -> told.add(new Told(Math.max(fromM, limit.fromM()), limit(limit))));
        road.gradients().stream()
                .filter(length -> length.toM() > fromM && length.fromM() < toM)
                .forEach(length -> told.add(new Told(Math.max(fromM, length.fromM()), gradient(length, fromM, toM))));
        road.standing().stream()
                .filter(band -> band.toM() > fromM)
                .forEach(band ->
                        told.add(new Told(Math.max(fromM, band.fromM()), Phrase.of("strip.standing." + band.kind()))));
        handling.forEach(row -> {
            Phrase point = Phrase.of("strip.action", Term.text(String.valueOf(row.number())));
            told.add(new Told(row.place().positionM(), point));
            told.add(new Told(row.place().positionM(), row.words()));
        });
        List<Phrase> paragraph = new ArrayList<>();
        paragraph.add(Phrase.of("strip.start", Term.text(start)));
        forecast(fromM, paragraph);
        bands(fromM, paragraph);
        told.stream()
                .filter(one -> one.positionM() >= fromM && (one.positionM() < toM || (last && one.positionM() <= toM)))
                .sorted(Comparator.comparingDouble(Told::positionM))
                .forEach(one -> paragraph.add(one.phrase()));
        return List.copyOf(paragraph);
    }

    private void thing(List<Told> told, Road.Thing thing) {
        MarkKind kind = Marks.kind(thing.kind());
        if (kind == MarkKind.SIGNAL) {
            return;
        }
        String code = switch (kind) {
            case PLACE, LANDMARK, SIGNAL -> "strip.place";
            case TUNNEL -> "strip.tunnel";
            case WATER -> "strip.water";
            case CROSSING, HAZARD -> "strip.hazard";
        };
        told.add(new Told(thing.fromM(), Phrase.of(code, Term.text(Marks.said(thing, words)))));
    }

    private Phrase limit(Road.LimitLength limit) {
        Term speed = Term.text(Posts.decimal(limit.limit()));
        Term unit = Term.text(words.say(StripFigures.unitCode(StripFigures.mph(limit))));
        return "TEMPORARY".equals(limit.cause())
                ? Phrase.of("strip.restriction", speed, unit, Term.text(limit.number()))
                : Phrase.of("strip.limit", speed, unit);
    }

    private Phrase gradient(Road.GradientLength length, double fromM, double toM) {
        double shownM = Math.min(toM, length.toM()) - Math.max(fromM, length.fromM());
        boolean miles = road.measures().isEmpty() || road.measures().get(0).unit() == MeasureUnit.CHAINS;
        Term distance = Term.text(Posts.decimal(miles ? Units.milesFromMetres(shownM) : Units.kmFromMetres(shownM)));
        Term unit = Term.text(words.say(miles ? "strip.distance.miles" : "strip.distance.km"));
        if (Math.abs(length.gradient()) < LEVEL_WITHIN) {
            return Phrase.of("strip.level", distance, unit);
        }
        String figure = words.say("strip.gradient." + length.notation(), Posts.decimal(Math.abs(length.value())));
        return Phrase.of(length.gradient() > 0 ? "strip.climb" : "strip.fall", Term.text(figure), distance, unit);
    }

    /** The first sample at or past the spot. */
    private void forecast(double positionM, List<Phrase> paragraph) {
        Road.Forecast run = road.forecast();
        for (int i = 0; i < run.positionM().size(); i++) {
            if (run.positionM().get(i) >= positionM) {
                paragraph.add(Phrase.of(
                        "strip.forecast",
                        whole(StripFigures.speed(mph, run.speedMps().get(i))),
                        Term.text(words.say(StripFigures.unitCode(mph))),
                        whole(run.pressurePsi().get(i)),
                        whole(run.glassPercent().get(i))));
                return;
            }
        }
    }

    /** The first place of the bands at or past the spot. */
    private void bands(double positionM, List<Phrase> paragraph) {
        if (sureness == null) {
            return;
        }
        Sureness.Along along = sureness.along();
        for (int i = 0; i < along.positionM().size(); i++) {
            if (along.positionM().get(i) >= positionM) {
                paragraph.add(Phrase.of(
                        "strip.bands",
                        whole(along.pressureLowPsi().get(i)),
                        whole(along.pressureHighPsi().get(i)),
                        whole(along.glassLowPercent().get(i)),
                        whole(along.glassHighPercent().get(i))));
                return;
            }
        }
    }

    private static Term whole(double value) {
        return Term.text(String.valueOf(Math.round(value)));
    }
}
