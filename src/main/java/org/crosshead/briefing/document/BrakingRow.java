package org.crosshead.briefing.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

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
 * @param openAgain where the tail has cleared the reduction and more is allowed; null for a stop and where no more is allowed
 * @param curves how it goes from brakeAt on; null in documents of schema 2
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
        List<Phrase> warnings,
        @Nullable Place openAgain,
        @Nullable List<BrakingCurve> curves) {

    public BrakingRow {
        warnings = List.copyOf(warnings);
        curves = curves == null ? null : List.copyOf(curves);
    }
}
