package org.crosshead.diagram;

import java.util.List;

/** What the boiler says: pressure, and water in the glass. */
final class BoilerLanes {

    private static final double PRESSURE_PX = 52;
    private static final double GLASS_PX = 52;
    private static final double ROOM_SHARE = 0.2;
    private static final double BAND_TOLERANCE_PX = 0.6;

    private BoilerLanes() {}

    static Lane pressure(Panel panel) {
        double low = panel.scales().pressureMinPsi();
        double high = panel.scales().pressureMaxPsi();
        double room = (high - low) * ROOM_SHARE;
        Lane lane = new Lane(panel, PRESSURE_PX, low - room, high + room);
        lane.caption(panel.model().captions().boiler(), "psi", lane.y(high) + 14);
        lane.scale(List.of(low, high), "");
        StripModel.Bands bands = panel.model().run().bands();
        band(lane, bands.pressureLow(), bands.pressureHigh(), Ink.PRESSURE_TINT);
        trace(lane, panel.model().run().pressurePsi(), Ink.PRESSURE, "");
        return lane;
    }

    static Lane glass(Panel panel) {
        Lane lane = new Lane(panel, GLASS_PX, -25, 125);
        lane.caption(panel.model().captions().glass(), "%", lane.y(100) + 14);
        lane.scale(List.of(0.0, 100.0), "");
        StripModel.Bands bands = panel.model().run().bands();
        band(lane, bands.glassLow(), bands.glassHigh(), Ink.GLASS_TINT);
        trace(lane, panel.model().run().glassPercent(), Ink.WATER, " %", 6, 3);
        return lane;
    }

    /** Fills what lies between two lines. */
    private static void band(Lane lane, List<Double> low, List<Double> high, Ink ink) {
        List<Double> positions = lane.panel().model().run().bands().positionM();
        Polyline foot = thinned(lane, lane.panel().along(positions, low));
        Polyline top = thinned(lane, lane.panel().along(positions, high));
        if (foot.size() < 2 || top.size() < 2) {
            return;
        }
        double[] corners = new double[2 * (foot.size() + top.size())];
        for (int i = 0; i < top.size(); i++) {
            corners[2 * i] = top.x().get(i);
            corners[2 * i + 1] = top.y().get(i);
        }
        for (int i = 0; i < foot.size(); i++) {
            int back = foot.size() - 1 - i;
            corners[2 * (top.size() + i)] = foot.x().get(back);
            corners[2 * (top.size() + i) + 1] = foot.y().get(back);
        }
        lane.area(corners, ink.colour, null);
    }

    private static Polyline thinned(Lane lane, Polyline values) {
        return new Polyline(values.x(), values.y().stream().map(lane::y).toList()).thinned(BAND_TOLERANCE_PX);
    }

    /** Draws the line and writes the panel's lowest value where it stands. */
    private static void trace(Lane lane, List<Double> values, Ink ink, String unit, float... dash) {
        Polyline run = lane.panel().run(values);
        if (run.size() < 2) {
            return;
        }
        lane.keepOff(lane.trace(run, ink, 2, dash), 1.5);
        int lowest = 0;
        for (int i = 1; i < run.size(); i++) {
            lowest = run.y().get(i) < run.y().get(lowest) ? i : lowest;
        }
        double x = run.x().get(lowest);
        double y = lane.y(run.y().get(lowest));
        String figure = lane.panel().model().captions().lowest() + " "
                + Math.round(run.y().get(lowest)) + unit;
        Words words = Words.bold(figure, lane.panel().format().smallPx);
        lane.placer().block(x - 2, y - 2, x + 2, y + 2);
        lane.label(words, x, 60, ink, y + 14, y - 6, y - 14);
    }
}
