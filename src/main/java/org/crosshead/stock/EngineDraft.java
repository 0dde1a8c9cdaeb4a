package org.crosshead.stock;

import java.util.List;

/**
 * An engine of a class.
 *
 * @param number painted number, unique
 * @param remarks what its crew should know: steaming, restrictions
 * @param figures figures that differ from the class, for example turned tyres; may be empty
 */
public record EngineDraft(String number, String name, String classCode, String remarks, List<SourcedFigure> figures) {

    public EngineDraft {
        figures = List.copyOf(figures);
    }
}
