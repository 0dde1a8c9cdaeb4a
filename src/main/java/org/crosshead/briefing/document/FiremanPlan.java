package org.crosshead.briefing.document;

import java.util.List;

/**
 * The fireman's work as the forecast has it.
 *
 * @param rounds where a round of firing falls due, by what has been put on
 * @param feeds where an injector is at work
 * @param blowers where the blower is open
 * @param rows one for each stretch between calls
 */
public record FiremanPlan(List<Double> rounds, List<Stretch> feeds, List<Stretch> blowers, List<Row> rows) {

    public FiremanPlan {
        rounds = List.copyOf(rounds);
        feeds = List.copyOf(feeds);
        blowers = List.copyOf(blowers);
        rows = List.copyOf(rows);
    }

    /** A stretch of the path, m. */
    public record Stretch(double fromM, double toM) {}

    /**
     * The work between two calls.
     *
     * @param coal to be put on
     * @param feed water to be fed
     * @param fire kind of fire at the beginning: {@code thin}, {@code even} or {@code thick}
     * @param dampers how they stand on most of it: {@code open}, {@code half} or {@code nearly-shut}
     * @param pressure at the end
     * @param glass at the end
     * @param say what else to mind, in running order
     */
    public record Row(
            String fromName,
            String toName,
            Term coal,
            Term feed,
            String fire,
            String dampers,
            Term pressure,
            Term glass,
            List<Phrase> say) {

        public Row {
            say = List.copyOf(say);
        }
    }
}
