package org.crosshead.diagram;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The long section of a road: height against distance, with each gradient under its slope and the stations above. */
public final class LongSection {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 290;
    private static final Color INK = new Color(0x1b1b1b);
    private static final Color GRID = new Color(0xc8c8c8);
    private static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    private static final Font PLACE = new Font(Font.SANS_SERIF, Font.BOLD, 15);
    private static final BasicStroke ROAD = new BasicStroke(2.6f);
    private static final BasicStroke POST = new BasicStroke(0.8f);
    private static final BasicStroke STATION =
            new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 4}, 0);

    /** Shares of the drawn height kept free below the road for the gradients and above it for the stations. */
    private static final double ROOM_BELOW = 0.65;

    private static final double ROOM_ABOVE = 0.35;

    /** Least height that is drawn, so that a level road does not look hilly. */
    private static final double HEIGHT_LEAST = 100;

    /** Narrower than this share of the panel a gradient is written upright, and narrower than the second not at all. */
    private static final double UPRIGHT_SHARE = 0.11;

    private static final double TOO_NARROW_SHARE = 0.024;

    private LongSection() {}

    /** A point of the road; distance in miles or kilometres, height above the lowest point in feet or metres. */
    public record Point(double at, double height) {}

    /** A length of one gradient with its label, for example "1 in 100". */
    public record Slope(double from, double to, String label) {}

    /** A station. */
    public record Place(double at, String name) {}

    /** A road. Points by rising distance, at least two. */
    public record Profile(List<Point> points, List<Slope> slopes, List<Place> places) {

        public Profile {
            points = List.copyOf(points);
            slopes = List.copyOf(slopes);
            places = List.copyOf(places);
            if (points.size() < 2) {
                throw new IllegalArgumentException("points must be at least two");
            }
        }

        private double lowest() {
            return points.stream().mapToDouble(Point::height).min().orElse(0);
        }

        private double span() {
            double highest = points.stream().mapToDouble(Point::height).max().orElse(0);
            return Math.max(HEIGHT_LEAST, highest - lowest());
        }
    }

    /** The part of the road that one drawing shows. */
    public record Panel(double from, double to) {

        private double length() {
            return to - from;
        }

        private boolean holds(double at) {
            return at >= from && at <= to;
        }
    }

    /** Words beside the axes, and those read out in place of the drawing. */
    public record Words(String distance, String height, String spoken) {}

    /** Returns one panel of the road as an SVG element; all panels of a road have the same vertical scale. */
    public static String svg(Profile profile, Panel panel, Words words) {
        XYSeries road = new XYSeries("road", false, true);
        profile.points().forEach(point -> road.add(point.at(), point.height()));
        XYPlot plot = new XYPlot(
                new XYSeriesCollection(road), distanceAxis(panel, words), heightAxis(profile, words), renderer());
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setOutlineVisible(false);
        slopes(plot, profile, panel);
        places(plot, profile, panel);
        JFreeChart chart = new JFreeChart(null, TEXT, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        return SvgDrawing.of(chart, WIDTH, HEIGHT, words.spoken());
    }

    private static void slopes(XYPlot plot, Profile profile, Panel panel) {
        double labelHeight = profile.lowest() - profile.span() * ROOM_BELOW / 2;
        for (Slope slope : profile.slopes()) {
            double from = Math.max(slope.from(), panel.from());
            double to = Math.min(slope.to(), panel.to());
            double share = (to - from) / panel.length();
            if (share <= 0) {
                continue;
            }
            if (panel.holds(slope.to())) {
                plot.addDomainMarker(new ValueMarker(slope.to(), GRID, POST));
            }
            if (share > TOO_NARROW_SHARE) {
                XYTextAnnotation label = text(slope.label(), (from + to) / 2, labelHeight, TEXT);
                label.setTextAnchor(TextAnchor.CENTER);
                label.setRotationAnchor(TextAnchor.CENTER);
                label.setRotationAngle(share < UPRIGHT_SHARE ? -Math.PI / 2 : 0);
                plot.addAnnotation(label);
            }
        }
    }

    private static void places(XYPlot plot, Profile profile, Panel panel) {
        double top = profile.lowest() + profile.span() * (1 + ROOM_ABOVE);
        int row = 0;
        for (Place place : profile.places()) {
            if (!panel.holds(place.at())) {
                continue;
            }
            plot.addDomainMarker(new ValueMarker(place.at(), INK, STATION));
            boolean atEnd = place.at() > panel.from() + panel.length() * 0.75;
            XYTextAnnotation label =
                    text(" " + place.name() + " ", place.at(), top - profile.span() * 0.13 * (row % 2), PLACE);
            label.setTextAnchor(atEnd ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
            plot.addAnnotation(label);
            row++;
        }
    }

    private static XYTextAnnotation text(String words, double at, double height, Font font) {
        XYTextAnnotation text = new XYTextAnnotation(words, at, height);
        text.setFont(font);
        text.setPaint(INK);
        text.setBackgroundPaint(Color.WHITE);
        return text;
    }

    private static NumberAxis distanceAxis(Panel panel, Words words) {
        NumberAxis axis = axis(words.distance());
        axis.setRange(panel.from(), panel.to());
        if (panel.length() > 2) {
            axis.setTickUnit(new NumberTickUnit(
                    panel.length() > 14 ? 2 : 1, new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.UK))));
        }
        return axis;
    }

    private static NumberAxis heightAxis(Profile profile, Words words) {
        NumberAxis axis = axis(words.height());
        axis.setNumberFormatOverride(new HeightFormat());
        axis.setRange(
                profile.lowest() - profile.span() * ROOM_BELOW, profile.lowest() + profile.span() * (1 + ROOM_ABOVE));
        return axis;
    }

    private static NumberAxis axis(String words) {
        NumberAxis axis = new NumberAxis(words);
        axis.setTickLabelFont(TEXT);
        axis.setLabelFont(TEXT);
        axis.setTickLabelPaint(INK);
        axis.setLabelPaint(INK);
        return axis;
    }

    /** The room below the road is no height. */
    private static final class HeightFormat extends DecimalFormat {

        private static final long serialVersionUID = 1L;

        HeightFormat() {
            super("0", DecimalFormatSymbols.getInstance(Locale.UK));
        }

        @Override
        public StringBuffer format(double number, StringBuffer result, FieldPosition position) {
            return number < 0 ? result : super.format(number, result, position);
        }
    }

    private static XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, INK);
        renderer.setSeriesStroke(0, ROAD);
        return renderer;
    }
}
