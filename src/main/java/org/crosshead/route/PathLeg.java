package org.crosshead.route;

import org.crosshead.kernel.units.Check;

/**
 * A stretch of one route, run in one direction.
 *
 * @param fromMeasure where it begins in the direction of running, in the route's measure
 * @param line running line
 * @param tenderFirst whether the train engine runs tender or bunker first over it
 */
public record PathLeg(
        RouteRevision route,
        double fromMeasure,
        double toMeasure,
        String line,
        Direction direction,
        boolean tenderFirst) {

    /**
     * Checks the leg.
     *
     * @throws IllegalArgumentException if the leg leaves its route, has no length, or runs against its direction
     */
    public PathLeg {
        Extent extent = Extent.of(route.content());
        Check.that(
                extent.holds(fromMeasure) && extent.holds(toMeasure),
                "leg from " + fromMeasure + " to " + toMeasure + " must lie on route "
                        + route.content().code());
        Check.that(
                direction == Direction.RISING ? toMeasure > fromMeasure : toMeasure < fromMeasure,
                "leg from " + fromMeasure + " to " + toMeasure + " must run " + direction);
    }
}
