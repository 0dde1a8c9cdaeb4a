package org.crosshead.kernel.standing;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Whether brakes hold a standing train. Running and starting resistance are not credited: a train once moving has little of it.
 *
 * <p>Source: balance of forces with a factor; the factor 1.25 is the lower of 1.25 to 1.5 from memory.
 */
public final class Holding {

    /** Force wanted for each newton of gravity: from memory. */
    public static final double SAFETY = 1.25;

    private Holding() {}

    /**
     * What the train pulls and what the brakes hold.
     *
     * @param gravityN along the rail, 0 or more, whichever way it pulls
     * @param neededN gravity times the safety factor
     * @param brakeN force of the brakes at rest
     */
    public record Balance(double gravityN, double neededN, double brakeN) {

        public boolean holds() {
            return brakeN >= neededN;
        }

        /** Returns what the brakes hold beyond the need; negative where they fall short. */
        public double spareN() {
            return brakeN - neededN;
        }
    }

    /**
     * Returns the balance of a train on a gradient.
     *
     * @param gradient rise over run, either sign, from -0.2 to 0.2
     * @param safety factor on gravity, from 1 to 5
     */
    public static Balance balance(double massKg, double gradient, double brakeN, double safety) {
        Check.positive("massKg", massKg);
        Check.within("gradient", gradient, -0.2, 0.2);
        Check.notNegative("brakeN", brakeN);
        Check.within("safety", safety, 1, 5);
        double gravityN = massKg * Units.GRAVITY_MPS2 * Math.abs(Units.sineOfGradient(gradient));
        return new Balance(gravityN, gravityN * safety, brakeN);
    }

    /**
     * Returns how many hand brakes of equal force hold the train; always rounded up. Advice for comparison only: railways' own rules
     * differ fivefold on the same gradient, [HAND-BRAKE-RULES], and the rule book governs.
     */
    public static int handBrakes(double massKg, double gradient, double eachN, double safety) {
        Check.positive("eachN", eachN);
        double count = balance(massKg, gradient, 0, safety).neededN() / eachN;
        Check.that(
                count < 100_000, "eachN must be large enough to hold with fewer than 100000 brakes, but was " + eachN);
        return (int) Math.ceil(count);
    }
}
