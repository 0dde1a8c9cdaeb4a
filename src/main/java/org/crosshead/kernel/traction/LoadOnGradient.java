package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Load that a given pull keeps moving on a gradient: {@code P/(r + i) - W}.
 *
 * <p>Source: [PRR-1848] prints loads that this form repeats to 0.1 ton with three constants worked out of them; that checks the routine, not
 * nature. One pull and one resistance at every speed; curves are left out.
 *
 * @param pullN at the rim
 * @param resistanceNPerKg of engine and load alike, on straight level track
 * @param engineMassKg engine and tender
 */
public record LoadOnGradient(double pullN, double resistanceNPerKg, double engineMassKg) {

    public LoadOnGradient {
        Check.positive("pullN", pullN);
        Check.positive("resistanceNPerKg", resistanceNPerKg);
        Check.notNegative("engineMassKg", engineMassKg);
    }

    /**
     * Returns the load behind the engine; 0 where it only just or not at all moves itself.
     *
     * @param gradient rise over run, from 0 to 0.2
     */
    public double loadKg(double gradient) {
        Check.within("gradient", gradient, 0, 0.2);
        double perKgN = resistanceNPerKg + Units.GRAVITY_MPS2 * Units.sineOfGradient(gradient);
        return Math.max(0, pullN / perKgN - engineMassKg);
    }

    /** Returns the steepest gradient on which this load is kept moving, by halving to 1e-9; 0 if not even on the level. */
    public double gradientFor(double loadKg) {
        Check.notNegative("loadKg", loadKg);
        double low = 0;
        double high = 0.2;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (loadKg(middle) >= loadKg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
