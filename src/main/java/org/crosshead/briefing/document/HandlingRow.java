package org.crosshead.briefing.document;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One point of the handling table.
 *
 * @param number counts from 1 in running order; stands in the black point on the strip
 * @param action kind of action, message {@code action.<kind>} words it together with the controls
 * @param forFireman true for a point in the fireman's column
 * @param regulator after the action, from 0 to 1; null where the action does not touch it
 * @param cutoff after the action, from 0 to 1; null where the action does not touch it
 * @param speed speed expected there
 * @param pressure boiler pressure expected there
 * @param water share of the glass expected there, as per cent
 * @param minuteOfRun minutes after the start
 * @param ifNot what to do if she runs slower, or the boiler stands lower, than is planned; null where nothing is told
 */
public record HandlingRow(
        int number,
        Place place,
        String action,
        boolean forFireman,
        @Nullable Double regulator,
        @Nullable Double cutoff,
        Phrase words,
        Phrase reason,
        Term speed,
        Term pressure,
        Term water,
        double minuteOfRun,
        @Nullable Phrase ifNot) {

    private static final Set<String> SETTINGS =
            Set.of("open-up", "notch-up", "let-out", "shut-off", "ease-regulator", "widen-regulator");

    /** Says whether regulator or cutoff is set here on the road: such a point can be moved or left out. */
    public boolean setsOnTheRoad() {
        return SETTINGS.contains(action);
    }
}
