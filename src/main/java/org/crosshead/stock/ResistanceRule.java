package org.crosshead.stock;

import java.util.OptionalInt;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.resistance.ResistanceFormulas;
import org.crosshead.kernel.resistance.RunningResistance;

/** The formula by which a vehicle resists on straight level track: chosen by who works out a run, not stored. */
@FunctionalInterface
public interface ResistanceRule {

    /** The formulas chosen for this project, with the axles that a vehicle usually has where they are not known. */
    ResistanceRule USUAL = (family, massKg, axles) ->
            ResistanceFormulas.of(family, massKg, axles.orElseGet(() -> ResistanceFormulas.usualAxles(family, massKg)));

    /**
     * Returns the resistance of one vehicle.
     *
     * @param massKg with its load
     * @param axles where known
     */
    RunningResistance of(ResistanceFamily family, double massKg, OptionalInt axles);
}
