package org.crosshead.diagram;

import java.awt.Color;
import java.awt.Font;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;

/** What drawings of curves over two axes have in common: ink on white, a quiet grid, names on the curves. */
final class CurveChart {

    static final Color INK = new Color(0x1b1b1b);

    private static final Color GRID = new Color(0xd0d0d0);

    private CurveChart() {}

    static NumberAxis axis(String words, Font type) {
        NumberAxis axis = new NumberAxis(words);
        axis.setTickLabelFont(type);
        axis.setLabelFont(type);
        axis.setTickLabelPaint(INK);
        axis.setLabelPaint(INK);
        return axis;
    }

    /** Returns words that stand at a point of a curve, with a little room on both sides. */
    static XYTextAnnotation label(String words, double x, double y, Font type, TextAnchor anchor) {
        XYTextAnnotation label = new XYTextAnnotation(" " + words + " ", x, y);
        label.setFont(type);
        label.setPaint(INK);
        label.setTextAnchor(anchor);
        return label;
    }

    static JFreeChart chart(XYPlot plot, Font type) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setOutlineVisible(false);
        JFreeChart chart = new JFreeChart(null, type, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        return chart;
    }
}
