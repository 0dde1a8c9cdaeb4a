package org.crosshead.diagram;

/** The posts of the route's measure, at the foot. */
final class MeasureLane {

    private static final double BODY_PX = 26;

    private MeasureLane() {}

    static Lane draw(Panel panel) {
        Lane lane = Lane.bare(panel, BODY_PX);
        lane.rule(0, 3, panel.format().plotPx(), 3, Ink.BLACK, 1.2f);
        panel.model().ticks().stream()
                .filter(tick -> panel.showsPlace(tick.positionM()))
                .forEach(tick -> {
                    double x = panel.x(panel.within(tick.positionM()));
                    lane.rule(x, 3, x, 9, Ink.BLACK, 1);
                    lane.label(Words.plain(tick.label(), panel.format().smallPx), x, 0, Ink.BLACK, 21);
                });
        return lane;
    }
}
