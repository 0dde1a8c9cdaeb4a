package org.crosshead.kernel.cylinder;

/**
 * What one double-acting cylinder end does in a turn. Pressures are absolute unless said.
 *
 * @param meanPressurePa mean effective pressure of one end: what forward and back stroke give, over the stroke volume
 * @param steamKgPerM3 steam drawn from the chest for each cubic metre of stroke volume, with what condensed on the walls
 * @param terminalPa pressure when the exhaust opens
 */
public record Diagram(double meanPressurePa, double steamKgPerM3, double terminalPa) {}
