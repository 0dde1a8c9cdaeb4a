package org.crosshead.stock;

import java.time.Instant;
import java.util.List;

/**
 * A revision of a class of engines.
 *
 * @param number from 1
 * @param entries the figures of the content with who entered each, in the same order
 */
public record ClassRevision(
        long id,
        int number,
        Instant madeAt,
        String madeBy,
        String reason,
        LocomotiveClassDraft content,
        List<FigureEntry> entries) {

    public ClassRevision {
        entries = List.copyOf(entries);
    }
}
