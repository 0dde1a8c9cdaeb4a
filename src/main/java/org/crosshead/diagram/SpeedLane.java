package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;

/** How fast may I, and how fast shall I: the limits as a thick line, the forecast below it. */
final class SpeedLane {

    private static final double BODY_PX = 88;
    private static final double ROOM_SHARE = 0.2;
    private static final double LABEL_SHIFT_PX = 40;
    private static final double WAVE_PX = 6;

    private SpeedLane() {}

    static Lane draw(Panel panel) {
        double speedMax = panel.scales().speedMax();
        Lane lane = new Lane(panel, BODY_PX, 0, speedMax * (1 + ROOM_SHARE));
        lane.caption(panel.model().captions().speed(), panel.model().speedUnit(), lane.y(speedMax * 0.6));
        List<Double> scale = new ArrayList<>();
        for (double speed = 0; speed <= speedMax; speed += panel.scales().speedStep()) {
            scale.add(speed);
        }
        lane.scale(scale, "");
        List<Ceiling.Step> steps = Ceiling.over(panel.model().limits(), panel.fromM(), panel.toM());
        steps.stream().filter(step -> step.limit().temporary()).forEach(step -> restriction(lane, step));
        limits(lane, steps);
        Polyline forecast = lane.trace(panel.run(panel.model().run().speed()), Ink.SPEED, 2);
        lane.keepOff(forecast, 1.5);
        steps.forEach(step -> label(lane, step));
        extremes(lane, forecast);
        return lane;
    }

    /** Writes the forecast's lowest and highest speeds where they stand, leaving out small waves. */
    private static void extremes(Lane lane, Polyline inPx) {
        double lastY = inPx.size() == 0 ? 0 : inPx.y().get(0);
        for (int i = 1; i < inPx.size() - 1; i++) {
            double before = inPx.y().get(i - 1);
            double y = inPx.y().get(i);
            double after = inPx.y().get(i + 1);
            boolean highest = y <= before && y < after;
            boolean lowest = y >= before && y > after;
            if ((highest || lowest) && Math.abs(y - lastY) >= WAVE_PX) {
                Words words = Words.plain(
                        String.valueOf(Math.round(lane.value(y))), lane.panel().format().smallPx);
                lane.label(words, inPx.x().get(i), 8, Ink.SPEED, lowest ? y + 14 : y - 5, y + 14);
                lastY = y;
            }
        }
    }

    private static void restriction(Lane lane, Ceiling.Step step) {
        Panel panel = lane.panel();
        lane.box(
                panel.x(step.fromM()),
                lane.top(),
                panel.x(step.toM()),
                lane.y(step.limit().speed()),
                HatchPaint.HATCH,
                null);
    }

    /** Joined where one limit follows another, broken where there is none. */
    private static void limits(Lane lane, List<Ceiling.Step> steps) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        double endM = Double.NaN;
        for (Ceiling.Step step : steps) {
            if (!x.isEmpty() && step.fromM() != endM) {
                line(lane, new Polyline(x, y));
                x.clear();
                y.clear();
            }
            x.addAll(List.of(lane.panel().x(step.fromM()), lane.panel().x(step.toM())));
            y.addAll(List.of(lane.y(step.limit().speed()), lane.y(step.limit().speed())));
            endM = step.toM();
        }
        if (!x.isEmpty()) {
            line(lane, new Polyline(x, y));
        }
    }

    private static void line(Lane lane, Polyline steps) {
        lane.line(steps, Ink.RULE, 3.4f);
        for (int i = 1; i < steps.size(); i++) {
            double top = Math.min(steps.y().get(i - 1), steps.y().get(i));
            double bottom = Math.max(steps.y().get(i - 1), steps.y().get(i));
            lane.placer().block(steps.x().get(i - 1) - 1, top - 2, steps.x().get(i) + 1, bottom + 2);
        }
    }

    private static void label(Lane lane, Ceiling.Step step) {
        double y = lane.y(step.limit().speed());
        double x = (lane.panel().x(step.fromM()) + lane.panel().x(step.toM())) / 2;
        double shiftPx = step.limit().temporary() ? 0 : LABEL_SHIFT_PX;
        Words words = Words.bold(step.limit().label(), lane.panel().format().typePx);
        double[] writing = {y - 6, y + 15, y - 21, y + 30};
        lane.labelOnPaper(words, x, shiftPx, Ink.BLACK, writing);
    }
}
