package org.crosshead.diagram;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/**
 * One lane of a panel: a plot with its own range axis under the distance axis that all share. Positions given to it are
 * pixels from the left of the plot and down from the top of the lane; it turns them into the plot's values.
 */
final class Lane {

    private static final double TOLERANCE_PX = 0.4;

    private final Panel panel;
    private final double topPx;
    private final double bodyPx;
    private final double low;
    private final double high;
    private final XYPlot plot;
    private final XYSeriesCollection lines = new XYSeriesCollection();
    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    private final Placer placer;

    /**
     * @param bodyPx height without the line for the caption
     * @param low value at the foot of the lane
     * @param high value at the top of its body
     */
    Lane(Panel panel, double bodyPx, double low, double high) {
        this(panel, panel.format().captionPx, bodyPx, low, high);
    }

    private Lane(Panel panel, double topPx, double bodyPx, double low, double high) {
        this.panel = panel;
        this.topPx = topPx;
        this.bodyPx = bodyPx;
        this.low = low;
        this.high = high;
        this.placer = new Placer(-2, panel.format().plotPx() + panel.format().rightPx - 2);
        NumberAxis axis = new NumberAxis();
        axis.setRange(value(heightPx()), value(0));
        axis.setVisible(false);
        renderer.setDrawSeriesLineAsPath(true);
        plot = new XYPlot(lines, null, axis, renderer);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    /** A lane measured in pixels only. */
    static Lane plain(Panel panel, double bodyPx) {
        return new Lane(panel, bodyPx, 0, bodyPx);
    }

    /** A lane measured in pixels that bears no caption. */
    static Lane bare(Panel panel, double bodyPx) {
        return new Lane(panel, 0, bodyPx, 0, bodyPx);
    }

    XYPlot plot() {
        return plot;
    }

    Panel panel() {
        return panel;
    }

    double heightPx() {
        return topPx + bodyPx;
    }

    /** Returns where the body of the lane begins, below its caption. */
    double top() {
        return topPx;
    }

    /** Returns how far down a value stands. */
    double y(double value) {
        return topPx + (high - value) / (high - low) * bodyPx;
    }

    /** Returns what stands so far down. */
    double value(double yPx) {
        return high - (yPx - topPx) / bodyPx * (high - low);
    }

    private double metres(double xPx) {
        return panel.fromM() + xPx / panel.format().plotPx() * (panel.toM() - panel.fromM());
    }

    /** Writes the name of the lane: in the gutter at this height, or above the lane in the narrow format. */
    void caption(String name, String unit, double atPx) {
        if (panel.format().captionsAbove()) {
            Words words = Words.bold(name, panel.format().smallPx);
            words = unit.isEmpty() ? words : words.withTail(unit, panel.format().smallPx);
            write(words, 0, 11, Anchor.START, Ink.BLACK);
            placer.block(0, 0, words.widthPx(), 14);
            return;
        }
        write(Words.bold(name, panel.format().smallPx), -8, atPx, Anchor.END, Ink.BLACK);
        if (!unit.isEmpty()) {
            write(Words.plain(unit, panel.format().smallPx), -8, atPx + 14, Anchor.END, Ink.SOFT);
        }
    }

    /** Draws a line of the forecast. */
    Polyline trace(Polyline values, Ink ink, float widthPx, float... dash) {
        Polyline inPx =
                new Polyline(values.x(), values.y().stream().map(this::y).toList()).thinned(TOLERANCE_PX);
        line(inPx, ink, widthPx, dash);
        return inPx;
    }

    void line(Polyline inPx, Ink ink, float widthPx, float... dash) {
        int index = lines.getSeriesCount();
        XYSeries series = new XYSeries(index, false, true);
        for (int i = 0; i < inPx.size(); i++) {
            series.add(metres(inPx.x().get(i)), value(inPx.y().get(i)), false);
        }
        lines.addSeries(series);
        renderer.setSeriesPaint(index, ink.colour);
        renderer.setSeriesStroke(index, stroke(widthPx, dash));
    }

    void rule(double x0, double y0, double x1, double y1, Ink ink, float widthPx, float... dash) {
        plot.addAnnotation(
                new XYLineAnnotation(metres(x0), value(y0), metres(x1), value(y1), stroke(widthPx, dash), ink.colour),
                false);
    }

    void box(double x0, double y0, double x1, double y1, @Nullable Paint fill, @Nullable Ink edge) {
        renderer.addAnnotation(
                new XYBoxAnnotation(
                        metres(x0),
                        value(Math.max(y0, y1)),
                        metres(x1),
                        value(Math.min(y0, y1)),
                        edge == null ? null : stroke(1),
                        edge == null ? null : edge.colour,
                        fill),
                Layer.BACKGROUND);
    }

    /** @param corners x and y in turn */
    void area(double[] corners, Paint fill, @Nullable Ink edge) {
        double[] values = new double[corners.length];
        for (int i = 0; i < corners.length; i += 2) {
            values[i] = metres(corners[i]);
            values[i + 1] = value(corners[i + 1]);
        }
        renderer.addAnnotation(
                new XYPolygonAnnotation(
                        values, edge == null ? null : stroke(1), edge == null ? null : edge.colour, fill),
                Layer.BACKGROUND);
    }

    /** Fills the ground between a line and the foot of the lane. */
    void under(Polyline inPx, double footPx, Paint fill) {
        double[] corners = new double[inPx.size() * 2 + 4];
        for (int i = 0; i < inPx.size(); i++) {
            corners[2 * i] = inPx.x().get(i);
            corners[2 * i + 1] = inPx.y().get(i);
        }
        int n = inPx.size() * 2;
        corners[n] = inPx.x().get(inPx.size() - 1);
        corners[n + 1] = footPx;
        corners[n + 2] = inPx.x().get(0);
        corners[n + 3] = footPx;
        area(corners, fill, null);
    }

    Placer placer() {
        return placer;
    }

    /** Writes a label where there is room about x, on one of these lines of writing; says whether there was. */
    boolean label(Words words, double x, double shiftPx, Ink ink, double... lines) {
        Optional<Placer.Spot> spot = placer.place(words, x, shiftPx, lines);
        spot.ifPresent(at -> write(words, at.x() - words.widthPx() / 2, at.y(), Anchor.START, ink));
        return spot.isPresent();
    }

    /** Writes a label as {@link #label} does, on a ground of its own that hides the pattern under it. */
    boolean labelOnPaper(Words words, double x, double shiftPx, Ink ink, double... lines) {
        Optional<Placer.Spot> spot = placer.place(words, x, shiftPx, lines);
        spot.ifPresent(at -> {
            double left = at.x() - words.widthPx() / 2;
            double rise = Words.ASCENT * words.sizePx() + 1;
            box(left - 2, at.y() - rise, left + words.widthPx() + 2, at.y() + 3, Ink.PAPER.colour, null);
            write(words, left, at.y(), Anchor.START, ink);
        });
        return spot.isPresent();
    }

    /** Keeps labels off a line, whose half width is given. */
    void keepOff(Polyline inPx, double halfPx) {
        for (int i = 1; i < inPx.size(); i++) {
            double x0 = inPx.x().get(i - 1);
            double x1 = inPx.x().get(i);
            int pieces = Math.max(1, (int) Math.ceil((x1 - x0) / 6));
            for (int piece = 0; piece < pieces; piece++) {
                double from = x0 + (x1 - x0) * piece / pieces;
                double to = x0 + (x1 - x0) * (piece + 1) / pieces;
                double a = inPx.yAt(from);
                double b = inPx.yAt(to);
                placer.block(from, Math.min(a, b) - halfPx, to, Math.max(a, b) + halfPx);
            }
        }
    }

    void write(Words words, double x, double y, Anchor anchor, Ink ink) {
        plot.addAnnotation(new WordsAnnotation(words, metres(x), value(y), anchor, ink), false);
    }

    /** Draws a numbered point. */
    void join(StripModel.Point point, double x, double y) {
        plot.addAnnotation(new PointAnnotation(point, metres(x), value(y)), false);
    }

    /** Writes figures of a scale at the right, each with its line across. */
    void scale(List<Double> values, String unit) {
        double right = panel.format().plotPx();
        for (double value : values) {
            box(0, y(value) - 0.3, right, y(value) + 0.3, Ink.GRID.colour, null);
            Words words = Words.plain(Math.round(value) + unit, panel.format().smallPx);
            write(words, right + 4, y(value) + 4, Anchor.START, Ink.SOFT);
            placer.block(right + 4, y(value) - 8, right + 4 + words.widthPx(), y(value) + 8);
        }
    }

    private static BasicStroke stroke(float widthPx, float... dash) {
        return dash.length == 0
                ? new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }
}
