package org.crosshead.route;

/** A place where two routes join: the same spot in the measure of each. */
public record JunctionDraft(
        String name, String routeCode, double atMeasure, String otherRouteCode, double otherMeasure) {}
