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
 * @param needs what everybody who drives must have besides road and engine
 * @param hours of a turn and between turns
 * @param upkeep of roads and of the depot
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
        Set<Subject> needs,
        Hours hours,
        Upkeep upkeep,
        Regime regime,
        String owner,
        String approver) {

    /**
     * How roads are opened again, and how many are to know each. The usual figures are this project's.
     *
     * @param anewMonths a road that was closed longer is learned anew by those who held it; who lapsed longer ago learns as a beginner
     * @param provingRun whether a closed road is proved by a run before it is opened
     * @param holdersLeast below so many holders a road or class is called thin
     * @param easyGrades whether no conductor driver is asked over what {@link EasyGrades} covers
     * @param urgentDays from so many days before it lapses it is told as urgent, to the person and to the manager
     */
    public record Upkeep(int anewMonths, boolean provingRun, int holdersLeast, boolean easyGrades, int urgentDays) {

        public static final Upkeep USUAL = new Upkeep(12, true, 2, false, 14);

        private boolean makes(int warnDays) {
            return anewMonths >= 1
                    && anewMonths <= ANEW_MOST
                    && holdersLeast >= 0
                    && holdersLeast <= HOLDERS_MOST
                    && urgentDays >= 0
                    && urgentDays <= warnDays;
        }
    }

    /**
     * Hours of a turn and between turns. The usual figures are customary limits, from memory.
     *
     * @param turnMost from booking on to booking off
     * @param restLeast between two turns
     * @param breakMost a longer pause ends a turn
     * @param weekMost within seven days
     * @param turnsMost within fourteen days
     * @param accrued what adds up besides
     */
    public record Hours(
            double turnMost, double restLeast, double breakMost, double weekMost, int turnsMost, Accrued accrued) {

        public static final Hours CUSTOMARY = new Hours(12, 12, 4, 72, 13, Accrued.NONE);

        private boolean make() {
            return turnMost > 0
                    && turnMost <= DAY_HOURS
                    && restLeast > breakMost
                    && restLeast <= DAY_HOURS
                    && breakMost >= 0
                    && weekMost >= turnMost
                    && turnsMost >= 1
                    && turnsMost <= FORTNIGHT
                    && accrued.makes(restLeast);
        }
    }

    /**
     * What adds up over days in a row and over a month; each 0 where the railway has no such limit.
     *
     * @param monthMost hours in a calendar month
     * @param daysMost days in a row on each of which a turn begins
     * @param offLeast hours off after so many days in a row
     * @param longRest hours between a turn of the longest length and the next, where it is more than the usual rest
     */
    public record Accrued(double monthMost, int daysMost, double offLeast, double longRest) {

        public static final Accrued NONE = new Accrued(0, 0, 0, 0);

        private boolean makes(double restLeast) {
            boolean days = daysMost == 0 ? offLeast == 0 : daysMost <= DAYS_MOST && offLeast >= restLeast;
            return monthMost >= 0 && daysMost >= 0 && days && (longRest == 0 || longRest >= restLeast);
        }
    }

    /** Without licence and medical outcome, with customary hours. */
    public KnowledgePolicy(
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
        this(
                version,
                validFrom,
                lapseMonths,
                classLapseMonths,
                assessmentMonths,
                warnDays,
                keepsAlive,
                verifies,
                Set.of(),
                Hours.CUSTOMARY,
                Upkeep.USUAL,
                regime,
                owner,
                approver);
    }

    /** Whose law holds. The figures are floors: a policy may be stricter, never laxer. */
    public enum Regime {
        /** A line of its own that no such law names: the railway's own policy alone. */
        SEPARATE_LINE(Integer.MAX_VALUE, Integer.MAX_VALUE, LICENCE_MONTHS, Set.of()),
        /** Absence of more than a year, assessment every three: TDLCR schedule 6 and Directive 2007/59/EC Annex VII, from memory. */
        MAIN_LINE(12, 36, LICENCE_MONTHS, Set.of(Subject.LICENCE, Subject.MEDICAL)),
        /**
         * The general railroad system of the United States: the absence is the railway's own, a determination serves 36 months (49 CFR
         * 240.201(c) and 240.217(c), read), an observation and an unannounced test each calendar year (240.303(b)-(c), read).
         */
        GENERAL_SYSTEM(Integer.MAX_VALUE, 36, 36, Set.of(Subject.LICENCE, Subject.OBSERVED, Subject.TESTED));

        private final int lapseMost;
        private final int assessmentMost;
        private final int licenceMost;

        @SuppressWarnings("ImmutableEnumChecker") // Set.of over records, but not so marked
        private final Set<Subject> needs;

        Regime(int lapseMost, int assessmentMost, int licenceMost, Set<Subject> needs) {
            this.lapseMost = lapseMost;
            this.assessmentMost = assessmentMost;
            this.licenceMost = licenceMost;
            this.needs = needs;
        }

        /** Returns the calendar months for which a licence, or what stands for it, may be good at most. */
        int licenceMonthsMost() {
            return licenceMost;
        }

        /** Returns how a driver may be conducted. */
        Piloting piloting() {
            return this == GENERAL_SYSTEM ? Piloting.NOT_OF_THE_CREW : Piloting.BY_A_DRIVER;
        }
    }

    /** Ten years: TDLCR reg. 12(1), read. */
    private static final int LICENCE_MONTHS = 120;

    /** Twelve hours on duty and eight off: 49 CFR 228.405(a)(1)-(2), read, and 49 USC 21103, from memory. */
    private static final double GENERAL_TURN_MOST = 12;

    private static final double GENERAL_REST_LEAST = 8;
    private static final double DAY_HOURS = 24;
    private static final int FORTNIGHT = 14;
    private static final int DAYS_MOST = 28;
    private static final int ANEW_MOST = 120;
    private static final int HOLDERS_MOST = 1_000;
    private static final Set<Kind> MAY_COUNT =
            EnumSet.of(Kind.WORKED, Kind.WORKED_CONDUCTED, Kind.RODE, Kind.CONDUCTED, Kind.LEARNED);

    public KnowledgePolicy {
        lapseMonths = Map.copyOf(lapseMonths);
        keepsAlive = Set.copyOf(keepsAlive);
        needs = Set.copyOf(needs);
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
        if (!hours.make()) {
            return Optional.of("hours");
        }
        if (!upkeep.makes(warnDays)) {
            return Optional.of("upkeep");
        }
        if (!needs.containsAll(regime.needs)) {
            return Optional.of("licence-by-law");
        }
        boolean hoursByLaw = regime != Regime.GENERAL_SYSTEM
                || (hours.turnMost() <= GENERAL_TURN_MOST && hours.restLeast() >= GENERAL_REST_LEAST);
        if (!hoursByLaw) {
            return Optional.of("hours-by-law");
        }
        if (upkeep.easyGrades() && regime == Regime.MAIN_LINE) {
            return Optional.of("exemption-by-law");
        }
        if (owner.isBlank() || approver.isBlank()) {
            return Optional.of("not-approved");
        }
        return owner.equals(approver) ? Optional.of("approved-by-owner") : Optional.empty();
    }

    /** Returns the same as a version of this number, by these people. */
    KnowledgePolicy numbered(int number, String by, String approvedBy) {
        return new KnowledgePolicy(
                number,
                validFrom,
                lapseMonths,
                classLapseMonths,
                assessmentMonths,
                warnDays,
                keepsAlive,
                verifies,
                needs,
                hours,
                upkeep,
                regime,
                by,
                approvedBy);
    }

    /** Says whether an event keeps knowledge alive. */
    public boolean keepsAlive(Kind kind) {
        return kind == Kind.WORKED || keepsAlive.contains(kind);
    }

    /** Returns the months after which a section of this band lapses; 0 where none are laid down. */
    public int lapseMonths(Band band) {
        return lapseMonths.getOrDefault(band, 0);
    }
}
