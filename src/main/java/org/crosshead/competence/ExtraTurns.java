package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.working.CrewBooking;

/** Work of people besides the trains of whose crew they are; every one who keeps such work contributes it. */
@FunctionalInterface
public interface ExtraTurns {

    /** Returns what somebody works besides, on trains of these days. */
    List<CrewBooking> of(long personId, LocalDate firstDay, LocalDate lastDay);
}
