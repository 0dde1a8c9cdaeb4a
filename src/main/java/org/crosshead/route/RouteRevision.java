package org.crosshead.route;

import java.time.Instant;

/**
 * One numbered revision of a route, never changed once stored.
 *
 * @param number counts from 1 within the route
 * @param madeBy name of the person who entered it
 */
public record RouteRevision(
        long id, long routeId, int number, Instant madeAt, String madeBy, String reason, RouteDraft content) {}
