package org.crosshead.kernel.traction;

/**
 * Heat that came into a boiler and left it over a while, J, above water at 0 C.
 *
 * @param firedJ given by the fire to the water
 * @param fedJ brought by the feed
 * @param drawnJ taken away by the steam of cylinders and auxiliaries, without its superheat
 * @param blownJ taken away by the safety valves
 * @param storedJ by how much steam, water and metal are hotter or more than before
 */
public record HeatAccount(double firedJ, double fedJ, double drawnJ, double blownJ, double storedJ) {}
