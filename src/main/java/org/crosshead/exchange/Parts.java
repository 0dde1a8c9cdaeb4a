package org.crosshead.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The lines of a draft's parts, as they are read, by their path in the draft. */
final class Parts {

    private final Map<String, Line> byPath = new HashMap<>();

    /** Returns the parts of one list of the draft, noting which line each came from. */
    <P> List<P> list(String name, List<Line> lines, Function<Line, P> part) {
        List<P> parts = new ArrayList<>();
        for (Line line : lines) {
            byPath.put(name + "[" + parts.size() + "]", line);
            parts.add(part.apply(line));
        }
        return parts;
    }

    /** Returns the parts of one list of the draft that a column names, noting which line each came from. */
    <P> List<P> named(String name, String column, List<Line> lines, Function<Line, P> part) {
        lines.forEach(line -> byPath.put(name + "." + line.text(column), line));
        return lines.stream().map(part).toList();
    }

    Map<String, Line> byPath() {
        return byPath;
    }
}
