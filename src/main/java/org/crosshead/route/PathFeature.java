package org.crosshead.route;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Something that the crew meets on the path.
 *
 * @param fromM where the train's head reaches it
 * @param toM where it ends as run, or null for a thing without length
 * @param legNumber from 1
 * @param measureText where it begins as run, in the route's measure
 */
public record PathFeature(
        double fromM,
        @Nullable Double toM,
        int legNumber,
        String routeCode,
        String measureText,
        RouteDraft.Feature feature) {

    /** Returns from how far it is seen, m; empty where that is not stored. */
    public OptionalDouble sightingM() {
        Double sighting = feature.sighting();
        LengthUnit unit = feature.lengthUnit();
        return sighting == null || unit == null ? OptionalDouble.empty() : OptionalDouble.of(unit.metres(sighting));
    }
}
