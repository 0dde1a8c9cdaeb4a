package org.crosshead.diagram;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/** A numbered point that leads to its row of the table. */
final class PointAnnotation extends AbstractXYAnnotation {

    private final transient StripModel.Point point;
    private final double x;
    private final double y;

    PointAnnotation(StripModel.Point point, double x, double y) {
        this.point = point;
        this.x = x;
        this.y = y;
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
        ((StripGraphics) g2).join(new StripGraphics.Joint(point, atX, atY));
    }
}
