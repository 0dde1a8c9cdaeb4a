package org.crosshead.routeknowledge;

import org.crosshead.route.Direction;

/**
 * A section as it is entered.
 *
 * @param teacher staff number of who teaches it; blank where nobody is named yet
 */
public record SectionDraft(
        String code,
        String title,
        String routeCode,
        double fromMeasure,
        double toMeasure,
        Direction direction,
        Band band,
        String hard,
        String teacher) {}
