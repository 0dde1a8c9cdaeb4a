package org.crosshead.diagram;

import java.awt.Paint;
import org.crosshead.diagram.StripModel.Fill;
import org.crosshead.diagram.StripModel.Stretch;

/** What if I am stopped here: whether the train starts again. */
final class StandingLane {

    private static final double BODY_PX = 38;
    private static final double BAND_PX = 18;

    private StandingLane() {}

    static Lane draw(Panel panel) {
        Lane lane = Lane.plain(panel, BODY_PX);
        double y = lane.top() + 3;
        lane.caption(panel.model().captions().standing(), "", y + 13);
        panel.model().standing().stream()
                .filter(band -> panel.shows(band.fromM(), band.toM()))
                .forEach(band -> band(lane, band, y));
        return lane;
    }

    private static void band(Lane lane, Stretch band, double y) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(band.fromM()));
        double x1 = panel.x(panel.within(band.toM()));
        lane.box(x0, y, x1, y + BAND_PX, paint(band.fill()), Ink.BLACK);
        Words words = Words.plain(band.label(), panel.format().smallPx);
        double x = (x0 + x1) / 2;
        if (words.widthPx() + 8 > x1 - x0) {
            lane.label(words, x, 40, Ink.BLACK, y + BAND_PX + 13);
        } else if (band.fill() == Fill.SOLID) {
            lane.label(words, x, 0, Ink.PAPER, y + 13.5);
        } else {
            lane.labelOnPaper(words, x, 0, Ink.BLACK, y + 13.5);
        }
    }

    static Paint paint(Fill fill) {
        return switch (fill) {
            case OPEN -> Ink.PAPER.colour;
            case DOTTED -> HatchPaint.DOTS;
            case HATCHED -> HatchPaint.HATCH;
            case CROSSED -> HatchPaint.CROSS;
            case SOLID -> Ink.BLACK.colour;
        };
    }
}
