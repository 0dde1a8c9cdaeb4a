package org.crosshead.diagram;

import org.crosshead.diagram.StripModel.Setting;
import org.crosshead.diagram.StripModel.Stretch;

/** What I do: the numbered points, cutoff, regulator and where the brake is on. */
final class ControlsLane {

    private static final double CUTOFF_PX = 52;
    private static final double CUTOFF_MOST = 0.8;
    private static final double GAP_PX = 24;
    private static final double FOOT_PX = 28;
    private static final double REGULATOR_PX = 9;

    private ControlsLane() {}

    /** @param rows of points, the same in all panels */
    static Lane draw(Panel panel, int rows) {
        double baseY = rows * PointRows.PITCH_PX + GAP_PX + CUTOFF_PX;
        Lane lane = Lane.plain(panel, baseY + FOOT_PX);
        double base = lane.top() + baseY;
        StripModel.Captions captions = panel.model().captions();
        if (panel.format().captionsAbove()) {
            lane.caption(captions.points(), captions.cutoff() + " %, " + captions.regulator(), 0);
        } else {
            lane.caption(captions.points(), "", lane.top() + 16);
            lane.caption(captions.cutoff(), "%", base - CUTOFF_PX / 2);
            lane.caption(captions.regulator(), "", base + 10);
        }
        panel.model().settings().stream()
                .filter(setting -> panel.shows(setting.fromM(), setting.toM()))
                .forEach(setting -> setting(lane, setting, base));
        lane.rule(0, base, panel.format().plotPx(), base, Ink.BLACK, 1);
        panel.model().braking().stream()
                .filter(braking -> panel.shows(braking.fromM(), braking.toM()))
                .forEach(braking -> braking(lane, braking, base));
        panel.model().settings().stream()
                .filter(setting -> panel.shows(setting.fromM(), setting.toM()))
                .forEach(setting -> labels(lane, setting, base));
        points(lane, false, rows, base);
        return lane;
    }

    private static void setting(Lane lane, Setting setting, double base) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(setting.fromM()));
        double x1 = panel.x(panel.within(setting.toM()));
        if (setting.regulator() <= 0) {
            return;
        }
        double y = top(setting, base);
        lane.box(x0, y, x1, base, Ink.STEAM_TINT.colour, null);
        lane.rule(x0, y, x1, y, Ink.STEAM, 2);
        lane.rule(x0, y, x0, base, Ink.STEAM, 0.8f);
        double half = Math.max(0.8, setting.regulator() * REGULATOR_PX / 2);
        lane.box(x0, base + 8 - half, x1, base + 8 + half, Ink.BLACK.colour, null);
        lane.placer().block(x0, y - 1, x1, base);
    }

    private static double top(Setting setting, double base) {
        return base - Math.min(1, setting.cutoff() / CUTOFF_MOST) * CUTOFF_PX;
    }

    private static void labels(Lane lane, Setting setting, double base) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(setting.fromM()));
        double x1 = panel.x(panel.within(setting.toM()));
        double x = (x0 + x1) / 2;
        Words figure = Words.bold(setting.label(), panel.format().smallPx);
        if (setting.regulator() <= 0) {
            lane.label(figure, Math.min(x, x0 + 6 + figure.widthPx() / 2), 0, Ink.BLACK, base - 5);
            return;
        }
        double y = top(setting, base);
        lane.label(figure, x, Math.min(16, (x1 - x0) / 2), Ink.BLACK, y - 5, y - 18);
        Words regulator = Words.plain(setting.regulatorLabel(), panel.format().smallPx);
        if (regulator.widthPx() <= x1 - x0 + 10) {
            lane.label(regulator, x, 10, Ink.BLACK, base + 25);
        }
    }

    /** A wedge that thickens to where the speed must be down. */
    private static void braking(Lane lane, Stretch braking, double base) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(braking.fromM()));
        double x1 = Math.max(x0 + 2, panel.x(panel.within(braking.toM())));
        lane.area(new double[] {x0, base, x1, base, x1, base - 24}, HatchPaint.HATCH, Ink.BLACK);
        lane.placer().block(x0, base - 24, x1, base);
        Words words = Words.bold(braking.label(), panel.format().smallPx);
        lane.label(words, (x0 + x1) / 2, 24, Ink.BLACK, base - 28, base - 41);
    }

    /** Draws the points above the ground that their lines lead to. */
    static void points(Lane lane, boolean forFireman, int rows, double footY) {
        for (PointRows.Spread spread : PointRows.spread(lane.panel(), forFireman, rows)) {
            double y = lane.top() + 12 + spread.row() * PointRows.PITCH_PX;
            double bend = lane.top() + rows * PointRows.PITCH_PX + 5;
            lane.rule(spread.x(), y + PointRows.RADIUS_PX, spread.x(), bend - 5, Ink.SOFT, 0.8f);
            lane.rule(spread.x(), bend - 5, spread.placeX(), bend, Ink.SOFT, 0.8f);
            lane.rule(spread.placeX(), bend, spread.placeX(), footY, Ink.SOFT, 0.8f, 2, 2);
            lane.join(spread.point(), spread.x(), y);
        }
    }
}
