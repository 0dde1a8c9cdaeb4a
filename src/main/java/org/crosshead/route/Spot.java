package org.crosshead.route;

/**
 * A place of the path in the measure of its route.
 *
 * @param legNumber from 1
 */
public record Spot(int legNumber, String routeCode, double measure, String measureText) {}
