package org.crosshead.routeknowledge;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A time in which a section is closed.
 *
 * @param from first day on which it is closed
 * @param reopenedOn first day on which it is open again; null while it is closed
 * @param learnAnew whether those who held it must be taught anew from then on
 * @param provedOn day of the run by which it was proved; null for none
 * @param provedBy who drove that run; null for none
 * @param changes what is not as it was; blank for nothing
 */
public record Closure(
        LocalDate from,
        @Nullable LocalDate reopenedOn,
        boolean learnAnew,
        @Nullable LocalDate provedOn,
        @Nullable Long provedBy,
        String changes) {

    /** Not opened again yet. */
    public Closure(LocalDate from) {
        this(from, null, false, null, null, "");
    }

    /** Says whether it is closed on a day. */
    public boolean covers(LocalDate day) {
        return !day.isBefore(from) && (reopenedOn == null || day.isBefore(reopenedOn));
    }
}
