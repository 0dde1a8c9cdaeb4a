package org.crosshead.kernel.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks lengths, gradients and pressures against definitions and printed equivalents. */
class UnitsReferenceTests {

    /** [WORKED] (definition): a mile is 80 chains or 1760 yards, a chain 22 yards or 66 feet. */
    @Test
    void milesChainsAndYards() {
        assertThat(Units.metresFromMiles(1)).isEqualTo(1609.344).isEqualTo(Units.metresFromYards(1760), within(1e-9));
        assertThat(Units.metresFromChains(80)).isEqualTo(1609.344, within(1e-9));
        assertThat(Units.metresFromChains(1)).isEqualTo(20.1168).isEqualTo(Units.metresFromFeet(66), within(1e-9));
        assertThat(Units.metresFromMiles(17) + Units.metresFromChains(49)).isEqualTo(28_344.6, within(0.05));
        assertThat(Units.metresFromChains(20)).isEqualTo(402.3, within(0.05));
    }

    /** [LICKEY] (read): the Lickey bank, 1 in 37.7, is printed as 2.65 per cent, 26.5 per mille, 1.52 degrees. */
    @Test
    void lickeyInEveryNotation() {
        double gradient = Units.gradientFromOneIn(37.7);
        assertThat(gradient * 1000).isEqualTo(26.525, within(0.0005));
        assertThat(Math.toDegrees(Math.asin(Units.sineOfGradient(gradient)))).isEqualTo(1.5194, within(0.00005));
        assertThat(gradient / Units.gradientFromFeetPerMile(1)).isEqualTo(140.05, within(0.005));
        assertThat(gradient).isEqualTo(Units.gradientFromPerMille(26.525), within(5e-7));
    }

    /** [LICKEY] (read): two miles of it rise 280.1 feet or 85.38 m by rise over run (computed). */
    @Test
    void lickeyRises() {
        double riseM = Units.metresFromMiles(2) * Units.gradientFromOneIn(37.7);
        assertThat(riseM).isEqualTo(85.38, within(0.005));
        assertThat(Units.feetFromMetres(riseM)).isEqualTo(280.1, within(0.05));
    }

    /** [HORSESHOE] and [WORKED]: feet to the mile of 1 in n. */
    @ParameterizedTest
    @CsvSource({"100, 52.8", "176, 30.0", "264, 20.0", "55.579, 95"})
    void feetPerMile(double oneIn, double feetPerMile) {
        assertThat(Units.gradientFromFeetPerMile(feetPerMile)).isEqualTo(Units.gradientFromOneIn(oneIn), within(1e-6));
    }

    /** [RCTS] (read; equivalents computed): vacuum of 21 and 25 inches. */
    @ParameterizedTest
    @CsvSource({"21, 0.7111, 10.314", "25, 0.8466, 12.279"})
    void vacuum(double inHg, double bar, double psi) {
        assertThat(Units.barFromPa(Units.paFromInHg(inHg))).isEqualTo(bar, within(1e-3));
        assertThat(Units.psiFromPa(Units.paFromInHg(inHg))).isEqualTo(psi, within(1e-3));
    }

    /** Bank heading (computed): 1 lb a long ton is 4.378 N/t and 0.4464 per mille. */
    @Test
    void specificResistance() {
        double perKgN = Units.newtonsPerKgFromLbPerLongTon(1);
        assertThat(perKgN * 1000).isEqualTo(4.378, within(0.0005));
        assertThat(perKgN / Units.GRAVITY_MPS2 * 1000).isEqualTo(0.4464, within(0.00005));
    }

    /** [WORKED] (computed): 1 mph a second needs 91.2 lb a short or 102.1 lb a long ton. */
    @Test
    void acceleration() {
        double perKgN = Units.mpsFromMph(1);
        assertThat(Units.lbfFromNewtons(perKgN * Units.kgFromLb(2_000))).isEqualTo(91.2, within(0.05));
        assertThat(Units.lbfFromNewtons(perKgN * Units.kgFromLongTons(1))).isEqualTo(102.1, within(0.05));
    }

    /** [WORKED] (computed): 400 m of restriction and 160 m of train at 20 mph last 62.63 s. */
    @Test
    void restrictionLastsUntilTheTail() {
        assertThat((400 + 160) / Units.mpsFromMph(20)).isEqualTo(62.63, within(0.005));
    }

    /** [WORKED] (computed): shift of the water level over so many metres on 1 in n, mm. */
    @ParameterizedTest
    @CsvSource({"2.7, 50, 54.0", "4.0, 50, 80.0", "6.0, 40, 150"})
    void waterShift(double alongM, double oneIn, double shiftMm) {
        double shiftM = alongM * Units.sineOfGradient(Units.gradientFromOneIn(oneIn));
        assertThat(shiftM * 1000).isEqualTo(shiftMm, within(0.1));
    }
}
