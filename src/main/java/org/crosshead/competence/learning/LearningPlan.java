package org.crosshead.competence.learning;

import java.time.LocalDate;
import org.crosshead.competence.Subject;
import org.jspecify.annotations.Nullable;

/**
 * That a person learns a road or a class.
 *
 * @param until day by which it is hoped for; null where none is set
 * @param closedOn null while it is open
 */
public record LearningPlan(
        long id,
        long personId,
        Subject subject,
        LocalDate openedOn,
        String openedBy,
        @Nullable LocalDate until,
        @Nullable LocalDate closedOn) {}
