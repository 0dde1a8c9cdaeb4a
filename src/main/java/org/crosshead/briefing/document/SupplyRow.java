package org.crosshead.briefing.document;

import org.jspecify.annotations.Nullable;

/**
 * Water and coal at a place where water can be had, at the start or at the end.
 *
 * @param taken water taken here, or null
 */
public record SupplyRow(
        Place place,
        String name,
        String engineNumber,
        Term waterUsed,
        Term waterLeft,
        @Nullable Term taken,
        Term coalUsed,
        Term coalLeft) {}
