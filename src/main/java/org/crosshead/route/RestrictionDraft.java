package org.crosshead.route;

import java.time.Instant;

/**
 * A temporary restriction of speed.
 *
 * @param number as the railway's notice prints it
 * @param firstMoment from when it holds, included
 * @param lastMoment until when it holds, included
 */
public record RestrictionDraft(
        String number,
        String routeCode,
        double fromMeasure,
        double toMeasure,
        double limit,
        SpeedUnit limitUnit,
        Scope scope,
        Instant firstMoment,
        Instant lastMoment,
        String reason) {}
