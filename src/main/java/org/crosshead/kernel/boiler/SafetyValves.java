package org.crosshead.kernel.boiler;

import org.crosshead.kernel.steam.Orifice;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Safety valves: they lift at the working pressure and let steam out until it has fallen by the blow-down. Pressures are absolute.
 *
 * @param liftPa pressure at which they lift
 * @param areaM2 through which they let steam out
 */
public record SafetyValves(double liftPa, double areaM2) {

    /** By how much the pressure falls before they shut: an estimate, two to three pounds by common experience. */
    static final double BLOW_DOWN_PA = Units.paFromPsi(3);

    /** What they discharge, as a share of the most that the boiler makes: an estimate. The rule is that pressure can't rise on. */
    static final double CAPACITY_SHARE = 1.2;

    public SafetyValves {
        Check.within("liftPa", liftPa, SaturatedSteam.PRESSURE_LEAST_PA, SaturatedSteam.PRESSURE_GREATEST_PA);
        Check.positive("areaM2", areaM2);
    }

    /**
     * Returns valves that pass a fifth more than the boiler can make at its working pressure.
     *
     * @param evaporationMaxKgPerS greatest rate of making steam
     */
    public static SafetyValves forBoiler(double liftPa, double evaporationMaxKgPerS) {
        return new SafetyValves(liftPa, CAPACITY_SHARE * evaporationMaxKgPerS / flux(liftPa));
    }

    /** Returns the pressure at which they shut again. */
    public double shutPa() {
        return liftPa - BLOW_DOWN_PA;
    }

    /** Returns what open valves let out, kg/s: Napier's rule (key BW in docs/sources.md). */
    public double dischargeKgPerS(double pressurePa) {
        return areaM2 * flux(pressurePa);
    }

    private static double flux(double pressurePa) {
        return Orifice.flux(pressurePa, SaturatedSteam.table().steamVolume(pressurePa), SaturatedSteam.ATMOSPHERE_PA);
    }
}
