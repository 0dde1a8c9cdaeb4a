package org.crosshead.kernel.units;

/**
 * Every unit conversion of the project. Names read right to left: {@code mpsFromMph(limitMph)}.
 *
 * <p>Exact by definition: yard 0.9144 m and pound 0.45359237 kg (international yard and pound agreement, 1959), standard
 * gravity 9.80665 m/s2 (3rd CGPM, 1901), imperial gallon 4.54609 litres (UK Weights and Measures Act 1985). All recalled,
 * not read; the chain, mile and gradient conversions are checked against docs/sources.md [WORKED] and [LICKEY].
 */
public final class Units {

    /** Standard gravity, m/s2. */
    public static final double GRAVITY_MPS2 = 9.80665;

    private static final double METRES_PER_INCH = 0.0254;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double METRES_PER_YARD = 0.9144;
    private static final double METRES_PER_CHAIN = 20.1168;
    private static final double METRES_PER_MILE = 1609.344;
    private static final double KG_PER_LB = 0.45359237;
    private static final double KG_PER_LONG_TON = 2240 * KG_PER_LB;
    private static final double KG_PER_CWT = 112 * KG_PER_LB;
    private static final double N_PER_LBF = KG_PER_LB * GRAVITY_MPS2;
    private static final double PA_PER_PSI = N_PER_LBF / (METRES_PER_INCH * METRES_PER_INCH);
    private static final double PA_PER_INHG = 3386.39;
    private static final double PA_PER_BAR = 1e5;
    private static final double LITRES_PER_GALLON = 4.54609;
    private static final double W_PER_HP = 550 * METRES_PER_FOOT * N_PER_LBF;
    private static final double J_PER_BTU = 1055.05585262;
    private static final double M2_PER_SQFT = METRES_PER_FOOT * METRES_PER_FOOT;

    private Units() {}

    public static double metresFromInches(double inches) {
        return inches * METRES_PER_INCH;
    }

    public static double inchesFromMetres(double metres) {
        return metres / METRES_PER_INCH;
    }

    public static double metresFromFeet(double feet) {
        return feet * METRES_PER_FOOT;
    }

    public static double feetFromMetres(double metres) {
        return metres / METRES_PER_FOOT;
    }

    public static double metresFromYards(double yards) {
        return yards * METRES_PER_YARD;
    }

    public static double yardsFromMetres(double metres) {
        return metres / METRES_PER_YARD;
    }

    public static double metresFromChains(double chains) {
        return chains * METRES_PER_CHAIN;
    }

    public static double chainsFromMetres(double metres) {
        return metres / METRES_PER_CHAIN;
    }

    public static double metresFromMiles(double miles) {
        return miles * METRES_PER_MILE;
    }

    public static double milesFromMetres(double metres) {
        return metres / METRES_PER_MILE;
    }

    public static double metresFromKm(double km) {
        return km * 1000;
    }

    public static double kmFromMetres(double metres) {
        return metres / 1000;
    }

    public static double mpsFromMph(double mph) {
        return mph * METRES_PER_MILE / 3600;
    }

    public static double mphFromMps(double mps) {
        return mps * 3600 / METRES_PER_MILE;
    }

    public static double mpsFromKmh(double kmh) {
        return kmh / 3.6;
    }

    public static double kmhFromMps(double mps) {
        return mps * 3.6;
    }

    public static double mpsFromFeetPerMinute(double feetPerMinute) {
        return feetPerMinute * METRES_PER_FOOT / 60;
    }

    public static double feetPerMinuteFromMps(double mps) {
        return mps * 60 / METRES_PER_FOOT;
    }

    public static double kgFromLb(double lb) {
        return lb * KG_PER_LB;
    }

    public static double lbFromKg(double kg) {
        return kg / KG_PER_LB;
    }

    public static double kgFromCwt(double cwt) {
        return cwt * KG_PER_CWT;
    }

    public static double kgFromLongTons(double longTons) {
        return longTons * KG_PER_LONG_TON;
    }

    public static double longTonsFromKg(double kg) {
        return kg / KG_PER_LONG_TON;
    }

    public static double kgFromTonnes(double tonnes) {
        return tonnes * 1000;
    }

    public static double newtonsFromLbf(double lbf) {
        return lbf * N_PER_LBF;
    }

    public static double lbfFromNewtons(double newtons) {
        return newtons / N_PER_LBF;
    }

    public static double newtonsFromLongTonsForce(double longTonsForce) {
        return longTonsForce * 2240 * N_PER_LBF;
    }

    public static double paFromPsi(double psi) {
        return psi * PA_PER_PSI;
    }

    public static double psiFromPa(double pa) {
        return pa / PA_PER_PSI;
    }

    public static double paFromBar(double bar) {
        return bar * PA_PER_BAR;
    }

    public static double barFromPa(double pa) {
        return pa / PA_PER_BAR;
    }

    public static double paFromMpa(double mpa) {
        return mpa * 1e6;
    }

    /** Inches of mercury: 1 inHg = 3386.39 Pa (recalled). */
    public static double paFromInHg(double inHg) {
        return inHg * PA_PER_INHG;
    }

    /** Mass of cold water, taken as 1 kg a litre. */
    public static double kgFromGallons(double imperialGallons) {
        return imperialGallons * LITRES_PER_GALLON;
    }

    /** Imperial gallons of cold water, taken as 1 kg a litre. */
    public static double gallonsFromKg(double kg) {
        return kg / LITRES_PER_GALLON;
    }

    public static double wattsFromHp(double hp) {
        return hp * W_PER_HP;
    }

    public static double hpFromWatts(double watts) {
        return watts / W_PER_HP;
    }

    public static double m2FromSqFt(double sqFt) {
        return sqFt * M2_PER_SQFT;
    }

    public static double sqFtFromM2(double m2) {
        return m2 / M2_PER_SQFT;
    }

    public static double jPerKgFromBtuPerLb(double btuPerLb) {
        return btuPerLb * J_PER_BTU / KG_PER_LB;
    }

    /** Gradient (rise over run) of 1 in {@code n}; n may be negative for a fall. */
    public static double gradientFromOneIn(double n) {
        return 1 / n;
    }

    public static double gradientFromPerMille(double perMille) {
        return perMille / 1000;
    }

    /** Gradient (rise over run) of so many feet to the mile. */
    public static double gradientFromFeetPerMile(double feetPerMile) {
        return feetPerMile * METRES_PER_FOOT / METRES_PER_MILE;
    }

    /** Specific resistance: newtons per kilogram from pounds-force per long ton. */
    public static double newtonsPerKgFromLbPerLongTon(double lbPerLongTon) {
        return lbPerLongTon * N_PER_LBF / KG_PER_LONG_TON;
    }

    /** Sine of the angle of a gradient given as rise over run. */
    public static double sineOfGradient(double gradient) {
        return gradient / Math.sqrt(1 + gradient * gradient);
    }
}
