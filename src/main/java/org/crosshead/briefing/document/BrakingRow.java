package org.crosshead.briefing.document;

import java.util.List;

/**
 * One braking point.
 *
 * @param target what is braked for, message {@code braking.<kind>}
 * @param targetPlace where the target speed must be reached
 * @param targetSpeed 0 for a stop
 * @param brakeAt where to act for a service application, margin included
 * @param speed speed of the forecast at brakeAt
 * @param serviceDistance from brakeAt to the target
 * @param emergencyDistance from brakeAt's speed to the target speed with everything applied
 * @param assumptions brake, rail, reaction, margin
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
        List<Phrase> assumptions,
        List<Phrase> warnings) {

    public BrakingRow {
        assumptions = List.copyOf(assumptions);
        warnings = List.copyOf(warnings);
    }
}
