package org.crosshead.kernel.motion;

/**
 * A run at one place. Within a step of the run the acceleration is constant, so that speed and time between samples follow
 * from it; pressures and masses are interpolated evenly.
 *
 * @param sample the sample at or before the place
 * @param share how far from that sample to the next, from 0 to 1
 */
public record RunPoint(int sample, double share, double positionM, double timeS, double speedMps) {}
