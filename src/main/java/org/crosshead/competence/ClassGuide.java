package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.routeknowledge.Closure;
import org.crosshead.routeknowledge.LearningNeeds;
import org.jspecify.annotations.Nullable;

/**
 * What is to be known of a class of engine.
 *
 * @param similarTo code of a class that it is like; blank for none
 * @param differences from that class, conversion, working tender first; in words
 * @param teacherId who teaches it; null where nobody is named yet
 * @param needs of a learner, in turns
 * @param briefedFrom since when everybody who works it must have been briefed on it or passed for it: it came, came again or visits; null for none
 * @param approvedBy null until a second person has approved it
 */
public record ClassGuide(
        String classCode,
        String similarTo,
        String differences,
        @Nullable Long teacherId,
        LearningNeeds needs,
        @Nullable LocalDate briefedFrom,
        String enteredBy,
        @Nullable String approvedBy,
        int version) {

    /** Since a class came, came again or visits it counts for who is briefed on it, as a road after a long closure. */
    List<Closure> closures() {
        return briefedFrom == null
                ? List.of()
                : List.of(new Closure(briefedFrom, briefedFrom, true, null, null, "briefing"));
    }
}
