package org.crosshead.diagram;

import java.awt.geom.Rectangle2D;
import java.io.StringWriter;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Draws a chart as an SVG element that may stand inside a page: without prolog and document type, and with presentation
 * attributes only, as the pages allow no inline styles.
 */
final class SvgDrawing {

    private static final String SVG = "http://www.w3.org/2000/svg";

    static {
        // Turned words stay words, which can be read out and take a tenth of the room of their outlines.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private SvgDrawing() {}

    /**
     * Returns the chart.
     *
     * @param label what it shows, read out in its place; another for each drawing of a page
     */
    static String of(JFreeChart chart, int width, int height, String label) {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGraphics2D graphics = new SVGGraphics2D(document);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
        Element root = graphics.getRoot();
        root.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-label", label);
        StringWriter text = new StringWriter();
        try {
            graphics.stream(root, text, false, true);
        } catch (SVGGraphics2DIOException ex) {
            throw new IllegalStateException("a chart could not be written to memory", ex);
        }
        String drawing = text.toString().substring(text.toString().indexOf("<svg"));
        return withOwnIds(drawing.replaceFirst("<!--[^>]*-->", ""), label);
    }

    /** Several drawings stand in one page: their labels differ, and so must their ids. */
    private static String withOwnIds(String drawing, String label) {
        String prefix = "d" + Integer.toHexString(label.hashCode()) + "-";
        return drawing.replace(" id=\"", " id=\"" + prefix).replace("url(#", "url(#" + prefix);
    }
}
