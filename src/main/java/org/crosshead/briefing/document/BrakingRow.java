package org.crosshead.briefing.document;

import java.util.List;

/**
 * One braking point.
 *
 * @param target what is braked for, message {@code braking.<kind>}
 * @param targetPlace where the target speed must be reached
 * @param targetSpeed 0 for a stop
 * @param brakeAt where to act for a service application, margin included
 * @param speed speed counted from: the greater of what is allowed and what is forecast before the target
 * @param serviceDistance from brakeAt to the target
 * @param emergencyDistance from the same speed with everything applied, no margin
 * @param warnings what is not as it should be; may be empty
 */
public record BrakingRow(
        int number,
        String target,
        Phrase targetWords,
        Place targetPlace,
        Term targetSpeed,
        Place brakeAt,
        Term speed,
        Term serviceDistance,
        Term emergencyDistance,
        List<Phrase> warnings) {

    public BrakingRow {
        warnings = List.copyOf(warnings);
    }
}
