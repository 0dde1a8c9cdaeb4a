package org.crosshead.competence;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Set;
import org.crosshead.competence.Holding.State;
import org.jspecify.annotations.Nullable;

/** Derives from events what a person has to drive at all: a licence, a medical outcome. Each says itself until when it is good. */
final class PersonalRules {

    /** A medical examination at least every three years: TDLCR(NI) schedule 1 paragraph 3(1), read. */
    static final int MEDICAL_YEARS = 3;

    /** Every year from this birthday on: same. */
    static final int OLDER = 55;

    private static final int LAST_DAY = 31;

    private PersonalRules() {}

    /**
     * Returns the last day until which a medical outcome may be good; a doctor may make it shorter.
     *
     * @param examined day of the examination
     * @param born null where it is not said; the rule by age is then not applied
     */
    static LocalDate medicalLast(LocalDate examined, @Nullable LocalDate born) {
        LocalDate usual = examined.plusYears(MEDICAL_YEARS);
        if (born == null) {
            return usual;
        }
        LocalDate older = born.plusYears(OLDER);
        LocalDate nextYear = examined.plusYears(1);
        LocalDate byAge = older.isAfter(nextYear) ? older : nextYear;
        return usual.isBefore(byAge) ? usual : byAge;
    }

    /** Returns the last day until which something is good that is done once in each calendar year: the end of the next. */
    static LocalDate yearlyLast(LocalDate done) {
        return LocalDate.of(done.getYear() + 1, Month.DECEMBER, LAST_DAY);
    }

    /** Returns how it stands after events that count, in the order of their days. */
    static Standing standing(List<CompetenceEvent> events, List<Long> because) {
        State state = State.NOT_HELD;
        boolean suspended = false;
        LocalDate until = null;
        LocalDate from = null;
        LocalDate last = null;
        for (CompetenceEvent event : events) {
            last = event.day();
            switch (event.kind()) {
                case LICENSED, FIT, FIT_RESTRICTED -> {
                    state = State.HELD;
                    until = event.until();
                    from = event.day();
                }
                case OBSERVED, TESTED -> {
                    state = State.HELD;
                    until = yearlyLast(event.day());
                    from = event.day();
                }
                case UNFIT -> state = State.UNFIT;
                case SUSPENDED -> suspended = true;
                case REINSTATED -> suspended = false;
                case WITHDRAWN -> state = State.WITHDRAWN;
                default -> {
                    continue;
                }
            }
            because.add(event.id());
        }
        return new Standing(state, suspended, null, null, from, until, Set.of(), null, last);
    }
}
