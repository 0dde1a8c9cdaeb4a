package org.crosshead.route;

/**
 * A route as it stands in a list.
 *
 * @param length in the route's measure
 */
public record RouteSummary(
        String code, String name, long revisionId, int revisionNumber, double length, MeasureUnit measureUnit) {}
