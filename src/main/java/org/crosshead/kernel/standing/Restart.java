package org.crosshead.kernel.standing;

import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.RunningResistance;
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

    /** How a standing train can be got going, the easiest first. */
    public enum Way {
        /** In any position of the cranks, couplings stretched. */
        STARTS,
        /** After setting back: onto slack, or to another position of the cranks. */
        SETS_BACK,
        /** So, and with sand. */
        WITH_SAND,
        DOES_NOT_START
    }

    /**
     * Returns the easiest way that the forces allow.
     *
     * @param solid pull in the worst position of the cranks against the whole train at once
     * @param setBack mean pull against what is left after setting back
     * @param sanded the same on sanded rail
     */
    public static Way way(Balance solid, Balance setBack, Balance sanded) {
        if (solid.starts()) {
            return Way.STARTS;
        }
        if (setBack.starts()) {
            return Way.SETS_BACK;
        }
        return sanded.starts() ? Way.WITH_SAND : Way.DOES_NOT_START;
    }

    /**
     * Returns the resistance of vehicles that are picked up one after another from slack, at the last of them: it starts while the others
     * already move. Balance of forces; the shock of the couplings is left out.
     *
     * @param vehicles of all vehicles together
     * @param count how many, 1 or more
     */
    public static RunningResistance fromSlack(RunningResistance vehicles, int count) {
        Check.that(count >= 1, "count must be at least 1, but was " + count);
        double restN = vehicles.startingN() - vehicles.constantN();
        return new RunningResistance(
                vehicles.constantN(),
                vehicles.linearNPerMps(),
                vehicles.quadraticNPerMps2(),
                vehicles.constantN() + Math.max(0, restN) / count);
    }

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
