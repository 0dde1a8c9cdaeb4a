package org.crosshead.route;

import java.util.Optional;

/**
 * A leg at its place in the path; the one place where the measures of routes become metres of a path.
 *
 * @param number from 1
 * @param startM where the leg begins in the path
 */
record PathSpan(PathLeg leg, int number, double startM) {

    /** A stretch shorter than this, left by rounding, is none. */
    private static final double LENGTH_LEAST_M = 1e-3;

    /** A stretch of the path. */
    record Stretch(double fromM, double toM) {}

    double endM() {
        return pathM(leg.toMeasure());
    }

    boolean isRising() {
        return leg.direction() == Direction.RISING;
    }

    MeasureUnit unit() {
        return leg.route().content().measureUnit();
    }

    boolean holds(double measure) {
        return new Extent(lowest(), highest(), unit()).holds(measure);
    }

    double pathM(double measure) {
        double along = isRising() ? measure - leg.fromMeasure() : leg.fromMeasure() - measure;
        return startM + unit().metres(along);
    }

    double measureAt(double pathM) {
        double along = unit().fromMetres(pathM - startM);
        return isRising() ? leg.fromMeasure() + along : leg.fromMeasure() - along;
    }

    /** Returns the part of a length of the route that lies on the leg, as run. */
    Optional<Stretch> clip(double fromMeasure, double toMeasure) {
        double low = Math.max(fromMeasure, lowest());
        double high = Math.min(toMeasure, highest());
        Stretch stretch = isRising() ? new Stretch(pathM(low), pathM(high)) : new Stretch(pathM(high), pathM(low));
        return stretch.toM() - stretch.fromM() >= LENGTH_LEAST_M ? Optional.of(stretch) : Optional.empty();
    }

    private double lowest() {
        return Math.min(leg.fromMeasure(), leg.toMeasure());
    }

    private double highest() {
        return Math.max(leg.fromMeasure(), leg.toMeasure());
    }
}
