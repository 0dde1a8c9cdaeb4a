package org.crosshead.briefing.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.briefing.document.TimeRow;
import org.crosshead.diagram.StripModel;
import org.crosshead.diagram.StripModel.Fill;
import org.crosshead.diagram.StripModel.Stretch;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** Turns the road of a briefing into what the strip shows; the one place where its units change. */
final class StripFigures {

    private static final String LEVEL = "LEVEL";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H.mm", Locale.ROOT);

    private final Road road;
    private final RoadWords words;
    private final boolean mph;

    private StripFigures(Road road, RoadWords words) {
        this.road = road;
        this.words = words;
        this.mph = mph(road);
    }

    static StripModel of(Road road, RoadWords words) {
        return new StripFigures(road, words).model(List.of(), Map.of(), StripModel.Bands.NONE, null);
    }

    static StripModel of(BriefingDocument document, RoadWords words) {
        Map<String, String> times = new TreeMap<>();
        ZoneId zone = ZoneId.of(document.heading().zone());
        for (TimeRow row : document.times()) {
            Instant booked = row.bookedDeparture() == null ? row.bookedArrival() : row.bookedDeparture();
            if (booked != null) {
                times.putIfAbsent(row.name(), CLOCK.format(booked.atZone(zone)));
            }
        }
        return new StripFigures(document.road(), words)
                .model(document.handling(), times, bands(document.sureness()), document.fireman());
    }

    /** Says whether a unit of speed, as stored with a limit, is miles an hour. */
    static boolean mph(Road.LimitLength limit) {
        return limit.unit().toUpperCase(Locale.ROOT).startsWith("M");
    }

    /** Returns the code of the words for a unit of speed. */
    static String unitCode(boolean mph) {
        return mph ? "strip.speed.MPH" : "strip.speed.KMH";
    }

    /** Says whether speeds are shown in miles an hour: as the first limit is printed, else as the road is measured. */
    static boolean mph(Road road) {
        if (!road.limits().isEmpty()) {
            return mph(road.limits().get(0));
        }
        return road.measures().isEmpty() || road.measures().get(0).unit() == org.crosshead.route.MeasureUnit.CHAINS;
    }

    static double speed(boolean mph, double speedMps) {
        return mph ? Units.mphFromMps(speedMps) : Units.kmhFromMps(speedMps);
    }

    private StripModel model(
            List<HandlingRow> handling,
            Map<String, String> times,
            StripModel.Bands bands,
            @Nullable FiremanPlan fireman) {
        ControlStretches controls = new ControlStretches(road.forecast(), words);
        return new StripModel(
                road.lengthM(),
                words.say(unitCode(mph)),
                Posts.ticks(road, words),
                road.things().stream()
                        .map(thing -> Marks.of(thing, times.getOrDefault(thing.name(), ""), words))
                        .toList(),
                road.limits().stream().map(this::limit).toList(),
                road.gradients().stream().map(this::slope).toList(),
                road.curves().stream().map(this::curve).toList(),
                road.standing().stream().map(this::standing).toList(),
                controls.settings(),
                controls.braking(),
                FiremanWork.of(fireman),
                handling.stream().map(this::point).toList(),
                run(bands),
                captions());
    }

    /** A limit printed in the other unit bears it. */
    private StripModel.Limit limit(Road.LimitLength limit) {
        double speed = speed(mph, limit.limitMps());
        String figure = Posts.decimal(limit.limit());
        String label =
                mph(limit) == mph ? figure : words.say("strip.limit.other", figure, words.say(unitCode(mph(limit))));
        boolean temporary = "TEMPORARY".equals(limit.cause());
        return new StripModel.Limit(limit.fromM(), limit.toM(), speed, label, temporary);
    }

    private StripModel.Slope slope(Road.GradientLength length) {
        boolean level = LEVEL.equals(length.notation()) || length.gradient() == 0;
        String figure = level ? words.say("strip.gradient.LEVEL") : Posts.decimal(Math.abs(length.value()));
        String label = level ? figure : words.say("strip.gradient." + length.notation(), figure);
        return new StripModel.Slope(length.fromM(), length.toM(), level ? 0 : length.gradient(), label, figure);
    }

    private Stretch curve(Road.CurveLength curve) {
        String code = curve.radiusUnit().toUpperCase(Locale.ROOT).startsWith("C") ? "chains" : "metres";
        String label = words.say("strip.curve." + code, Posts.decimal(curve.radius()));
        return new Stretch(curve.fromM(), curve.toM(), Fill.OPEN, label);
    }

    private Stretch standing(Road.Band band) {
        Fill fill = switch (band.kind()) {
            case "STARTS" -> Fill.OPEN;
            case "STARTS_SET_BACK" -> Fill.HATCHED;
            case "STARTS_WITH_SAND" -> Fill.DOTTED;
            case "NEEDS_ASSISTANCE" -> Fill.CROSSED;
            case "DOES_NOT_START" -> Fill.SOLID;
            default -> throw new IllegalArgumentException("no such kind of standing: " + band.kind());
        };
        return new Stretch(band.fromM(), band.toM(), fill, words.say("strip.standing." + band.kind()));
    }

    private StripModel.Point point(HandlingRow row) {
        String number = String.valueOf(row.number());
        return new StripModel.Point(
                row.number(),
                row.place().positionM(),
                "#h" + number,
                words.say("strip.point", number),
                row.forFireman());
    }

    private static StripModel.Bands bands(@Nullable Sureness sureness) {
        if (sureness == null) {
            return StripModel.Bands.NONE;
        }
        Sureness.Along along = sureness.along();
        return new StripModel.Bands(
                along.positionM(),
                along.pressureLowPsi(),
                along.pressureHighPsi(),
                along.glassLowPercent(),
                along.glassHighPercent());
    }

    private StripModel.Run run(StripModel.Bands bands) {
        Road.Forecast forecast = road.forecast();
        return new StripModel.Run(
                forecast.positionM(),
                forecast.speedMps().stream().map(mps -> speed(mph, mps)).toList(),
                forecast.pressurePsi(),
                forecast.glassPercent(),
                bands);
    }

    private StripModel.Captions captions() {
        return new StripModel.Captions(
                words.say("strip.caption.speed"),
                words.say("strip.caption.gradient"),
                words.say("strip.caption.curves"),
                words.say("strip.caption.water"),
                words.say("strip.caption.hazards"),
                words.say("strip.caption.standing"),
                words.say("strip.caption.points"),
                words.say("strip.caption.cutoff"),
                words.say("strip.caption.regulator"),
                words.say("strip.caption.fireman"),
                words.say("strip.caption.boiler"),
                words.say("strip.caption.glass"),
                words.say("strip.lowest"),
                words.say("strip.brake"),
                words.say("strip.work.fire"),
                words.say("strip.work.injector"),
                words.say("strip.work.blower"));
    }
}
