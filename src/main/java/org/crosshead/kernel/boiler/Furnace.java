package org.crosshead.kernel.boiler;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * A hand-fired grate whose fire burns as the draught lets it. Coal put on lies on the grate until air has burnt it: a thick fire
 * burns by the air alone, a thin one less, in proportion to what lies there. So a fire answers the blast within seconds and the
 * shovel within minutes.
 *
 * <p>Evaporation goes with the root of the draught (key BOU in docs/sources.md, Q282), and the blast's draught with the square of
 * the steam, so blast alone draws in proportion to the steam; the draughts of blast, blower and chimney add. Efficiency falls
 * evenly with the rate of burning, from about 0.775 at 20 to 0.525 at 120 lb for each square foot of grate and hour (from memory,
 * after Fry). A good rate for good is one hundredweight (BOU Q257). What blower, chimney and a full fire are worth are estimates.
 */
public final class Furnace {

    private static final double GOOD_RATE_LB_PER_SQ_FT_HOUR = 112;
    private static final double EFFICIENCY_AT_REST = 0.825;
    private static final double EFFICIENCY_FALL = 0.0025;
    private static final double HOUR_S = 3_600;

    /** Evaporation for each square foot of heating surface in an hour, lb (BOU Q254). */
    private static final double SURFACE_LB_PER_SQ_FT_HOUR = 12.5;

    /** Air that the blower draws wide open, as a share of what burns the good rate: an estimate. */
    static final double BLOWER_AIR = 0.35;

    /** Air that the chimney draws by itself: an estimate. */
    static final double CHIMNEY_AIR = 0.12;

    /** Time for which a full fire would last at the good rate: an estimate, minutes by common experience. */
    static final double FULL_FIRE_S = 300;

    private final double rateUnitKgPerS;
    private final double heatJPerKg;
    private final double surfaceLimitKgPerS;

    /**
     * Makes a furnace.
     *
     * @param heatingSurfaceM2 of tubes and firebox
     * @param coalHeatJPerKg calorific value
     */
    public Furnace(double grateM2, double heatingSurfaceM2, double coalHeatJPerKg) {
        Check.positive("grateM2", grateM2);
        Check.positive("heatingSurfaceM2", heatingSurfaceM2);
        Check.positive("coalHeatJPerKg", coalHeatJPerKg);
        this.rateUnitKgPerS = Units.kgFromLb(Units.sqFtFromM2(grateM2)) / HOUR_S;
        this.heatJPerKg = coalHeatJPerKg;
        this.surfaceLimitKgPerS =
                Units.kgFromLb(SURFACE_LB_PER_SQ_FT_HOUR * Units.sqFtFromM2(heatingSurfaceM2)) / HOUR_S;
    }

    /** Returns the greatest rate of burning for good, kg/s. */
    public double coalMaxKgPerS() {
        return GOOD_RATE_LB_PER_SQ_FT_HOUR * rateUnitKgPerS;
    }

    /** Returns the steam that the heating surface makes at most, kg/s. */
    public double surfaceLimitKgPerS() {
        return surfaceLimitKgPerS;
    }

    /** Returns the coal of a fire thick enough to burn all that the air can. */
    public double fullKg() {
        return FULL_FIRE_S * coalMaxKgPerS();
    }

    /**
     * Returns the air through the fire as a share of what burns coal at the greatest rate for good, at most 1: front end and tubes
     * pass no more.
     *
     * @param blastShare steam up the chimney as a share of what the boiler makes at most
     * @param blower from 0 (shut) to 1 (wide open)
     * @param dampers from 0 (shut) to 1 (open)
     */
    public static double air(double blastShare, double blower, double dampers) {
        double blowerAir = BLOWER_AIR * blower;
        double draught = blastShare * blastShare + blowerAir * blowerAir + CHIMNEY_AIR * CHIMNEY_AIR;
        return Math.min(1, dampers * Math.sqrt(draught));
    }

    /** Returns the rate at which a fire burns, kg/s. */
    public double burningKgPerS(double fireKg, double air) {
        return air * coalMaxKgPerS() * Math.min(1, fireKg / fullKg());
    }

    /**
     * Returns the coal on the grate after a while of even firing and draught; what is gone of it is burnt. Exact for any time.
     *
     * @param air from {@link #air}
     */
    public double fireAfterKg(double fireKg, double coalKgPerS, double air, double durationS) {
        double most = air * coalMaxKgPerS();
        double full = fullKg();
        if (fireKg >= full) {
            double fallKgPerS = most - coalKgPerS;
            double thickS = fallKgPerS > 0 ? (fireKg - full) / fallKgPerS : Double.POSITIVE_INFINITY;
            return thickS >= durationS
                    ? fireKg - fallKgPerS * durationS
                    : thinAfterKg(full, coalKgPerS, most / full, durationS - thickS);
        }
        if (coalKgPerS > most) {
            double settlesKg = most > 0 ? coalKgPerS * full / most : Double.POSITIVE_INFINITY;
            double thinS = most > 0
                    ? Math.log((settlesKg - fireKg) / (settlesKg - full)) * full / most
                    : (full - fireKg) / coalKgPerS;
            return thinS >= durationS
                    ? thinAfterKg(fireKg, coalKgPerS, most / full, durationS)
                    : full + (coalKgPerS - most) * (durationS - thinS);
        }
        return thinAfterKg(fireKg, coalKgPerS, most / full, durationS);
    }

    private static double thinAfterKg(double fireKg, double coalKgPerS, double sharePerS, double durationS) {
        if (sharePerS <= 0) {
            return fireKg + coalKgPerS * durationS;
        }
        double settlesKg = coalKgPerS / sharePerS;
        return settlesKg + (fireKg - settlesKg) * Math.exp(-sharePerS * durationS);
    }

    /** Returns the heat that reaches water and steam when so much coal burns evenly over a while. */
    public double heatJ(double burntKg, double durationS) {
        return durationS > 0 ? durationS * heatW(burntKg / durationS) : 0;
    }

    /** Returns the heat that reaches water and steam at this rate of burning. */
    public double heatW(double burningKgPerS) {
        double rate = burningKgPerS / rateUnitKgPerS;
        return burningKgPerS * heatJPerKg * (EFFICIENCY_AT_REST - EFFICIENCY_FALL * rate);
    }

    /** Returns the rate of burning that gives a heat, at most the greatest for good, kg/s. */
    public double coalKgPerS(double heatW) {
        double perUnitW = rateUnitKgPerS * heatJPerKg;
        double root = EFFICIENCY_AT_REST * EFFICIENCY_AT_REST - 4 * EFFICIENCY_FALL * heatW / perUnitW;
        if (root <= 0) {
            return coalMaxKgPerS();
        }
        double rate = (EFFICIENCY_AT_REST - Math.sqrt(root)) / (2 * EFFICIENCY_FALL);
        return Math.min(coalMaxKgPerS(), rate * rateUnitKgPerS);
    }
}
