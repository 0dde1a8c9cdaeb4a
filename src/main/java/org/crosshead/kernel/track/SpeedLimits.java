package org.crosshead.kernel.track;

import java.util.List;
import java.util.TreeSet;
import org.crosshead.kernel.units.Check;

/** Limits of speed along a path; where several cover a place the least counts, and where none does the greatest speed of the road. */
public final class SpeedLimits {

    private final PiecewiseConstant limits;
    private final double greatestMps;
    private final List<Length> lengths;

    private SpeedLimits(PiecewiseConstant limits, double greatestMps, List<Length> lengths) {
        this.greatestMps = greatestMps;
        this.limits = limits;
        this.lengths = lengths;
    }

    /**
     * A limit over a length of the path.
     *
     * @param limitMps greater than 0
     */
    public record Length(double fromM, double toM, double limitMps) {

        public Length {
            Check.that(toM > fromM, "toM must be greater than fromM");
            Check.positive("limitMps", limitMps);
        }
    }

    /**
     * Returns limits over a path from 0 to its length.
     *
     * @param greatestMps where no limit is laid down
     */
    public static SpeedLimits of(double lengthM, double greatestMps, List<Length> lengths) {
        Check.positive("lengthM", lengthM);
        Check.positive("greatestMps", greatestMps);
        TreeSet<Double> ends = new TreeSet<>(List.of(0.0, lengthM));
        for (Length length : lengths) {
            ends.add(Math.min(lengthM, Math.max(0, length.fromM())));
            ends.add(Math.min(lengthM, Math.max(0, length.toM())));
        }
        double[] boundariesM = ends.stream().mapToDouble(Double::doubleValue).toArray();
        double[] values = new double[boundariesM.length - 1];
        for (int i = 0; i < values.length; i++) {
            values[i] = least(lengths, (boundariesM[i] + boundariesM[i + 1]) / 2, greatestMps);
        }
        return new SpeedLimits(new PiecewiseConstant(boundariesM, values), greatestMps, List.copyOf(lengths));
    }

    public List<Length> lengths() {
        return lengths;
    }

    /** Returns the speed where no limit is laid down. */
    public double greatestMps() {
        return greatestMps;
    }

    public double limitAt(double positionM) {
        return limits.at(positionM);
    }

    /** Returns the least limit between two places, as for a train whose tail and head are there. */
    public double lowestMps(double fromM, double toM) {
        return limits.least(fromM, toM);
    }

    private static double least(List<Length> lengths, double atM, double greatestMps) {
        return lengths.stream()
                .filter(length -> atM > length.fromM() && atM < length.toM())
                .mapToDouble(Length::limitMps)
                .reduce(greatestMps, Math::min);
    }
}
