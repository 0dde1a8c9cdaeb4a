package org.crosshead.briefing.web;

import java.util.Locale;
import org.crosshead.briefing.document.Road;
import org.crosshead.diagram.StripModel.Mark;
import org.crosshead.diagram.StripModel.MarkKind;
import org.crosshead.route.FeatureKind;

/** How the things of a road are drawn. */
final class Marks {

    private Marks() {}

    /** @param time booked there; may be empty */
    static Mark of(Road.Thing thing, String time, RoadWords words) {
        MarkKind kind = kind(thing.kind());
        return new Mark(kind, thing.fromM(), thing.toM(), name(thing, words), kind == MarkKind.PLACE ? time : "");
    }

    static MarkKind kind(FeatureKind kind) {
        return switch (kind) {
            case STATION, TIMING_POINT -> MarkKind.PLACE;
            case SIGNAL -> MarkKind.SIGNAL;
            case LEVEL_CROSSING -> MarkKind.CROSSING;
            case TUNNEL -> MarkKind.TUNNEL;
            case BRIDGE, SUMMIT, LANDMARK, TURNTABLE -> MarkKind.LANDMARK;
            case WATER_COLUMN, WATER_TROUGH -> MarkKind.WATER;
            case CATCH_POINTS, POOR_ADHESION, OVERHEAD_WIRES, WHISTLE_BOARD, WARNING_BOARD, HAZARD -> MarkKind.HAZARD;
        };
    }

    /** Returns what stands at it on the strip: its name, or the kind where that is what matters. */
    static String name(Road.Thing thing, RoadWords words) {
        return switch (thing.kind()) {
            case CATCH_POINTS, POOR_ADHESION, OVERHEAD_WIRES, WHISTLE_BOARD, WARNING_BOARD -> kind(thing, words);
            default -> thing.name().isBlank() ? kind(thing, words) : thing.name();
        };
    }

    /** Returns what it is called in words: its kind and its name, once where the name says the kind. */
    static String said(Road.Thing thing, RoadWords words) {
        String kind = kind(thing, words);
        boolean place = kind(thing.kind()) == MarkKind.PLACE || thing.kind() == FeatureKind.LANDMARK;
        boolean saysKind = thing.name().toLowerCase(Locale.ROOT).contains(kind.toLowerCase(Locale.ROOT));
        if (thing.name().isBlank()) {
            return kind;
        }
        return place || saysKind ? thing.name() : words.say("strip.named", kind, thing.name());
    }

    private static String kind(Road.Thing thing, RoadWords words) {
        return words.say("strip.thing." + thing.kind());
    }
}
