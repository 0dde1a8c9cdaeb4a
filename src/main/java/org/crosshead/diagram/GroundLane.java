package org.crosshead.diagram;

import java.util.Comparator;
import java.util.List;
import org.crosshead.diagram.StripModel.Slope;

/** What the road does: the section of the line, with each gradient's figure standing at its slope. */
final class GroundLane {

    private static final double RELIEF_PX = 56;
    private static final double ROOM_PX = 34;
    private static final double BASE_PX = 10;
    private static final double RULING_SHARE = 0.85;
    private static final double LABEL_LEAST_PX = 9;

    private GroundLane() {}

    static Lane draw(Panel panel) {
        double metresPerPx = panel.scales().reliefM() / RELIEF_PX;
        double lowestM = panel.scales().lowestM(panel.fromM(), panel.toM());
        Lane lane = new Lane(
                panel,
                ROOM_PX + RELIEF_PX + BASE_PX,
                lowestM - BASE_PX * metresPerPx,
                lowestM + (RELIEF_PX + ROOM_PX) * metresPerPx);
        lane.caption(panel.model().captions().gradient(), "", lane.y(lowestM) - 8);
        Polyline section = section(lane);
        if (section.size() > 1) {
            lane.under(section, lane.heightPx(), Ink.GROUND.colour);
            lane.line(section, Ink.GROUND_LINE, 2);
            lane.keepOff(section, 1.5);
        }
        labels(lane, section);
        return lane;
    }

    private static Polyline section(Lane lane) {
        Panel panel = lane.panel();
        Polyline profile = panel.scales().profile();
        List<Double> placesM = profile.x().stream()
                .filter(placeM -> placeM > panel.fromM() && placeM < panel.toM())
                .toList();
        List<Double> endsM = java.util.stream.Stream.of(List.of(panel.fromM()), placesM, List.of(panel.toM()))
                .flatMap(List::stream)
                .filter(placeM -> !Double.isNaN(profile.yAt(placeM)))
                .toList();
        return new Polyline(
                endsM.stream().map(panel::x).toList(),
                endsM.stream().map(placeM -> lane.y(profile.yAt(placeM))).toList());
    }

    /** The ruling gradients are placed first, then the longest. */
    private static void labels(Lane lane, Polyline section) {
        Panel panel = lane.panel();
        Comparator<Slope> weight = Comparator.<Slope, Boolean>comparing(slope -> !rules(panel, slope))
                .thenComparing(slope -> panel.within(slope.fromM()) - panel.within(slope.toM()));
        panel.model().slopes().stream()
                .filter(slope -> panel.shows(slope.fromM(), slope.toM()))
                .sorted(weight)
                .forEach(slope -> label(lane, section, slope));
    }

    private static void label(Lane lane, Polyline section, Slope slope) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(slope.fromM()));
        double x1 = panel.x(panel.within(slope.toM()));
        if (x1 - x0 < LABEL_LEAST_PX) {
            return;
        }
        boolean rules = rules(panel, slope);
        double x = (x0 + x1) / 2;
        double y = section.yAt(x);
        double[] writing = {y - 7, y - 15, y - 24, y + 16};
        if (!lane.label(words(panel, slope, slope.label(), rules), x, shift(x0, x1, 0), Ink.BLACK, writing)) {
            lane.label(words(panel, slope, slope.shortLabel(), rules), x, shift(x0, x1, 6), Ink.BLACK, writing);
        }
    }

    private static double shift(double x0, double x1, double morePx) {
        return Math.min(24, (x1 - x0) / 4) + morePx;
    }

    private static Words words(Panel panel, Slope slope, String figure, boolean rules) {
        String arrow = slope.gradient() > 0 ? " \u2197" : slope.gradient() < 0 ? " \u2198" : "";
        double sizePx = panel.format().smallPx;
        return rules ? Words.bold(figure + arrow, sizePx + 1) : Words.plain(figure + arrow, sizePx);
    }

    /** Says whether a slope is about as steep as any that goes its way. */
    private static boolean rules(Panel panel, Slope slope) {
        if (slope.gradient() == 0) {
            return false;
        }
        double steepest = panel.model().slopes().stream()
                .mapToDouble(Slope::gradient)
                .filter(gradient -> gradient * slope.gradient() > 0)
                .map(Math::abs)
                .max()
                .orElse(0);
        return Math.abs(slope.gradient()) >= RULING_SHARE * steepest;
    }
}
