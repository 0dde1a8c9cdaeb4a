package org.crosshead.competence;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.routeknowledge.Band;

/**
 * The railway's own rules on how long knowledge lasts and what keeps it alive.
 *
 * @param lapseMonths calendar months after the last turn worked, by how hard the section is
 * @param classLapseMonths likewise for a class of engine
 * @param assessmentMonths calendar months after the last assessment, whichever comes first
 * @param warnDays from so many days before it lapses it is called due
 * @param keepsAlive kinds of events that count as worked; {@link Kind#WORKED} always does
 * @param verifies whether somebody who alone taught a person may assess them where a second one verifies it
 * @param regime whose law sets the floor
 */
public record KnowledgePolicy(
        int version,
        LocalDate validFrom,
        Map<Band, Integer> lapseMonths,
        int classLapseMonths,
        int assessmentMonths,
        int warnDays,
        Set<Kind> keepsAlive,
        boolean verifies,
        Regime regime,
        String owner,
        String approver) {

    /** Whose law holds. The figures are floors: a policy may be stricter, never laxer. */
    public enum Regime {
        /** A line of its own that no such law names: the railway's own policy alone. */
        SEPARATE_LINE(Integer.MAX_VALUE, Integer.MAX_VALUE),
        /** Absence of more than a year, assessment every three: TDLCR schedule 6 and Directive 2007/59/EC Annex VII, from memory. */
        MAIN_LINE(12, 36);

        private final int lapseMost;
        private final int assessmentMost;

        Regime(int lapseMost, int assessmentMost) {
            this.lapseMost = lapseMost;
            this.assessmentMost = assessmentMost;
        }
    }

    private static final Set<Kind> MAY_COUNT =
            EnumSet.of(Kind.WORKED, Kind.WORKED_CONDUCTED, Kind.RODE, Kind.CONDUCTED, Kind.LEARNED);

    public KnowledgePolicy {
        lapseMonths = Map.copyOf(lapseMonths);
        keepsAlive = Set.copyOf(keepsAlive);
    }

    /** Returns why this policy cannot be put in force, as a message code; empty where it can. */
    public Optional<String> refusal() {
        for (Band band : Band.values()) {
            Integer months = lapseMonths.get(band);
            if (months == null || months < 1) {
                return Optional.of("period-missing");
            }
            if (months > regime.lapseMost) {
                return Optional.of("longer-than-law");
            }
        }
        if (classLapseMonths < 1 || assessmentMonths < 1 || warnDays < 0) {
            return Optional.of("period-missing");
        }
        if (classLapseMonths > regime.assessmentMost || assessmentMonths > regime.assessmentMost) {
            return Optional.of("longer-than-law");
        }
        if (!MAY_COUNT.containsAll(keepsAlive)) {
            return Optional.of("cannot-count");
        }
        if (owner.isBlank() || approver.isBlank()) {
            return Optional.of("not-approved");
        }
        return owner.equals(approver) ? Optional.of("approved-by-owner") : Optional.empty();
    }

    /** Says whether an event keeps knowledge alive. */
    public boolean keepsAlive(Kind kind) {
        return kind == Kind.WORKED || keepsAlive.contains(kind);
    }

    int lapseMonths(Band band) {
        return lapseMonths.getOrDefault(band, 0);
    }
}
