package org.crosshead.route;

import org.jspecify.annotations.Nullable;

/**
 * Something on a path that nobody measured or printed.
 *
 * @param toM where it ends as run, or null for a thing without length
 * @param name of a feature; empty for others
 * @param accepted whether a person has accepted the estimates of its route
 */
public record PathEstimate(
        Kind kind, double fromM, @Nullable Double toM, String routeCode, String name, boolean accepted) {

    /** What is estimated. */
    public enum Kind {
        GRADIENT,
        CURVE,
        LIMIT,
        FEATURE
    }
}
