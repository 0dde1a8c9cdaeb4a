package org.crosshead.kernel.boiler;

import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.units.Check;

/**
 * Water, steam and metal of a closed boiler of known volume, all at one temperature. What is taken out, put in and heated changes
 * the sums of mass and energy; pressure and water follow from them, so that a boiler lends steam when its pressure falls and wants
 * it back afterwards. Pressures here are absolute.
 *
 * @param volumeM3 of water and steam together
 * @param metalHeatJPerK heat that the metal at boiler temperature takes up
 */
public record ClosedBoiler(double volumeM3, double metalHeatJPerK) {

    private static final int ROUNDS = 40;
    private static final double CLOSE_PA = 1e-8;
    private static final int ROUNDS_FROM_NEAR = 8;
    private static final double SLOPE_OVER_PA = 250;
    private static final SaturatedSteam STEAM = SaturatedSteam.table();

    public ClosedBoiler {
        Check.positive("volumeM3", volumeM3);
        Check.notNegative("metalHeatJPerK", metalHeatJPerK);
    }

    /** What the boiler holds. */
    public record Content(double pressurePa, double waterKg) {}

    /** Sums of what the boiler holds, steam and metal included. */
    public record Sums(double massKg, double energyJ) {

        public Sums plus(double moreKg, double moreJ) {
            return new Sums(massKg + moreKg, energyJ + moreJ);
        }
    }

    public Sums sums(Content content) {
        double massKg = STEAM.massIn(content.pressurePa(), content.waterKg(), volumeM3);
        return new Sums(massKg, energyAt(content.pressurePa(), massKg));
    }

    /**
     * Returns what sums of mass and energy come to; at most {@code pressureMaxPa}, above which the safety valves blow steam off.
     * A boiler whose heat is used up stays at the least pressure of the steam table.
     *
     * @param nearPa a pressure not far from the one sought, such as that of a moment ago; the answer does not depend on it
     */
    public Content content(Sums sums, double pressureMaxPa, double nearPa) {
        double p = fromNear(sums.massKg(), sums.energyJ(), pressureMaxPa, nearPa);
        return Double.isNaN(p) ? between(sums, pressureMaxPa) : new Content(p, waterAt(p, sums.massKg()));
    }

    /** Returns the pressure by chords drawn from a near one, or NaN where they leave the range or do not close in. */
    private double fromNear(double massKg, double energyJ, double pressureMaxPa, double nearPa) {
        double overPa = nearPa - SLOPE_OVER_PA >= SaturatedSteam.PRESSURE_LEAST_PA ? -SLOPE_OVER_PA : SLOPE_OVER_PA;
        double p = nearPa;
        double miss = energyAt(p, massKg) - energyJ;
        double slope = (energyAt(p + overPa, massKg) - energyJ - miss) / overPa;
        for (int i = 0; i < ROUNDS_FROM_NEAR; i++) {
            double next = p - miss / slope;
            if (!(next > SaturatedSteam.PRESSURE_LEAST_PA && next < pressureMaxPa)) {
                return Double.NaN;
            }
            double nextMiss = energyAt(next, massKg) - energyJ;
            if (Math.abs(nextMiss) < CLOSE_PA * slope) {
                return next;
            }
            slope = (nextMiss - miss) / (next - p);
            p = next;
            miss = nextMiss;
        }
        return Double.NaN;
    }

    private Content between(Sums sums, double pressureMaxPa) {
        if (energyAt(pressureMaxPa, sums.massKg()) <= sums.energyJ()) {
            return blownTo(sums, pressureMaxPa, STEAM.steamEnthalpy(pressureMaxPa));
        }
        double low = SaturatedSteam.PRESSURE_LEAST_PA;
        double high = pressureMaxPa;
        double lowMiss = energyAt(low, sums.massKg()) - sums.energyJ();
        double highMiss = energyAt(high, sums.massKg()) - sums.energyJ();
        if (lowMiss >= 0) {
            return new Content(low, waterAt(low, sums.massKg()));
        }
        double p = high;
        for (int i = 0; i < ROUNDS; i++) {
            p = high - highMiss * (high - low) / (highMiss - lowMiss);
            double miss = energyAt(p, sums.massKg()) - sums.energyJ();
            boolean close = Math.abs(miss) * (high - low) < CLOSE_PA * (highMiss - lowMiss);
            if (close) {
                break;
            }
            if (miss > 0) {
                high = p;
                highMiss = miss;
                lowMiss /= 2;
            } else {
                low = p;
                lowMiss = miss;
                highMiss /= 2;
            }
        }
        return new Content(p, waterAt(p, sums.massKg()));
    }

    /**
     * Returns what is left when steam is blown off until a pressure is reached.
     *
     * @param p a pressure below that of the sums
     * @param steamJPerKg heat that each kilogram blown off carries away
     */
    public Content blownTo(Sums sums, double p, double steamJPerKg) {
        double share = STEAM.waterVolume(p) / STEAM.steamVolume(p);
        double metalJ = metalHeatJPerK * STEAM.temperatureK(p);
        double steamIfEmptyKg = volumeM3 / STEAM.steamVolume(p);
        // Mass lost is sums.massKg - water - steam.
        double leftJ = sums.energyJ() - metalJ - sums.massKg() * steamJPerKg;
        double perSteamJ = STEAM.steamEnergy(p) - steamJPerKg;
        double perWaterJ = STEAM.waterEnergy(p) - steamJPerKg;
        double waterKg = (leftJ - steamIfEmptyKg * perSteamJ) / (perWaterJ - share * perSteamJ);
        return new Content(p, Math.max(0, waterKg));
    }

    private double energyAt(double p, double massKg) {
        return STEAM.energyIn(p, massKg, volumeM3, metalHeatJPerK);
    }

    private double waterAt(double p, double massKg) {
        return STEAM.waterIn(p, massKg, volumeM3);
    }
}
