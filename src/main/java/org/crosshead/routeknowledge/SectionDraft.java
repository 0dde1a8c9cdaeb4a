package org.crosshead.routeknowledge;

import org.crosshead.route.Direction;

/**
 * A section as it is entered.
 *
 * @param teacher staff number of who teaches it; blank where nobody is named yet
 * @param approvedBy who approved its risk assessment on paper; blank where it is still to be approved
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
        String teacher,
        String approvedBy) {}
