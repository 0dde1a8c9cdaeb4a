package org.crosshead.route;

import org.crosshead.platform.Origin;

/**
 * A curve of the path.
 *
 * @param radius as the source prints it
 */
public record PathCurve(
        double fromM, double toM, double radiusM, double radius, LengthUnit radiusUnit, Origin origin) {}
