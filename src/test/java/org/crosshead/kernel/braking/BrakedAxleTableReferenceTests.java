package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The braked-axle table of 1897 (RGBL-1897, read), not cell against cell but as what it stands for: a retarding coefficient that falls with
 * speed as cast iron's friction does, and a stop within 700 m.
 */
class BrakedAxleTableReferenceTests {

    private static final double[] FALLS_PERMILLE = {2.5, 5, 7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25};

    /**
     * Each per mille of fall asks for so many more axles that a braked axle must hold f of its weight: the slope of a column by least
     * squares gives f = 1/(10 slope), 0.103 at 25 km/h down to 0.053 at 80 (computed from the law's table in the bank; 4 per cent, as it
     * leaves out rows at the least of 6).
     */
    @ParameterizedTest
    @CsvSource({"25, 0.103", "30, 0.093", "40, 0.080", "50, 0.069", "60, 0.060", "70, 0.055", "80, 0.053"})
    void retardingCoefficientOfABrakedAxleFallsWithSpeed(double kmh, double expected) {
        assertThat(coefficient(kmh)).isCloseTo(expected, withinPercentage(4));
    }

    @Test
    void coefficientFallsFromColumnToColumnAsCastIronDoes() {
        double before = Double.POSITIVE_INFINITY;
        for (double kmh : new double[] {25, 30, 40, 50, 60, 70, 80}) {
            assertThat(coefficient(kmh)).isLessThan(before);
            before = coefficient(kmh);
        }
        double ofTable = coefficient(25) / coefficient(70);
        double ofIron = CastIronBlocks.friction(Units.mpsFromKmh(25)) / CastIronBlocks.friction(Units.mpsFromKmh(70));
        // Faster than friction alone, as the time until the blocks bite takes more of the 700 m at speed.
        assertThat(ofTable).isBetween(ofIron, 1.5 * ofIron);
    }

    private static double coefficient(double kmh) {
        double count = 0;
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (double fall : FALLS_PERMILLE) {
            var axles = BrakedAxleTable.perHundred(fall / 1000, Units.mpsFromKmh(kmh));
            if (axles.isPresent() && axles.getAsInt() > 6) {
                count++;
                sumX += fall;
                sumY += axles.getAsInt();
                sumXx += fall * fall;
                sumXy += fall * axles.getAsInt();
            }
        }
        double slope = (count * sumXy - sumX * sumY) / (count * sumXx - sumX * sumX);
        return 1 / (10 * slope);
    }

    /** Between values of the table the larger counts (law, section 13); a fraction of an axle is a whole one. */
    @ParameterizedTest
    @CsvSource({"10, 40, 18", "8, 40, 18", "10, 36, 18", "8, 36, 18", "0, 20, 6", "25, 50, 47", "20, 60, 50"})
    void betweenValuesTheLargerCounts(double permille, double kmh, int perHundred) {
        assertThat(BrakedAxleTable.perHundred(permille / 1000, Units.mpsFromKmh(kmh)))
                .hasValue(perHundred);
    }

    @Test
    void fractionOfAnAxleCountsAsAWholeOne() {
        assertThat(BrakedAxleTable.wanted(50, 18)).isEqualTo(9);
        assertThat(BrakedAxleTable.wanted(51, 18)).isEqualTo(10);
        assertThat(BrakedAxleTable.wanted(0.5, 18)).isEqualTo(1);
        assertThat(BrakedAxleTable.wanted(0, 18)).isZero();
    }

    @Test
    void blankWhereNoTrainMayRunSoFastOnSoSteepAFall() {
        assertThat(BrakedAxleTable.perHundred(0.025, Units.mpsFromKmh(60))).isEmpty();
        assertThat(BrakedAxleTable.perHundred(0.026, Units.mpsFromKmh(25))).isEmpty();
        assertThat(BrakedAxleTable.perHundred(0, Units.mpsFromKmh(91))).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> BrakedAxleTable.perHundred(-0.01, 10));
    }
}
