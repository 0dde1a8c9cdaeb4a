package org.crosshead.competence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Something that bears on what a person knows. It is never changed; what was entered wrongly is struck by a later one.
 *
 * @param id in the order of entry
 * @param personId whom it is about
 * @param day on which it was, by the railway's calendar; for a turn over midnight the day of its end
 * @param otherId the teacher, assessor, verifier or manager; null where nobody else took part
 * @param struckId the event that a correction strikes; null for all others
 * @param until last good day of a licence, of a medical outcome or of a letter, day of the assessment of what is carried over; null for all others
 * @param note of a paper taken over, of a reason, or blank
 * @param circumstances in which a lesson was; empty for all others
 */
public record CompetenceEvent(
        long id,
        long personId,
        Kind kind,
        Subject subject,
        LocalDate day,
        Instant enteredAt,
        @Nullable Long otherId,
        @Nullable Long struckId,
        @Nullable LocalDate until,
        String note,
        Set<Circumstance> circumstances) {

    public CompetenceEvent {
        circumstances = Set.copyOf(circumstances);
    }

    /** Of everything but lessons. */
    public CompetenceEvent(
            long id,
            long personId,
            Kind kind,
            Subject subject,
            LocalDate day,
            Instant enteredAt,
            @Nullable Long otherId,
            @Nullable Long struckId,
            @Nullable LocalDate until,
            String note) {
        this(id, personId, kind, subject, day, enteredAt, otherId, struckId, until, note, Set.of());
    }

    /** Of everything that has no last day of its own. */
    public CompetenceEvent(
            long id,
            long personId,
            Kind kind,
            Subject subject,
            LocalDate day,
            Instant enteredAt,
            @Nullable Long otherId,
            @Nullable Long struckId,
            String note) {
        this(id, personId, kind, subject, day, enteredAt, otherId, struckId, null, note);
    }

    /** What it was. */
    public enum Kind {
        /** At the controls by themselves, over the section in its direction, or on the class. */
        WORKED,
        /** At the controls while a conductor driver who knows the road went along. */
        WORKED_CONDUCTED,
        /** Rode in the cab without being at the controls. */
        RODE,
        /** Went along as conductor driver. */
        CONDUCTED,
        /** At the controls under a teacher. */
        LEARNED,
        /** Recognised by a dated letter, which the note names, to teach and assess what they do not hold here; good until its last day. */
        RECOGNISED,
        /** Was briefed on a class of engine that came, came again or visits. */
        BRIEFED,
        /** Drove the run by which a closed road was proved before it was opened again. */
        PROVED,
        /** Says: I know it and am ready to be assessed. */
        DECLARED,
        QUESTIONS_PASSED,
        QUESTIONS_FAILED,
        PRACTICE_PASSED,
        PRACTICE_FAILED,
        /** A second assessor has verified an assessment. */
        VERIFIED,
        /** A manager has authorised it. */
        AUTHORISED,
        /** Taken over from a paper record: its document in the note, the assessor who signed it as the other. */
        TAKEN_OVER,
        /** Carried over from a section that was split or merged: the day from which it lapses, and as its last day that of the assessment. */
        CARRIED_OVER,
        SUSPENDED,
        REINSTATED,
        WITHDRAWN,
        /** Handed back by the person: always possible, never held against them. */
        HANDED_BACK,
        /** Held from now on by daylight only. */
        DAY_ONLY,
        /** Held from now on running chimney first only. */
        CHIMNEY_FIRST_ONLY,
        /** Held from now on only with a teacher in charge. */
        WITH_TEACHER_ONLY,
        /** What limited it is over. */
        LIMITS_LIFTED,
        /** A licence to drive, good until its last day. */
        LICENSED,
        FIT,
        /** Fit with a restriction, which the note names as a code or in words, never as a measurement. */
        FIT_RESTRICTED,
        UNFIT,
        /** Observed at work by somebody who rode with them. */
        OBSERVED,
        /** Tested at work without having been told. */
        TESTED,
        /** An event was entered wrongly and does not count. */
        STRUCK
    }
}
