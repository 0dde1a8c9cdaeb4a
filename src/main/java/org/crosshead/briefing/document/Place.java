package org.crosshead.briefing.document;

import org.crosshead.route.MeasureUnit;
import org.jspecify.annotations.Nullable;

/**
 * A spot on the train's path.
 *
 * @param positionM from the start of the path
 * @param routeCode route it lies on
 * @param measure in the route's own measure
 * @param landmark name of the recognisable thing it is told by, or null if none is within reach
 * @param pastLandmark how far past it (negative: before it) in the route's own measure; 0 at it
 */
public record Place(
        double positionM,
        String routeCode,
        double measure,
        MeasureUnit measureUnit,
        @Nullable String landmark,
        double pastLandmark) {}
