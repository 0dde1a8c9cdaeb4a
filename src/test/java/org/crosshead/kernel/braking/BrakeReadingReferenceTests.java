package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrakeReadingReferenceTests {

    private static double inches(double inHg) {
        return Units.paFromInHg(inHg);
    }

    /** [RCTS] (read): most lines 21 inches, one 25, in bar and pounds (computed with 3.38639 kPa to the inch, from memory). */
    @ParameterizedTest
    @CsvSource({"21, 0.7111, 10.314", "25, 0.8466, 12.279"})
    void vacuumInOtherUnits(double inHg, double bar, double psi) {
        assertThat(Units.barFromPa(inches(inHg))).isCloseTo(bar, within(1e-3));
        assertThat(Units.psiFromPa(inches(inHg))).isCloseTo(psi, within(1e-3));
    }

    /** [WORKED] (computed): 25 inches pull 1.190 of 21; chambers left at 25 behind 21 keep 19.0 per cent of the full force on. */
    @Test
    void runsWithABrakeCreatedAtTwentyFive() {
        assertThat(BrakeReading.vacuumShare(inches(21), inches(25), 0)).isCloseTo(1.190, withinPercentage(1));
        assertThat(BrakeReading.vacuumShare(inches(21), inches(25), inches(21))).isCloseTo(0.190, withinPercentage(1));
        assertThat(BrakeReading.vacuumShare(inches(21), inches(21), inches(21))).isZero();
        assertThat(BrakeReading.vacuumShare(inches(21), inches(21), inches(23))).isZero();
    }

    /** Common practice, no source: a usual stopping application leaves about 12 of 21 inches. */
    @Test
    void usualApplicationIsLessThanHalfTheForce() {
        double share = BrakeReading.vacuumShare(inches(21), inches(21), inches(12));
        assertThat(share).isCloseTo(0.43, within(0.005)).isLessThan(ServiceBrakes.SERVICE_SHARE);
        assertThat(BrakeReading.vacuumPa(inches(21), share)).isCloseTo(inches(12), within(1e-6));
    }

    /** [WORKED] (computed): force at 21 inches by diameter, in pounds. */
    @ParameterizedTest
    @CsvSource({"15, 1823", "18, 2625", "21, 3572", "24, 4666", "30, 7291"})
    void cylinderForceByDiameter(double diameterIn, double lbf) {
        double forceN = BrakeReading.cylinderN(Units.metresFromInches(diameterIn), BrakeReading.twentyOneInchesPa());
        assertThat(Units.lbfFromNewtons(forceN)).isCloseTo(lbf, withinPercentage(0.5));
    }

    /** [SUBSET-026-3] A.3.10.3-4 (read): braking starts 30 kPa below 500 kPa and is full 150 kPa below. */
    @ParameterizedTest
    @CsvSource({"0, 0", "30, 0", "90, 0.5", "150, 1", "400, 1"})
    void airBrakeByReductionOfThePipe(double reductionKpa, double share) {
        assertThat(BrakeReading.airShare(1_000 * reductionKpa)).isCloseTo(share, within(1e-12));
    }

    @Test
    void reductionIsTheInverse() {
        assertThat(BrakeReading.airReductionPa(0.6)).isCloseTo(102_000, within(1e-6));
        assertThatIllegalArgumentException().isThrownBy(() -> BrakeReading.airReductionPa(1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> BrakeReading.vacuumShare(0, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> BrakeReading.cylinderN(-1, 1));
    }
}
