package org.crosshead.kernel.motion;

import org.crosshead.kernel.units.Check;

/**
 * What an engine carries beside its boiler.
 *
 * @param tankWaterKg water in tank or tender at the start
 * @param tankFullKg what tank or tender holds
 * @param coalKg coal at the start
 */
public record Supply(double tankWaterKg, double tankFullKg, double coalKg) {

    public Supply {
        Check.notNegative("tankFullKg", tankFullKg);
        Check.within("tankWaterKg", tankWaterKg, 0, tankFullKg);
        Check.notNegative("coalKg", coalKg);
    }
}
