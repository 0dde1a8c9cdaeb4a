package org.crosshead.stock;

import java.time.Instant;
import java.util.List;

/**
 * A revision of a kind of vehicle.
 *
 * @param number from 1
 * @param entries the figures of the content with who entered each, in the same order
 */
public record VehicleKindRevision(
        long id,
        int number,
        Instant madeAt,
        String madeBy,
        String reason,
        VehicleKindDraft content,
        List<FigureEntry> entries) {

    public VehicleKindRevision {
        entries = List.copyOf(entries);
    }
}
