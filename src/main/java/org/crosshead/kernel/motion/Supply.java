package org.crosshead.kernel.motion;

import org.crosshead.kernel.units.Check;

/**
 * What an engine carries beside its boiler.
 *
 * @param tankWaterKg water in tank or tender at the start
 * @param tankFullKg what tank or tender holds
 * @param coalKg coal at the start
 * @param coalFullKg what the bunker holds
 */
public record Supply(double tankWaterKg, double tankFullKg, double coalKg, double coalFullKg) {

    public Supply {
        Check.notNegative("tankFullKg", tankFullKg);
        Check.within("tankWaterKg", tankWaterKg, 0, tankFullKg);
        Check.notNegative("coalKg", coalKg);
        Check.that(coalFullKg >= coalKg, "coalFullKg must not be below coalKg");
    }

    /** With the bunker full. */
    public Supply(double tankWaterKg, double tankFullKg, double coalKg) {
        this(tankWaterKg, tankFullKg, coalKg, coalKg);
    }

    /** Returns what is left of both, as a share of both full; 0 if they hold nothing. */
    double share(double tankWaterLeftKg, double coalBurntKg) {
        double fullKg = tankFullKg + coalFullKg;
        double leftKg = tankWaterLeftKg + Math.max(0, coalKg - coalBurntKg);
        return fullKg > 0 ? Math.min(1, leftKg / fullKg) : 0;
    }
}
