package org.crosshead.kernel.standing;

import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Whether a train can be started again where it stands: pull against starting resistance, gravity and curve.
 *
 * <p>Source: balance of forces. The whole train is taken to start at once, on the one curve given.
 */
public final class Restart {

    private Restart() {}

    /**
     * Forces at the moment of starting; gravity is negative on a fall.
     *
     * @param pullN at the rim, the least over a turn of the wheels if the caller knows it
     */
    public record Balance(double pullN, double startingN, double gravityN, double curveN) {

        public double neededN() {
            return startingN + gravityN + curveN;
        }

        /** Returns pull less need; negative where the train can't be started. */
        public double spareN() {
            return pullN - neededN();
        }

        public boolean starts() {
            return spareN() > 0;
        }
    }

    /**
     * Returns the balance.
     *
     * @param gradient mean over the train, rise over run, positive when it must be climbed, from -0.2 to 0.2
     * @param radiusM of the curve under the train; infinite for straight track
     * @param pullN of all engines, 0 or more
     */
    public static Balance balance(TrainBody body, double gradient, double radiusM, double pullN) {
        Check.within("gradient", gradient, -0.2, 0.2);
        return under(body, Units.sineOfGradient(gradient), CurveResistance.perMassN(radiusM), pullN);
    }

    /**
     * Returns the balance from means under the train.
     *
     * @param rise mean rise for each metre of rail, positive when it must be climbed
     * @param curveNPerKg mean resistance of the curves, N/kg
     * @param pullN of all engines, 0 or more
     */
    public static Balance under(TrainBody body, double rise, double curveNPerKg, double pullN) {
        Check.notNegative("pullN", pullN);
        return new Balance(
                pullN,
                body.resistance().startingN(),
                body.massKg() * Units.GRAVITY_MPS2 * rise,
                body.massKg() * curveNPerKg);
    }
}
