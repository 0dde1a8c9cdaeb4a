package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.briefing.document.Road;
import org.crosshead.diagram.StripModel;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;

/** The posts of the measures along a road, and what a spot on it is called. */
final class Posts {

    private static final double CHAINS_PER_MILE = 80;
    private static final double NAMED_WITHIN_M = 400;

    private Posts() {}

    /** A post at each whole mile or kilometre. */
    static List<StripModel.Tick> ticks(Road road, RoadWords words) {
        List<StripModel.Tick> ticks = new ArrayList<>();
        for (Road.Measure measure : road.measures()) {
            double perPost = measure.unit() == MeasureUnit.CHAINS ? CHAINS_PER_MILE : 1;
            double endMeasure = measureAt(measure, measure.toM());
            double low = Math.min(measure.measureAtFrom(), endMeasure);
            double high = Math.max(measure.measureAtFrom(), endMeasure);
            for (long post = (long) Math.ceil(low / perPost - 1e-9); post * perPost <= high + 1e-9; post++) {
                double alongM = measure.unit().metres(Math.abs(post * perPost - measure.measureAtFrom()));
                String label = words.say("strip.measure." + measure.unit(), String.valueOf(post));
                ticks.add(new StripModel.Tick(measure.fromM() + alongM, label));
            }
        }
        ticks.sort(Comparator.comparingDouble(StripModel.Tick::positionM));
        return ticks;
    }

    /** Returns the name of the station or timing point near a spot, else its measure, else its distance in kilometres. */
    static String at(Road road, double positionM, RoadWords words) {
        return road.things().stream()
                .filter(thing -> thing.kind() == FeatureKind.STATION || thing.kind() == FeatureKind.TIMING_POINT)
                .filter(thing -> Math.abs(thing.fromM() - positionM) <= NAMED_WITHIN_M)
                .min(Comparator.comparingDouble(thing -> Math.abs(thing.fromM() - positionM)))
                .map(Road.Thing::name)
                .or(() -> measured(road, positionM, words))
                .orElseGet(() -> words.say("strip.at.KILOMETRES", decimal(positionM / 1000)));
    }

    private static Optional<String> measured(Road road, double positionM, RoadWords words) {
        return road.measures().stream()
                .filter(measure -> positionM >= measure.fromM() && positionM <= measure.toM())
                .findFirst()
                .map(measure -> {
                    double value = measureAt(measure, positionM);
                    double posts = measure.unit() == MeasureUnit.CHAINS ? value / CHAINS_PER_MILE : value;
                    return words.say("strip.at." + measure.unit(), decimal(posts));
                });
    }

    private static double measureAt(Road.Measure measure, double positionM) {
        double along = measure.unit().fromMetres(positionM - measure.fromM());
        return measure.measureAtFrom() + (measure.rising() ? along : -along);
    }

    /** One decimal, none where it is nought. */
    static String decimal(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
