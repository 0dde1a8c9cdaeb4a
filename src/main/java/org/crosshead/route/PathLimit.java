package org.crosshead.route;

/**
 * A limit that holds for the train over a length of its path. Several may cover one place; the least counts.
 *
 * @param limit as the source prints it
 * @param number of the notice; empty for a permanent limit
 * @param note remark of a permanent limit, reason of a temporary one
 */
public record PathLimit(
        double fromM, double toM, double limit, SpeedUnit limitUnit, Source source, String number, String note) {

    /** Where a limit is laid down. */
    public enum Source {
        PERMANENT,
        /** For every train, only while the engine runs tender or bunker first. */
        TENDER_FIRST,
        TEMPORARY
    }

    public double limitMps() {
        return limitUnit.mps(limit);
    }
}
