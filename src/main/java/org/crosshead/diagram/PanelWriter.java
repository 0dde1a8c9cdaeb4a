package org.crosshead.diagram;

import java.util.List;

/**
 * Writes a drawn panel as an SVG element that may stand inside a page: no prolog, no document type, no style, presentation
 * attributes only, and what a script needs to turn a tap into a place. The drawing is one image to those who hear the page; the points stand outside of it as links.
 */
final class PanelWriter {

    private static final double NUMBER_PX = 12;

    private final StripGraphics graphics;
    private final String prefix;
    private final StripPanel part;
    private final PanelFormat format;
    private final double heightPx;

    PanelWriter(StripGraphics graphics, String prefix, StripPanel part, PanelFormat format, double heightPx) {
        this.graphics = graphics;
        this.prefix = prefix;
        this.part = part;
        this.format = format;
        this.heightPx = heightPx;
    }

    List<StripGraphics.Written> written() {
        return graphics.written();
    }

    List<StripGraphics.Joint> joints() {
        return graphics.joints();
    }

    double heightPx() {
        return heightPx;
    }

    String text() {
        StringBuilder svg =
                new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"strip\" viewBox=\"0 0 ");
        svg.append(number(format.widthPx)).append(' ').append(number(heightPx));
        svg.append("\" data-from=\"").append(number(part.fromM()));
        svg.append("\" data-to=\"").append(number(part.toM()));
        svg.append("\" data-left=\"").append(format.leftShare());
        svg.append("\" data-axis=\"").append(format.axisShare());
        svg.append("\" width=\"100%\" font-family=\"'DejaVu Sans',sans-serif\">");
        if (!graphics.patterns().isEmpty()) {
            svg.append("<defs>");
            graphics.patterns().forEach(pattern -> svg.append(pattern.definition(prefix)));
            svg.append("</defs>");
        }
        svg.append("<g stroke-linejoin=\"round\" role=\"img\" aria-label=\"")
                .append(escaped(part.label()))
                .append("\">");
        svg.append(Shapes.text(graphics.shapes()));
        graphics.written().forEach(words -> words(svg, words));
        svg.append("</g>");
        graphics.joints().forEach(joint -> joint(svg, joint));
        return svg.append("</svg>").toString();
    }

    private static void words(StringBuilder svg, StripGraphics.Written written) {
        Words words = written.words();
        svg.append("<text x=\"").append(number(written.x()));
        svg.append("\" y=\"").append(number(written.y()));
        svg.append("\" font-size=\"").append(number(words.sizePx())).append('"');
        if (words.bold()) {
            svg.append(" font-weight=\"700\"");
        }
        if (written.anchor() != Anchor.START) {
            svg.append(" text-anchor=\"").append(written.anchor().svg).append('"');
        }
        svg.append(" fill=\"").append(written.ink().paint()).append("\">").append(escaped(words.text()));
        if (!words.tail().isEmpty()) {
            svg.append("<tspan font-weight=\"400\" font-size=\"").append(number(words.tailPx()));
            svg.append("\"> ").append(escaped(words.tail())).append("</tspan>");
        }
        svg.append("</text>");
    }

    private static void joint(StringBuilder svg, StripGraphics.Joint joint) {
        boolean open = joint.point().forFireman();
        svg.append("<a href=\"").append(escaped(joint.point().href()));
        svg.append("\" aria-label=\"").append(escaped(joint.point().name()));
        svg.append("\"><circle cx=\"").append(number(joint.x()));
        svg.append("\" cy=\"").append(number(joint.y()));
        svg.append("\" r=\"").append(number(PointRows.RADIUS_PX)).append("\" fill=\"");
        svg.append(open ? Ink.PAPER.paint() : Ink.BLACK.paint()).append('"');
        svg.append(open ? " stroke=\"" + Ink.BLACK.paint() + "\" stroke-width=\"1.6\"" : "");
        svg.append("/><text x=\"").append(number(joint.x()));
        svg.append("\" y=\"").append(number(joint.y() + NUMBER_PX * 0.36));
        svg.append("\" font-size=\"").append(number(NUMBER_PX));
        svg.append("\" font-weight=\"700\" text-anchor=\"middle\" fill=\"");
        svg.append(open ? Ink.BLACK.paint() : Ink.PAPER.paint()).append("\">");
        svg.append(joint.point().number()).append("</text></a>");
    }

    /** One decimal, none where it is nought. */
    static String number(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : Double.toString(tenths / 10.0);
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
