package org.crosshead.stock;

import org.crosshead.platform.Origin;
import org.jspecify.annotations.Nullable;

/**
 * One stored figure of a class, engine or vehicle, in the unit its source prints.
 *
 * @param key key of the figure in its catalogue, for example {@code boiler_pressure}
 * @param value null while unknown
 * @param unit unit as printed, one of those the catalogue allows
 * @param note source, or the rule of an estimate
 * @param accepted for an estimate: whether a person has accepted it; always true otherwise
 */
public record SourcedFigure(
        String key, @Nullable Double value, String unit, Origin origin, String note, boolean accepted) {}
