package org.crosshead.routeknowledge;

import org.crosshead.route.Direction;

/**
 * A section as it is entered.
 *
 * @param teacher staff number of who teaches it; blank where nobody is named yet
 * @param line running line by its name on the route; blank for all of them together
 * @param needs of a learner
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
        String line,
        LearningNeeds needs) {

    /** On every running line, with nothing laid down that a learner needs. */
    public SectionDraft(
            String code,
            String title,
            String routeCode,
            double fromMeasure,
            double toMeasure,
            Direction direction,
            Band band,
            String hard,
            String teacher) {
        this(code, title, routeCode, fromMeasure, toMeasure, direction, band, hard, teacher, "", LearningNeeds.NONE);
    }
}
