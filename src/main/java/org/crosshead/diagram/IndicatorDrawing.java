package org.crosshead.diagram;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Indicator diagrams one over another: pressure against the place of the piston. Lines differ by stroke, not by colour. */
public final class IndicatorDrawing {

    private static final int WIDTH = 560;
    private static final int HEIGHT = 360;
    private static final Font TYPE = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    private static final double PER_CENT = 100;
    /** Where on the stroke a diagram's name stands at its line of admission or expansion, and on which side of it. */
    private static final double[] LABELS_AT = {0.45, 0.55, 0.42};

    private static final TextAnchor[] SIDES = {TextAnchor.TOP_LEFT, TextAnchor.BOTTOM_LEFT, TextAnchor.TOP_RIGHT};

    private static final BasicStroke[] STROKES = {
        new BasicStroke(2.6f),
        new BasicStroke(1.4f),
        new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {8, 4}, 0)
    };

    private IndicatorDrawing() {}

    /** A point of a diagram. */
    public record Point(double strokeShare, double psi) {}

    /**
     * One diagram with its name.
     *
     * @param points over a turn, from the beginning of the stroke
     */
    public record Loop(String label, List<Point> points) {

        public Loop {
            points = List.copyOf(points);
        }
    }

    /** Words beside the axes, and those read out in place of the drawing. */
    public record Words(String stroke, String pressure, String spoken) {}

    /** Returns the drawing as an SVG element; at most three diagrams. */
    public static String svg(List<Loop> loops, Words words) {
        XYSeriesCollection series = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYPlot plot = new XYPlot(
                series, CurveChart.axis(words.stroke(), TYPE), CurveChart.axis(words.pressure(), TYPE), renderer);
        for (int i = 0; i < loops.size(); i++) {
            series.addSeries(series(i, loops.get(i)));
            renderer.setSeriesPaint(i, CurveChart.INK);
            renderer.setSeriesStroke(i, STROKES[i % STROKES.length]);
            plot.addAnnotation(label(loops.get(i), i % LABELS_AT.length));
        }
        plot.getDomainAxis().setRange(0, PER_CENT);
        return SvgDrawing.of(CurveChart.chart(plot, TYPE), WIDTH, HEIGHT, words.spoken());
    }

    /** Closed, so that the last point is the first again. */
    private static XYSeries series(int number, Loop loop) {
        XYSeries series = new XYSeries(number, false, true);
        loop.points().forEach(point -> series.add(PER_CENT * point.strokeShare(), point.psi()));
        Point first = loop.points().get(0);
        series.add(PER_CENT * first.strokeShare(), first.psi());
        return series;
    }

    private static XYTextAnnotation label(Loop loop, int number) {
        List<Point> outward = loop.points().subList(0, loop.points().size() / 2);
        Point at = outward.stream()
                .min(Comparator.comparingDouble(point -> Math.abs(point.strokeShare() - LABELS_AT[number])))
                .orElseThrow();
        return CurveChart.label(loop.label(), PER_CENT * at.strokeShare(), at.psi(), TYPE, SIDES[number]);
    }
}
