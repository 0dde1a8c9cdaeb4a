package org.crosshead.competence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;

/**
 * Whether a stretch of road is so easy, and so short or slow, that no conductor driver is asked over it where the policy takes that
 * exemption: 49 CFR 240.231(c), from memory. Of its four cases only those two are looked at that follow from a route's own data, a stretch
 * of a mile at most and a limit of 20 mph for everything; that a track is no main track, or a speed by sight, is never taken for granted.
 */
final class EasyGrades {

    /** The mean gradient over three miles on end is below this, up and down. */
    private static final double GRADIENT = 0.01;

    private static final double WINDOW_M = Units.metresFromMiles(3);
    private static final double SHORT_M = Units.metresFromMiles(1);
    private static final double SLOW_MPS = Units.mpsFromMph(20);
    private static final double CLOSE = 1e-9;
    private static final double CLOSE_M = 1e-3;

    private EasyGrades() {}

    /**
     * Says whether the exemption covers a stretch; never where its figures are estimates that nobody has accepted.
     *
     * @param lowMeasure by the route's measure, below {@code highMeasure}
     */
    static boolean cover(RouteDraft route, Direction direction, double lowMeasure, double highMeasure) {
        boolean known = !route.hasEstimates() || route.estimatesAccepted();
        double lengthM = route.measureUnit().metres(highMeasure - lowMeasure);
        return known
                && lengthM > 0
                && steepestMean(route, lowMeasure, highMeasure) < GRADIENT - CLOSE
                && (lengthM <= SHORT_M + CLOSE_M || isSlow(route, direction, lowMeasure, highMeasure));
    }

    /**
     * Returns the greatest mean gradient, up or down, over any three miles on end of a stretch, or over all of a shorter one; rise over run.
     * The mean over a window that moves is linear between the places where either of its ends passes a change of gradient.
     */
    static double steepestMean(RouteDraft route, double lowMeasure, double highMeasure) {
        MeasureUnit unit = route.measureUnit();
        double lengthM = unit.metres(highMeasure - lowMeasure);
        double windowM = Math.min(WINDOW_M, lengthM);
        List<Double> begins = new ArrayList<>(List.of(0.0, lengthM - windowM));
        for (GradientLength length : route.gradients()) {
            double changeM = unit.metres(length.fromMeasure() - lowMeasure);
            begins.add(changeM);
            begins.add(changeM - windowM);
        }
        return begins.stream()
                .mapToDouble(Double::doubleValue)
                .filter(atM -> atM >= 0 && atM <= lengthM - windowM)
                .map(atM -> Math.abs(riseM(route, lowMeasure, atM, atM + windowM)) / windowM)
                .max()
                .orElseThrow();
    }

    /** Returns the rise between two places, in metres from a measure, as the measure rises; not a number where the gradient is not known. */
    private static double riseM(RouteDraft route, double lowMeasure, double fromM, double toM) {
        MeasureUnit unit = route.measureUnit();
        double riseM = 0;
        double knownM = 0;
        for (GradientLength length : route.gradients()) {
            double beginM = Math.max(fromM, unit.metres(length.fromMeasure() - lowMeasure));
            double endM = Math.min(toM, unit.metres(length.toMeasure() - lowMeasure));
            if (endM > beginM) {
                riseM += length.gradient() * (endM - beginM);
                knownM += endM - beginM;
            }
        }
        return knownM < toM - fromM - CLOSE_M ? Double.NaN : riseM;
    }

    /** Says whether limits of 20 mph or less, for every kind of train, cover all of a stretch. */
    private static boolean isSlow(RouteDraft route, Direction direction, double lowMeasure, double highMeasure) {
        double slowTo = lowMeasure;
        for (LimitLength limit : route.limits().stream()
                .filter(one -> one.trainKind() == null && !one.tenderFirst())
                .filter(one -> one.scope().covers(direction))
                .filter(one -> one.limitUnit().mps(one.limit()) <= SLOW_MPS + CLOSE)
                .sorted(Comparator.comparingDouble(LimitLength::fromMeasure))
                .toList()) {
            if (limit.fromMeasure() <= slowTo + CLOSE) {
                slowTo = Math.max(slowTo, limit.toMeasure());
            }
        }
        return slowTo >= highMeasure - CLOSE;
    }
}
