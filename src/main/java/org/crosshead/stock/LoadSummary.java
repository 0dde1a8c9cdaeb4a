package org.crosshead.stock;

import java.util.OptionalInt;

/**
 * A formation's totals, engines not counted.
 *
 * @param loadTons weight of the vehicles with their load, long tons
 * @param tareTons weight of the vehicles empty, long tons
 * @param axles empty where those of any vehicle are unknown
 * @param brakedShare share of the weight on vehicles whose brake works from the train pipe, from 0 to 1
 */
public record LoadSummary(
        double loadTons, double tareTons, OptionalInt axles, double lengthFt, double brakedShare, int vehicles) {}
