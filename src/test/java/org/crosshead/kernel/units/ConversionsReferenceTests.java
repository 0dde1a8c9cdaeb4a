package org.crosshead.kernel.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Every conversion against its definition, [WORKED] from memory: international yard and pound, standard gravity, imperial gallon,
 * horse-power of 550 foot-pounds a second, and a Btu a pound of exactly 2326 J/kg.
 */
class ConversionsReferenceTests {

    /** The definitions are exact; a double is not. */
    private static final double ROUNDING_PERCENT = 1e-9;

    private static void converts(DoubleUnaryOperator conversion, double from, double to) {
        assertThat(conversion.applyAsDouble(from)).isCloseTo(to, withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void lengthsAndAreas() {
        converts(Units::metresFromInches, 100, 2.54);
        converts(Units::inchesFromMetres, 2.54, 100);
        converts(Units::metresFromFeet, 1_000, 304.8);
        converts(Units::feetFromMetres, 304.8, 1_000);
        converts(Units::metresFromYards, 1_000, 914.4);
        converts(Units::yardsFromMetres, 914.4, 1_000);
        converts(Units::metresFromChains, 10, 201.168);
        converts(Units::chainsFromMetres, 201.168, 10);
        converts(Units::metresFromMiles, 10, 16_093.44);
        converts(Units::milesFromMetres, 16_093.44, 10);
        converts(Units::metresFromKm, 12.5, 12_500);
        converts(Units::kmFromMetres, 12_500, 12.5);
        converts(Units::m2FromSqFt, 100, 9.290304);
        converts(Units::sqFtFromM2, 9.290304, 100);
    }

    @Test
    void speeds() {
        converts(Units::mpsFromMph, 100, 44.704);
        converts(Units::mphFromMps, 44.704, 100);
        converts(Units::mpsFromKmh, 90, 25);
        converts(Units::kmhFromMps, 25, 90);
        converts(Units::feetPerMinuteFromMps, 5.08, 1_000);
    }

    @Test
    void massesAndVolumes() {
        converts(Units::kgFromLb, 100, 45.359237);
        converts(Units::lbFromKg, 45.359237, 100);
        converts(Units::kgFromCwt, 20, 1_016.0469088);
        converts(Units::kgFromLongTons, 1, 1_016.0469088);
        converts(Units::longTonsFromKg, 1_016.0469088, 1);
        converts(Units::kgFromTonnes, 1.5, 1_500);
        converts(Units::kgFromGallons, 100, 454.609);
        converts(Units::gallonsFromKg, 454.609, 100);
    }

    @Test
    void forcesPressuresAndHeat() {
        converts(Units::newtonsFromLbf, 1, 4.4482216152605);
        converts(Units::lbfFromNewtons, 4.4482216152605, 1);
        converts(Units::newtonsFromLongTonsForce, 1, 9_964.01641818352);
        converts(Units::paFromPsi, 1, 6_894.757293168361);
        converts(Units::psiFromPa, 6_894.757293168361, 1);
        converts(Units::paFromBar, 1.5, 150_000);
        converts(Units::barFromPa, 150_000, 1.5);
        converts(Units::paFromMpa, 1.5, 1_500_000);
        converts(Units::paFromInHg, 10, 33_863.9);
        converts(Units::wattsFromHp, 1, 745.6998715822702);
        converts(Units::hpFromWatts, 745.6998715822702, 1);
        converts(Units::jPerKgFromBtuPerLb, 1, 2_326);
    }

    @Test
    void gradientsAndSpecificResistance() {
        converts(Units::gradientFromOneIn, -80, -0.0125);
        converts(Units::gradientFromPerMille, 12.5, 0.0125);
        converts(Units::gradientFromFeetPerMile, 52.8, 0.01);
        converts(Units::newtonsPerKgFromLbPerLongTon, 2_240, 9.80665);
        converts(Units::sineOfGradient, 0.75, 0.6);
    }
}
