package org.crosshead.diagram;

import java.util.List;
import org.crosshead.diagram.StripModel.Mark;
import org.crosshead.diagram.StripModel.MarkKind;

/** Where am I: the line with its places, tunnels, signals and landmarks. */
final class PlacesLane {

    private static final double LINE_PX = 40;
    private static final double BODY_PX = 84;
    private static final double[] NAMES_PX = {LINE_PX - 10, LINE_PX - 26};
    private static final double[] LANDMARKS_PX = {LINE_PX + 24, LINE_PX + 39};
    private static final double NAME_SHIFT_PX = 120;
    private static final double LANDMARK_SHIFT_PX = 24;

    private PlacesLane() {}

    static Lane draw(Panel panel) {
        Lane lane = Lane.bare(panel, BODY_PX);
        lane.rule(0, LINE_PX, panel.format().plotPx(), LINE_PX, Ink.BLACK, 1.4f);
        List<Mark> marks = panel.model().marks();
        marks.stream()
                .filter(mark -> mark.kind() == MarkKind.PLACE && panel.showsPlace(mark.fromM()))
                .forEach(mark -> place(lane, mark));
        marks.stream()
                .filter(mark -> mark.kind() == MarkKind.TUNNEL && panel.shows(mark.fromM(), end(mark)))
                .forEach(mark -> tunnel(lane, mark));
        marks.stream()
                .filter(mark -> mark.kind() == MarkKind.SIGNAL && panel.shows(mark.fromM(), mark.fromM()))
                .forEach(mark -> signal(lane, panel.x(mark.fromM())));
        marks.stream()
                .filter(mark -> mark.kind() == MarkKind.LANDMARK && panel.shows(mark.fromM(), mark.fromM()))
                .forEach(mark -> landmark(lane, mark));
        return lane;
    }

    static double end(Mark mark) {
        Double toM = mark.toM();
        return toM == null ? mark.fromM() : toM;
    }

    private static void place(Lane lane, Mark mark) {
        Panel panel = lane.panel();
        double x = panel.x(panel.within(mark.fromM()));
        lane.box(x - 5, LINE_PX - 4, x + 5, LINE_PX + 4, Ink.BLACK.colour, null);
        Words words = Words.bold(mark.name(), panel.format().typePx);
        Words timed = mark.note().isEmpty() ? words : words.withTail(mark.note(), panel.format().smallPx);
        if (!lane.label(timed, x, NAME_SHIFT_PX, Ink.BLACK, NAMES_PX)) {
            lane.label(words, x, NAME_SHIFT_PX, Ink.BLACK, NAMES_PX);
        }
    }

    private static void tunnel(Lane lane, Mark mark) {
        Panel panel = lane.panel();
        double x0 = panel.x(panel.within(mark.fromM()));
        double x1 = Math.max(x0 + 3, panel.x(panel.within(end(mark))));
        lane.box(x0, LINE_PX - 5, x1, LINE_PX + 5, HatchPaint.HATCH, Ink.BLACK);
        Words words = Words.plain(mark.name(), panel.format().smallPx);
        lane.label(words, (x0 + x1) / 2, LANDMARK_SHIFT_PX, Ink.BLACK, LANDMARKS_PX);
    }

    private static void signal(Lane lane, double x) {
        lane.rule(x, LINE_PX, x, LINE_PX + 11, Ink.BLACK, 1.2f);
        lane.rule(x, LINE_PX + 9.5, x + 6, LINE_PX + 9.5, Ink.BLACK, 3);
    }

    private static void landmark(Lane lane, Mark mark) {
        double x = lane.panel().x(mark.fromM());
        double[] triangle = {x, LINE_PX + 3, x - 4, LINE_PX + 11, x + 4, LINE_PX + 11};
        lane.area(triangle, Ink.PAPER.colour, Ink.BLACK);
        Words words = Words.plain(mark.name(), lane.panel().format().smallPx);
        lane.label(words, x, LANDMARK_SHIFT_PX, Ink.BLACK, LANDMARKS_PX);
    }
}
