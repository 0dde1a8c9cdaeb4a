package org.crosshead.diagram;

import java.awt.Graphics;
import java.awt.Paint;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGPaintDescriptor;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Canvas of a panel. Shapes become elements as they are drawn; labels and points are collected, to be written above all
 * shapes. It does not clip: what is drawn is cut to the panel beforehand, and clip paths would double its size.
 */
final class StripGraphics extends SVGGraphics2D {

    private static final String SVG_NAMESPACE = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 1;

    private final Set<HatchPaint> patterns;
    private final List<Written> written;
    private final List<Joint> joints;

    /** Words on the canvas, where their line of writing begins, ends or has its middle. */
    record Written(Words words, double x, double y, Anchor anchor, Ink ink) {}

    /** Where the middle of a numbered point stands on the canvas. */
    record Joint(StripModel.Point point, double x, double y) {}

    private StripGraphics(SVGGeneratorContext context, Set<HatchPaint> patterns) {
        super(context, false);
        this.patterns = patterns;
        this.written = new ArrayList<>();
        this.joints = new ArrayList<>();
    }

    private StripGraphics(StripGraphics other) {
        super(other);
        this.patterns = other.patterns;
        this.written = other.written;
        this.joints = other.joints;
    }

    /** Returns an empty canvas whose ids begin with this prefix. */
    static StripGraphics forPanel(String prefix) {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG_NAMESPACE, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setPrecision(DECIMALS);
        context.setComment("");
        Set<HatchPaint> patterns = EnumSet.noneOf(HatchPaint.class);
        context.setExtensionHandler(new Patterns(prefix, patterns));
        return new StripGraphics(context, patterns);
    }

    void write(Written words) {
        written.add(words);
    }

    void join(Joint joint) {
        joints.add(joint);
    }

    Set<HatchPaint> patterns() {
        return patterns;
    }

    List<Written> written() {
        return written;
    }

    List<Joint> joints() {
        return joints;
    }

    Element shapes() {
        return getRoot();
    }

    @Override
    public Graphics create() {
        return new StripGraphics(this);
    }

    @Override
    public void clip(Shape shape) {
        // see the comment of the class
    }

    @Override
    public void setClip(Shape shape) {
        // see the comment of the class
    }

    /** Turns a {@link HatchPaint} into a reference to its pattern. */
    private static final class Patterns extends DefaultExtensionHandler {

        private final String prefix;
        private final Set<HatchPaint> used;

        Patterns(String prefix, Set<HatchPaint> used) {
            this.prefix = prefix;
            this.used = used;
        }

        @Override
        public SVGPaintDescriptor handlePaint(Paint paint, SVGGeneratorContext context) {
            if (!(paint instanceof HatchPaint hatch)) {
                return super.handlePaint(paint, context);
            }
            used.add(hatch);
            return new SVGPaintDescriptor("url(#" + hatch.id(prefix) + ")", "1");
        }
    }
}
