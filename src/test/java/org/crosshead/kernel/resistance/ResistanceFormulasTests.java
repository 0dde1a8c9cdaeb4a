package org.crosshead.kernel.resistance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Checks the project's choice of formulas: on the safe side of the published ones, rising, and refusing what cannot be. */
class ResistanceFormulasTests {

    private static double perMassN(ResistanceFamily family, double massKg, double mph) {
        int axles = ResistanceFormulas.usualAxles(family, massKg);
        return ResistanceFormulas.of(family, massKg, axles).forceN(Units.mpsFromMph(mph)) / massKg;
    }

    @ParameterizedTest
    @EnumSource
    void risesWithSpeed(ResistanceFamily family) {
        double before = 0;
        for (double mph = 0; mph <= 90; mph += 5) {
            double now = perMassN(family, 25_000, mph);
            assertThat(now).isGreaterThan(before - 1e-12);
            before = now;
        }
    }

    @ParameterizedTest
    @EnumSource
    void startsHarderThanItRolls(ResistanceFamily family) {
        for (double massKg = 5_000; massKg <= 120_000; massKg += 5_000) {
            RunningResistance resistance = ResistanceFormulas.of(family, massKg, 4);
            assertThat(resistance.startingN()).isGreaterThanOrEqualTo(resistance.forceN(0));
            assertThat(resistance.startingN()).isGreaterThanOrEqualTo(StartingResistance.ofN(massKg) - 1e-9);
        }
    }

    @Test
    void coachesResistNoLessThanByTheCoachCoefficients() {
        for (double massKg = 10_000; massKg <= 60_000; massKg += 2_500) {
            for (double mph = 0; mph <= 90; mph += 5) {
                Davis1926.Vehicle vehicle = new Davis1926.Vehicle(massKg, 4);
                double v = Units.mpsFromMph(mph);
                assertThat(ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, massKg, 4)
                                .forceN(v))
                        .isGreaterThanOrEqualTo(
                                Davis1926.vehicle(Davis1926.COACH, vehicle).forceN(v) - 1e-9);
            }
        }
    }

    @Test
    void coachesLieBetweenStrahlAndClark() {
        for (double mph = 10; mph <= 70; mph += 10) {
            double v = Units.mpsFromMph(mph);
            assertThat(perMassN(ResistanceFamily.BOGIE_COACH, 30_000, mph))
                    .isGreaterThan(Strahl.perMassN(v))
                    .isLessThan(Clark.perMassN(v));
        }
    }

    @Test
    void wagonsResistNoLessThanByDavisOrShurtleff() {
        for (double massKg = 5_000; massKg <= 60_000; massKg += 2_500) {
            for (int axles = 2; axles <= 4; axles += 2) {
                Davis1926.Vehicle vehicle = new Davis1926.Vehicle(massKg, axles);
                double atRestN = ResistanceFormulas.of(ResistanceFamily.FOUR_WHEEL_WAGON, massKg, axles)
                        .forceN(0);
                assertThat(atRestN)
                        .isGreaterThanOrEqualTo(
                                Davis1926.vehicle(Davis1926.FREIGHT, vehicle).forceN(0))
                        .isGreaterThanOrEqualTo(Shurtleff.perMassN(massKg) * massKg);
            }
        }
    }

    @Test
    void usualAxlesCarryNoMoreThanAnAxleMay() {
        for (ResistanceFamily family : ResistanceFamily.values()) {
            for (double massKg = 4_000; massKg <= 200_000; massKg += 1_000) {
                int axles = ResistanceFormulas.usualAxles(family, massKg);
                assertThat(massKg / axles).isLessThanOrEqualTo(22_500);
                assertThat(axles).isGreaterThanOrEqualTo(2);
            }
        }
        assertThat(ResistanceFormulas.usualAxles(ResistanceFamily.BOGIE_COACH, 30_000))
                .isEqualTo(4);
        assertThat(ResistanceFormulas.usualAxles(ResistanceFamily.FOUR_WHEEL_WAGON, 16_000))
                .isEqualTo(2);
        assertThat(ResistanceFormulas.usualAxles(ResistanceFamily.TENDER, 45_000))
                .isEqualTo(3);
        assertThat(ResistanceFormulas.usualAxles(ResistanceFamily.LOCOMOTIVE, 73_000))
                .isEqualTo(5);
    }

    @Test
    void moreAxlesResistMore() {
        assertThat(ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, 40_000, 6)
                        .forceN(20))
                .isGreaterThan(ResistanceFormulas.of(ResistanceFamily.BOGIE_COACH, 40_000, 4)
                        .forceN(20));
    }

    @Test
    void sharperCurvesNeverResistLess() {
        assertThat(CurveResistance.perMassN(Double.POSITIVE_INFINITY)).isZero();
        double before = 0;
        for (double radiusM = 5_000; radiusM >= 25; radiusM -= 1) {
            double now = CurveResistance.perMassN(radiusM);
            assertThat(now).isGreaterThanOrEqualTo(before);
            assertThat(now).isGreaterThanOrEqualTo(radiusM >= 60 ? Roeckl.perMassN(radiusM) : before);
            before = now;
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> ResistanceFormulas.of(ResistanceFamily.TENDER, 0, 3))
                .hasMessageContaining("massKg");
        assertThatThrownBy(() -> ResistanceFormulas.of(ResistanceFamily.TENDER, 40_000, 0))
                .hasMessageContaining("axles");
        assertThatThrownBy(() -> CurveResistance.perMassN(0)).hasMessageContaining("radiusM");
        assertThatThrownBy(() -> CurveResistance.perMassN(Double.NaN)).hasMessageContaining("radiusM");
        assertThatThrownBy(() -> Roeckl.perMassN(59)).hasMessageContaining("radiusM");
        assertThatThrownBy(() -> Clark.perMassN(-1)).hasMessageContaining("speedMps");
        assertThatThrownBy(() -> Molesworth.perMassN(40)).hasMessageContaining("speedMps");
        assertThatThrownBy(() -> Shurtleff.perMassN(Double.NaN)).hasMessageContaining("massKg");
    }
}
