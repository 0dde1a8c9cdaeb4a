package org.crosshead.kernel.traction;

import org.crosshead.kernel.boiler.Furnace;

/** One engine as its crew works it. Immutable: the state is handed in and out. */
public interface Engine {

    /** Returns the figures that the engine was built from. */
    LocomotiveParameters parameters();

    /**
     * Returns the pull at the rim.
     *
     * @param speedMps from 0 to half as much again as the greatest speed of the class
     */
    Pull pull(EngineState state, Controls controls, double speedMps, RailState rail);

    /** Returns a pull as it is with the cylinder cocks open: less of it, and the steam that blows through them. */
    Pull cocksOpen(Pull pull, EngineState state, Controls controls);

    /**
     * Returns the state after steam was taken, coal put on and water fed for a while. Safety valves lift and shut by themselves.
     *
     * @param steamKgPerS taken by the cylinders and sent up the chimney; what auxiliaries take is added inside
     * @param durationS from 0 to 60
     */
    EngineState after(EngineState state, double steamKgPerS, Firing firing, double durationS);

    /**
     * Returns where the heat went over a while that led from one state to another by {@link #after}. Its parts balance:
     * {@code fired + fed - drawn - blown = stored}.
     */
    HeatAccount heat(EngineState before, EngineState after, Work work);

    /**
     * What was asked of the boiler over a while.
     *
     * @param steamKgPerS taken by the cylinders and auxiliaries
     * @param coalKgPerS put on the fire
     * @param feedKgPerS fed into the boiler
     * @param steaming whether the cylinders took steam, whose exhaust heats the feed where the engine is so fitted
     * @param durationS from 0 to 60
     */
    record Work(double steamKgPerS, double coalKgPerS, double feedKgPerS, boolean steaming, double durationS) {}

    /** Returns the fire and its grate. */
    Furnace furnace();

    /**
     * Returns the air through the fire, as {@link Furnace#air}.
     *
     * @param steamKgPerS taken by the cylinders and sent up the chimney
     */
    double air(double steamKgPerS, double blower, double dampers);

    /** Returns the mass on the coupled wheels with this much left in tank and bunker. */
    double adhesiveKg(EngineState state);

    /** Returns the steam that brake, blower, leaks and heating take, kg/s. */
    double auxiliaryKgPerS(double blower);

    /** Returns the most water that can be fed at this pressure, kg/s. */
    double feedMaxKgPerS(double pressurePa);

    /** Returns the greatest rate at which this boiler and grate can make steam at this pressure, kg/s. */
    double evaporationMaxKgPerS(double pressurePa);

    /**
     * Returns the steam that could be made out of the heat that a boiler holds above that of the water it is fed with, kg. Feeding does
     * not change it: cold water brings nothing and takes nothing.
     */
    double reserveKg(EngineState state);

    /** Returns the coal rate that makes this much steam for good at this pressure, at most the grate's greatest rate, kg/s. */
    double coalForSteamKgPerS(double steamKgPerS, double pressurePa);
}
