package org.crosshead.stock;

import java.time.Instant;

/**
 * A revision of a formation.
 *
 * @param number from 1
 */
public record FormationRevision(
        long id, int number, Instant madeAt, String madeBy, String reason, FormationDraft content) {}
