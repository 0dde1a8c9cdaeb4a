package org.crosshead.stock;

import java.time.Instant;
import java.util.List;

/**
 * A revision of an engine.
 *
 * @param number from 1
 * @param entries the figures of the content with who entered each, in the same order
 */
public record EngineRevision(
        long id,
        int number,
        Instant madeAt,
        String madeBy,
        String reason,
        EngineDraft content,
        List<FigureEntry> entries) {

    public EngineRevision {
        entries = List.copyOf(entries);
    }
}
