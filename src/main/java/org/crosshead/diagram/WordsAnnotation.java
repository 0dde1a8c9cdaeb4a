package org.crosshead.diagram;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** A label at a place of a plot, written above all shapes. */
final class WordsAnnotation extends AbstractXYAnnotation {

    private final transient Words words;
    private final double x;
    private final double y;
    private final Anchor anchor;
    private final Ink ink;

    WordsAnnotation(Words words, double x, double y, Anchor anchor, Ink ink) {
        this.words = words;
        this.x = x;
        this.y = y;
        this.anchor = anchor;
        this.ink = ink;
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis domain,
            ValueAxis range,
            int index,
            PlotRenderingInfo info) {
        double atX = domain.valueToJava2D(x, area, RectangleEdge.BOTTOM);
        double atY = range.valueToJava2D(y, area, RectangleEdge.LEFT);
        ((StripGraphics) g2).write(new StripGraphics.Written(words, atX, atY, anchor, ink));
    }
}
