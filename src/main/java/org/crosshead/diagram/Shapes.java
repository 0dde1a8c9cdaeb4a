package org.crosshead.diagram;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes the shapes of a canvas as paths without the groups around them. Neighbours that look alike become one path, an edge
 * joins the ground it surrounds, and only attributes that differ from what a browser takes for granted are written. What
 * the canvas itself would write is several times as long.
 */
final class Shapes {

    /** Joins are round everywhere: said once, on the group that holds the shapes. */
    private static final Map<String, String> GRANTED = Map.of(
            "fill", "black",
            "stroke", "none",
            "stroke-width", "1",
            "stroke-dasharray", "none");

    private static final Pattern SPACE_AT_LETTER = Pattern.compile(" ?([MLZ]) ?");
    private static final String NONE = "none";

    private final StringBuilder text = new StringBuilder();
    private final Deque<Map<String, String>> styles = new ArrayDeque<>();
    private @Nullable Shape waiting;

    /** @param path the outline, as a path is written */
    private record Shape(String path, Map<String, String> style) {}

    private Shapes() {}

    static String text(Element root) {
        Shapes shapes = new Shapes();
        shapes.styles.push(new TreeMap<>(GRANTED));
        shapes.walk(root);
        shapes.writeWaiting();
        return shapes.text.toString();
    }

    private void walk(Element element) {
        if (element.hasAttribute("transform")) {
            throw new IllegalStateException(
                    "a strip is drawn without transforms, but had one: " + element.getAttribute("transform"));
        }
        Map<String, String> style = new TreeMap<>(styles.element());
        for (String name : GRANTED.keySet()) {
            if (element.hasAttribute(name)) {
                style.put(name, element.getAttribute(name));
            }
        }
        String path = path(element);
        if (!path.isEmpty()) {
            take(new Shape(path, style));
            return;
        }
        styles.push(style);
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                walk(inner);
            }
        }
        styles.pop();
    }

    private void take(Shape shape) {
        Shape before = waiting;
        if (before != null && before.style().equals(shape.style())) {
            waiting = new Shape(before.path() + shape.path(), shape.style());
        } else if (before != null && before.path().equals(shape.path()) && isGroundThenEdge(before, shape)) {
            Map<String, String> both = new TreeMap<>(shape.style());
            both.put("fill", before.style().getOrDefault("fill", NONE));
            waiting = new Shape(shape.path(), both);
        } else {
            writeWaiting();
            waiting = shape;
        }
    }

    private static boolean isGroundThenEdge(Shape ground, Shape edge) {
        return NONE.equals(ground.style().get("stroke"))
                && NONE.equals(edge.style().get("fill"));
    }

    private void writeWaiting() {
        Shape shape = waiting;
        if (shape == null) {
            return;
        }
        text.append("<path d=\"").append(shape.path()).append('"');
        boolean stroked = !NONE.equals(shape.style().get("stroke"));
        shape.style().forEach((name, value) -> {
            boolean matters = stroked || !name.startsWith("stroke");
            if (matters && !value.equals(GRANTED.get(name))) {
                text.append(' ')
                        .append(name)
                        .append("=\"")
                        .append(Ink.written(value))
                        .append('"');
            }
        });
        text.append("/>");
        waiting = null;
    }

    /** Returns the outline of a shape, empty for a group. */
    private static String path(Element shape) {
        return switch (shape.getLocalName()) {
            case "path" ->
                SPACE_AT_LETTER.matcher(shape.getAttribute("d").strip()).replaceAll("$1");
            case "polygon" -> "M" + shape.getAttribute("points").strip() + "Z";
            case "line" -> "M" + pair(shape, "x1", "y1") + "L" + pair(shape, "x2", "y2");
            case "rect" ->
                "M" + pair(shape, "x", "y") + "h" + shape.getAttribute("width") + "v" + shape.getAttribute("height")
                        + "h-" + shape.getAttribute("width") + "Z";
            case "g", "svg", "defs" -> "";
            default -> throw new IllegalStateException("a strip holds no such shape: " + shape.getLocalName());
        };
    }

    private static String pair(Element shape, String first, String second) {
        return String.join(",", List.of(shape.getAttribute(first), shape.getAttribute(second)));
    }
}
