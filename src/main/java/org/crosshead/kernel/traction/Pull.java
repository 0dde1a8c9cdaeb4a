package org.crosshead.kernel.traction;

/**
 * Pull at the rim of the driving wheels at one moment.
 *
 * @param forceN what the engine gives now: the lesser of cylinder force and rail force
 * @param cylinderForceN what the cylinders give at these handles
 * @param boilerForceN what the boiler could keep up for good at this speed and cutoff (infinite at rest)
 * @param railForceN what the rail holds
 * @param steamKgPerS steam used for {@code forceN}
 * @param limitedBy the least of the three
 */
public record Pull(
        double forceN,
        double cylinderForceN,
        double boilerForceN,
        double railForceN,
        double steamKgPerS,
        LimitedBy limitedBy) {}
