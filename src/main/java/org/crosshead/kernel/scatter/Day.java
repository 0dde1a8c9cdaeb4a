package org.crosshead.kernel.scatter;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One day drawn from a spread. The same number gives the same day.
 *
 * @param coalHeat heat of the coal, of what is counted with
 * @param adhesion of the rail, likewise
 * @param resistance of the train, likewise
 * @param load of the hauled mass, likewise
 * @param windMps wind against the train, negative from behind
 * @param pressurePa by which the gauge is read too high
 * @param glassShare by which the glass is read too high
 * @param lagsS by which each setting is made late, negative for early
 */
record Day(
        double coalHeat,
        double adhesion,
        double resistance,
        double load,
        double windMps,
        double pressurePa,
        double glassShare,
        List<Double> lagsS) {

    /** Nothing is drawn farther out than so many standard deviations. */
    private static final double FARTHEST = 3;

    Day {
        lagsS = List.copyOf(lagsS);
    }

    static Day drawn(Spread spread, long number, int settings) {
        SplittableRandom random = new SplittableRandom(number);
        double coalHeat = 1 + spread.coalHeat() * normal(random);
        double adhesion = 1 + spread.adhesion() * normal(random);
        double resistance = 1 + spread.resistance() * normal(random);
        double load = 1 + spread.load() * normal(random);
        double windMps = spread.windMps() * normal(random);
        double pressurePa = spread.pressurePa() * normal(random);
        double glassShare = spread.glassShare() * normal(random);
        List<Double> lagsS = new ArrayList<>();
        for (int i = 0; i < settings; i++) {
            lagsS.add(spread.actionS() * normal(random));
        }
        return new Day(coalHeat, adhesion, resistance, load, windMps, pressurePa, glassShare, lagsS);
    }

    /** By Box and Muller (1958, from memory). */
    static double normal(SplittableRandom random) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        double drawn = radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
        return Math.max(-FARTHEST, Math.min(FARTHEST, drawn));
    }
}
