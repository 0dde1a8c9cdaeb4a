package org.crosshead.competence.learning;

import java.time.LocalDate;

/** A learner put on a real train beside whoever teaches them. */
public record LearningTurn(
        long id,
        long trainId,
        String trainCode,
        LocalDate day,
        boolean cancelled,
        long learnerId,
        long teacherId,
        State state) {

    /** What has become of it. */
    public enum State {
        BOOKED,
        /** The teacher has told what was driven and in what light and weather. */
        TOLD,
        NOT_RUN
    }
}
