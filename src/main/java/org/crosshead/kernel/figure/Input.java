package org.crosshead.kernel.figure;

/**
 * One input of a step.
 *
 * @param symbol the name by which the step's expression calls it: letters, digits, no blanks
 * @param value its value in {@code unit}
 * @param unit unit as shown, for example {@code psi}, {@code m/s}; empty if it has none
 * @param source key of where it came from: a data key that the caller joins with its origin, a key of docs/sources.md, or
 *     {@code step:<name>} for the result of an earlier step
 */
public record Input(String symbol, double value, String unit, String source) {}
