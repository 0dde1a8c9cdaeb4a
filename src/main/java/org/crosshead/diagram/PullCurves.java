package org.crosshead.diagram;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Pull at the rim against speed, for some cutoffs, with what boiler and rail allow and what is left at the drawbar. Lines differ by stroke, not by colour. */
public final class PullCurves {

    /** Narrow, with large type, so that the type can still be read where a telephone shrinks the drawing by a third. */
    private static final int WIDTH = 560;

    private static final int HEIGHT = 400;
    private static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    private static final Font TICKS = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    /** Room right of the last speed, for the labels that stand at the ends of the lines. */
    private static final double LABEL_ROOM = 1.22;

    /** Height of a label as a share of the axis. */
    private static final double LABEL_GAP = 0.055;

    private PullCurves() {}

    /** What a line shows. */
    public enum Line {
        CUTOFF(new BasicStroke(1.4f)),
        BOILER(new BasicStroke(3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {10, 5}, 0)),
        RAIL(new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 4}, 0)),
        DRAWBAR(new BasicStroke(2.4f));

        @SuppressWarnings("ImmutableEnumChecker") // a stroke can't change, but is not so marked
        private final BasicStroke stroke;

        Line(BasicStroke stroke) {
            this.stroke = stroke;
        }
    }

    /** A point of a line. */
    public record Point(double speedMph, double pullLbf) {}

    /**
     * A line with the words that stand at its end.
     *
     * @param points by rising speed, at least one
     */
    public record Curve(String label, Line line, List<Point> points) {

        public Curve {
            points = List.copyOf(points);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("points must have at least one point");
            }
        }
    }

    /** Words beside the axes, and those read out in place of the drawing. */
    public record Words(String speed, String pull, String spoken) {}

    /** Returns the drawing as an SVG element. */
    public static String svg(List<Curve> curves, Words words) {
        XYSeriesCollection series = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYPlot plot = new XYPlot(
                series, CurveChart.axis(words.speed(), TICKS), CurveChart.axis(words.pull(), TICKS), renderer);
        for (int i = 0; i < curves.size(); i++) {
            series.addSeries(series(i, curves.get(i)));
            renderer.setSeriesPaint(i, CurveChart.INK);
            renderer.setSeriesStroke(i, curves.get(i).line().stroke);
        }
        ranges(plot, curves);
        labels(plot, curves);
        return SvgDrawing.of(CurveChart.chart(plot, LABEL), WIDTH, HEIGHT, words.spoken());
    }

    private static void ranges(XYPlot plot, List<Curve> curves) {
        double speedMax = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(Point::speedMph)
                .max()
                .orElse(1);
        double pullMax = curves.stream()
                .filter(curve -> curve.line() != Line.BOILER)
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(Point::pullLbf)
                .max()
                .orElse(1);
        plot.getDomainAxis().setRange(0, speedMax * LABEL_ROOM);
        plot.getRangeAxis().setRange(0, pullMax * 1.05);
    }

    private static XYSeries series(int number, Curve curve) {
        XYSeries series = new XYSeries(number, false, true);
        curve.points().forEach(point -> series.add(point.speedMph(), point.pullLbf()));
        return series;
    }

    private static void labels(XYPlot plot, List<Curve> curves) {
        double topLbf = plot.getRangeAxis().getUpperBound();
        List<Curve> upwards = new ArrayList<>(curves);
        Collections.reverse(upwards); // of lines that end together, the first has its label on top
        upwards.sort(Comparator.comparingDouble(curve -> end(curve).pullLbf()));
        double[] heightsLbf = apart(
                upwards.stream().mapToDouble(curve -> end(curve).pullLbf()).toArray(), topLbf);
        for (int i = 0; i < heightsLbf.length; i++) {
            plot.addAnnotation(label(upwards.get(i), heightsLbf[i]));
        }
    }

    /** Returns rising heights moved as far as labels need to stand clear of each other, and none above the top. */
    private static double[] apart(double[] heightsLbf, double topLbf) {
        double gapLbf = topLbf * LABEL_GAP;
        double[] moved = heightsLbf.clone();
        for (int i = 1; i < moved.length; i++) {
            moved[i] = Math.max(moved[i], moved[i - 1] + gapLbf);
        }
        double ceilingLbf = topLbf - gapLbf / 2;
        for (int i = moved.length - 1; i >= 0; i--) {
            moved[i] = Math.min(moved[i], ceilingLbf);
            ceilingLbf = moved[i] - gapLbf;
        }
        return moved;
    }

    private static Point end(Curve curve) {
        return curve.points().get(curve.points().size() - 1);
    }

    private static XYTextAnnotation label(Curve curve, double heightLbf) {
        return CurveChart.label(curve.label(), end(curve).speedMph(), heightLbf, LABEL, TextAnchor.CENTER_LEFT);
    }
}
