package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * Resistance of a train or vehicle on straight level track: {@code constantN + linearNPerMps v + quadraticNPerMps2 v v}, and at
 * rest {@code startingN} instead.
 *
 * @param startingN force to be overcome before it moves, at least constantN
 */
public record RunningResistance(double constantN, double linearNPerMps, double quadraticNPerMps2, double startingN) {

    public static final RunningResistance NONE = new RunningResistance(0, 0, 0, 0);

    public RunningResistance {
        Check.notNegative("constantN", constantN);
        Check.notNegative("linearNPerMps", linearNPerMps);
        Check.notNegative("quadraticNPerMps2", quadraticNPerMps2);
        Check.notNegative("startingN", startingN);
    }

    public double forceN(double speedMps) {
        return constantN + speedMps * (linearNPerMps + speedMps * quadraticNPerMps2);
    }

    public RunningResistance plus(RunningResistance other) {
        return new RunningResistance(
                constantN + other.constantN,
                linearNPerMps + other.linearNPerMps,
                quadraticNPerMps2 + other.quadraticNPerMps2,
                startingN + other.startingN);
    }

    public RunningResistance times(double count) {
        return new RunningResistance(
                constantN * count, linearNPerMps * count, quadraticNPerMps2 * count, startingN * count);
    }
}
