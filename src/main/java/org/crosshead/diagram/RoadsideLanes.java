package org.crosshead.diagram;

import org.crosshead.diagram.StripModel.Mark;
import org.crosshead.diagram.StripModel.MarkKind;
import org.crosshead.diagram.StripModel.Stretch;

/** What else the road holds: curves, places for water, and what calls for care. */
final class RoadsideLanes {

    private static final double CURVES_PX = 20;
    private static final double WATER_PX = 20;
    private static final double HAZARDS_PX = 36;
    private static final double SYMBOL_PX = 11;
    private static final double SIDE_PX = 9;

    private RoadsideLanes() {}

    static Lane curves(Panel panel) {
        Lane lane = Lane.plain(panel, CURVES_PX);
        double y = lane.top() + 10;
        lane.caption(panel.model().captions().curves(), "", y + 4);
        for (Stretch curve : panel.model().curves()) {
            if (panel.shows(curve.fromM(), curve.toM())) {
                curve(lane, curve, y);
            }
        }
        return lane;
    }

    private static void curve(Lane lane, Stretch curve, double y) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(curve.fromM()));
        double x1 = panel.x(panel.within(curve.toM()));
        lane.box(x0, y - 7, x1, y + 7, Ink.PAPER.colour, Ink.SOFT);
        Words words = Words.plain(curve.label(), panel.format().smallPx);
        if (words.widthPx() + 4 <= x1 - x0) {
            lane.label(words, (x0 + x1) / 2, 0, Ink.BLACK, y + 4.5);
        }
    }

    static Lane water(Panel panel) {
        Lane lane = Lane.plain(panel, WATER_PX);
        lane.caption(panel.model().captions().water(), "", lane.top() + 14);
        panel.model().marks().stream()
                .filter(mark -> mark.kind() == MarkKind.WATER && panel.shows(mark.fromM(), PlacesLane.end(mark)))
                .forEach(mark -> water(lane, mark));
        return lane;
    }

    private static void water(Lane lane, Mark mark) {
        double x0 = lane.panel().x(lane.panel().within(mark.fromM()));
        double x1 = lane.panel().x(lane.panel().within(PlacesLane.end(mark)));
        double y = lane.top() + 4;
        if (x1 > x0) {
            lane.box(x0, y + 3, Math.max(x1, x0 + 3), y + 9, Ink.WATER.colour, null);
        } else {
            lane.rule(x0, y, x0, y + 12, Ink.WATER, 2.4f);
            lane.rule(x0 - 1.2, y + 1, x0 + 8, y + 1, Ink.WATER, 2.4f);
            lane.rule(x0 + 7, y + 1, x0 + 7, y + 5, Ink.WATER, 2.4f);
        }
        lane.placer().block(x0, y, Math.max(x1, x0 + 8), y + 12);
        beside(lane, mark, x0, Math.max(x1, x0 + 8), lane.top() + 14);
    }

    static Lane hazards(Panel panel) {
        Lane lane = Lane.plain(panel, HAZARDS_PX);
        lane.caption(panel.model().captions().hazards(), "", lane.top() + 15);
        panel.model().marks().stream()
                .filter(mark -> isHazard(mark) && panel.shows(mark.fromM(), PlacesLane.end(mark)))
                .forEach(mark -> symbol(lane, mark));
        panel.model().marks().stream()
                .filter(mark -> isHazard(mark) && panel.shows(mark.fromM(), PlacesLane.end(mark)))
                .forEach(mark -> {
                    double x = lane.panel().x(lane.panel().within(mark.fromM()));
                    beside(lane, mark, x - 5, x + 5, lane.top() + 15, lane.top() + 30);
                });
        return lane;
    }

    static boolean isHazard(Mark mark) {
        return mark.kind() == MarkKind.HAZARD || mark.kind() == MarkKind.CROSSING;
    }

    private static void symbol(Lane lane, Mark mark) {
        double x = lane.panel().x(lane.panel().within(mark.fromM()));
        double x1 = lane.panel().x(lane.panel().within(PlacesLane.end(mark)));
        double y = lane.top() + 4;
        if (x1 > x) {
            lane.rule(x, y - 2, x1, y - 2, Ink.BLACK, 3, 3, 2);
        }
        if (mark.kind() == MarkKind.CROSSING) {
            lane.rule(x - 4.5, y + 1.5, x + 4.5, y + SYMBOL_PX - 0.5, Ink.BLACK, 2);
            lane.rule(x - 4.5, y + SYMBOL_PX - 0.5, x + 4.5, y + 1.5, Ink.BLACK, 2);
        } else {
            double[] triangle = {x, y, x - 6, y + SYMBOL_PX, x + 6, y + SYMBOL_PX};
            lane.area(triangle, Ink.PAPER.colour, Ink.BLACK);
            lane.rule(x, y + 4, x, y + 7.5, Ink.BLACK, 1.6f);
            lane.rule(x, y + 8.5, x, y + 10, Ink.BLACK, 1.6f);
        }
        lane.placer().block(x - 5, y, x + 5, y + SYMBOL_PX);
    }

    /** Writes the name right of a symbol, else left of it, else under it where there is a second line. */
    private static void beside(Lane lane, Mark mark, double x0, double x1, double... writing) {
        Words words = Words.plain(mark.name(), lane.panel().format().smallPx);
        double half = words.widthPx() / 2;
        boolean done = lane.label(words, x1 + SIDE_PX / 2 + half, 0, Ink.BLACK, writing[0])
                || lane.label(words, x0 - SIDE_PX / 2 - half, 0, Ink.BLACK, writing[0]);
        if (!done && writing.length > 1) {
            lane.label(words, (x0 + x1) / 2, 12, Ink.BLACK, writing[1]);
        }
    }
}
