package org.crosshead.diagram;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Speed over distance from a braking point, one line an application. Lines differ by stroke, not by colour. */
public final class BrakingDrawing {

    private static final int WIDTH = 520;
    private static final int HEIGHT = 240;
    private static final Font TYPE = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    private static final double ROOM = 1.12;
    /** Share of the fall of speed at which a line's name stands: the longer lines' to the right of them, the shorter ones' to the left. */
    private static final double[] RIGHT_AT = {0.72, 0.4};

    private static final double[] LEFT_AT = {0.3, 0.6};

    private BrakingDrawing() {}

    /** What a line shows. */
    public enum Line {
        SERVICE_DRY(new BasicStroke(2.6f)),
        SERVICE_GREASY(new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {9, 5}, 0)),
        EMERGENCY_DRY(new BasicStroke(1.3f)),
        EMERGENCY_GREASY(
                new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 4}, 0));

        @SuppressWarnings("ImmutableEnumChecker") // a stroke can't change, but is not so marked
        private final BasicStroke stroke;

        Line(BasicStroke stroke) {
            this.stroke = stroke;
        }
    }

    /** A point of a line in the units of the axes. */
    public record Point(double distance, double speed) {}

    /** A line with its name. */
    public record Curve(String label, Line line, List<Point> points) {

        public Curve {
            points = List.copyOf(points);
        }
    }

    /** Words beside the axes, and those read out in place of the drawing. */
    public record Words(String distance, String speed, String spoken) {}

    /**
     * Returns the drawing as an SVG element.
     *
     * @param curves the longest first
     * @param target distance of the place where the speed must be reached
     */
    public static String svg(List<Curve> curves, double target, Words words) {
        XYSeriesCollection series = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYPlot plot = new XYPlot(
                series, CurveChart.axis(words.distance(), TYPE), CurveChart.axis(words.speed(), TYPE), renderer);
        double longest = target;
        double fastest = 1;
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            XYSeries line = new XYSeries(i, false, true);
            for (Point point : curve.points()) {
                line.add(point.distance(), point.speed());
                longest = Math.max(longest, point.distance());
                fastest = Math.max(fastest, point.speed());
            }
            series.addSeries(line);
            renderer.setSeriesPaint(i, CurveChart.INK);
            renderer.setSeriesStroke(i, curve.line().stroke);
        }
        for (int i = 0; i < curves.size(); i++) {
            boolean right = i < curves.size() - curves.size() / 2;
            plot.addAnnotation(
                    right
                            ? label(curves.get(i), RIGHT_AT[i % 2], TextAnchor.BOTTOM_LEFT)
                            : label(curves.get(i), LEFT_AT[(curves.size() - 1 - i) % 2], TextAnchor.TOP_RIGHT));
        }
        ValueMarker marker = new ValueMarker(target);
        marker.setPaint(CurveChart.INK);
        marker.setStroke(new BasicStroke(3f));
        plot.addDomainMarker(marker);
        plot.getDomainAxis().setRange(0, longest * ROOM);
        plot.getRangeAxis().setRange(0, fastest * ROOM);
        return SvgDrawing.of(CurveChart.chart(plot, TYPE), WIDTH, HEIGHT, words.spoken());
    }

    /** Stands beside the line, where it has come down to a share of the way from its first speed to its last. */
    private static XYTextAnnotation label(Curve curve, double share, TextAnchor anchor) {
        List<Point> points = curve.points();
        double first = points.get(0).speed();
        double last = points.get(points.size() - 1).speed();
        double wanted = last + share * (first - last);
        Point at = points.get(points.size() - 1);
        for (Point point : points) {
            if (point.speed() <= wanted) {
                at = point;
                break;
            }
        }
        return CurveChart.label(curve.label(), at.distance(), at.speed(), TYPE, anchor);
    }
}
