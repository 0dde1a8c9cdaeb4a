package org.crosshead.diagram;

import java.util.List;
import java.util.stream.Collectors;
import org.crosshead.diagram.StripModel.Work;
import org.crosshead.diagram.StripModel.WorkKind;

/** What my mate does: the open points, and rows for firing, injector and blower where the model has them. */
final class FiremanLane {

    private static final double ROW_PX = 17;

    private FiremanLane() {}

    static Lane draw(Panel panel, int pointRows) {
        boolean hasPoints = panel.model().points().stream().anyMatch(StripModel.Point::forFireman);
        double pointsPx = hasPoints ? pointRows * PointRows.PITCH_PX + 6 : 0;
        List<WorkKind> kinds = java.util.Arrays.stream(WorkKind.values())
                .filter(kind -> panel.model().work().stream().anyMatch(work -> work.kind() == kind))
                .toList();
        Lane lane = Lane.plain(panel, pointsPx + kinds.size() * ROW_PX + 4);
        String rows = kinds.stream().map(kind -> name(panel, kind)).collect(Collectors.joining(", "));
        lane.caption(panel.model().captions().fireman(), panel.format().captionsAbove() ? rows : "", lane.top() + 16);
        for (int row = 0; row < kinds.size(); row++) {
            row(lane, kinds.get(row), lane.top() + pointsPx + (row + 0.5) * ROW_PX);
        }
        if (hasPoints) {
            ControlsLane.points(lane, true, pointRows, lane.top() + pointsPx + kinds.size() * ROW_PX);
        }
        return lane;
    }

    private static void row(Lane lane, WorkKind kind, double y) {
        Panel panel = lane.panel();
        if (!panel.format().captionsAbove()) {
            lane.write(Words.plain(name(panel, kind), panel.format().smallPx), -8, y + 4, Anchor.END, Ink.SOFT);
        }
        panel.model().work().stream()
                .filter(work -> work.kind() == kind && panel.shows(work.fromM(), work.toM()))
                .forEach(work -> work(lane, work, y));
    }

    private static String name(Panel panel, WorkKind kind) {
        StripModel.Captions captions = panel.model().captions();
        return switch (kind) {
            case FIRE -> captions.fire();
            case INJECTOR -> captions.injector();
            case BLOWER -> captions.blower();
        };
    }

    private static void work(Lane lane, Work work, double y) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(work.fromM()));
        double x1 = panel.x(panel.within(work.toM()));
        if (work.fromM() == work.toM()) {
            lane.area(new double[] {x0, y - 5, x0 - 5, y + 5, x0 + 5, y + 5}, Ink.BLACK.colour, null);
            return;
        }
        boolean blower = work.kind() == WorkKind.BLOWER;
        lane.box(x0, y - 4, x1, y + 4, blower ? Ink.PAPER.colour : Ink.WATER_TINT.colour, Ink.BLACK);
        Words words = Words.plain(work.label(), panel.format().smallPx);
        lane.label(words, x1 + 5 + words.widthPx() / 2, 0, Ink.BLACK, y + 4);
    }
}
