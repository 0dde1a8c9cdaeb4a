package org.crosshead.route;

import org.crosshead.platform.Origin;

/**
 * A length of one gradient as run.
 *
 * @param gradient rise over run, positive when climbing in the direction of running
 * @param value as the source prints it, with the sign as run; 0 where level
 */
public record PathGradient(
        double fromM, double toM, double gradient, GradientNotation notation, double value, Origin origin) {}
