package org.crosshead.kernel.boiler;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Water over the crown of a firebox that lies behind the middle of the boiler. The surface of the water stays square to what a
 * plumb line shows, so that on a slope, and while speed changes, it leans against the boiler: climbing chimney first or gaining
 * speed covers the crown deeper, going over a summit or braking lays it bare. Swelling of the water under a wide regulator is left
 * out: it shows more in the glass than there is.
 *
 * @param halfGlassM depth over the crown on the level with the glass half full
 * @param rangeM height from the least level at which the engine may be worked to the top of the glass
 * @param leastKg water at that least level
 * @param fullKg water at the top of the glass
 * @param distanceM from the middle of the water's surface to the end of the crown furthest from it
 */
public record CrownWater(double halfGlassM, double rangeM, double leastKg, double fullKg, double distanceM) {

    public CrownWater {
        Check.positive("halfGlassM", halfGlassM);
        Check.positive("rangeM", rangeM);
        Check.positive("leastKg", leastKg);
        Check.that(fullKg > leastKg, "fullKg must be more than leastKg");
        Check.notNegative("distanceM", distanceM);
    }

    /**
     * Returns the least depth over the crown, negative where it is bare.
     *
     * @param gradient of the rail as run, positive when climbing
     * @param accelerationMps2 negative when slowing
     * @param chimneyFirst false for an engine that runs tender or bunker first
     */
    public double depthM(double waterKg, double gradient, double accelerationMps2, boolean chimneyFirst) {
        return levelM(waterKg) + (chimneyFirst ? 1 : -1) * distanceM * lean(gradient, accelerationMps2);
    }

    /** Returns the depth over the crown with the engine at rest on the level. */
    public double levelM(double waterKg) {
        return halfGlassM + rangeM * (waterKg - (leastKg + fullKg) / 2) / (fullKg - leastKg);
    }

    /** Returns by how much the surface leans backwards in the direction of running, as a slope. */
    public static double lean(double gradient, double accelerationMps2) {
        return gradient + accelerationMps2 / Units.GRAVITY_MPS2;
    }
}
