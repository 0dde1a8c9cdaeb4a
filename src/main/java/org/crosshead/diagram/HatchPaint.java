package org.crosshead.diagram;

import java.awt.Color;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;

/** A pattern that is told from the others in black and white; plain grey where the canvas is not SVG. */
enum HatchPaint implements Paint {
    HATCH,
    DOTS,
    CROSS;

    @Override
    public PaintContext createContext(
            ColorModel model, Rectangle device, Rectangle2D user, AffineTransform transform, RenderingHints hints) {
        return Color.GRAY.createContext(model, device, user, transform, hints);
    }

    @Override
    public int getTransparency() {
        return OPAQUE;
    }

    String id(String prefix) {
        return prefix + "-" + name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The pattern as SVG. */
    String definition(String prefix) {
        String shape = switch (this) {
            case HATCH ->
                "<path d=\"M-1,6L6,-1M0,12L12,0\" fill=\"none\" stroke=\"currentColor\" " + "stroke-width=\"1.3\"/>";
            case DOTS -> "<circle cx=\"1.5\" cy=\"1.5\" r=\"1\" fill=\"currentColor\"/>";
            case CROSS ->
                "<path d=\"M-1,-1L7,7M-1,7L7,-1\" fill=\"none\" stroke=\"currentColor\" " + "stroke-width=\"1\"/>";
        };
        return "<pattern id=\"" + id(prefix) + "\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                + "<rect width=\"6\" height=\"6\" fill=\"#ffffff\"/>" + shape + "</pattern>";
    }
}
