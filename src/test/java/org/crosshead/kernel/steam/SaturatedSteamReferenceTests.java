package org.crosshead.kernel.steam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The steam table against the IAPWS formulation and against printed values. */
class SaturatedSteamReferenceTests {

    private static final SaturatedSteam TABLE = SaturatedSteam.table();
    private static final double KELVIN = 273.15;

    /** IAPWS R7-97 Table 36 (key IF97, read). */
    @ParameterizedTest
    @CsvSource({"0.1, 372.755919", "1, 453.035632"})
    void saturationTemperatureAsPrintedByTheFormulation(double pressureMpa, double expectedK) {
        assertThat(TABLE.temperatureK(pressureMpa * 1e6)).isCloseTo(expectedK, within(0.01));
    }

    /** Computed with the reference library if97 1.0.5; tolerance 0.05 per cent, the table interpolates. */
    @ParameterizedTest
    @CsvFileSource(resources = "saturation-line.csv", useHeadersInDisplayName = true)
    void saturationLineAsComputedByTheReferenceLibrary(
            double pressureMpa,
            double temperatureC,
            double waterKjPerKg,
            double steamKjPerKg,
            double steamVolume,
            double waterVolume) {
        double p = pressureMpa * 1e6;
        assertThat(TABLE.temperatureK(p) - KELVIN).isCloseTo(temperatureC, within(0.002));
        assertThat(TABLE.waterEnthalpy(p) / 1e3).isCloseTo(waterKjPerKg, within(0.01));
        assertThat(TABLE.steamEnthalpy(p) / 1e3).isCloseTo(steamKjPerKg, within(0.01));
        assertThat(TABLE.steamVolume(p)).isCloseTo(steamVolume, within(1e-5));
        assertThat(TABLE.waterVolume(p)).isCloseTo(waterVolume, within(1e-6));
    }

    @Test
    void tableKeepsItsErrorBoundBetweenNodes() {
        IF97 if97 = new IF97(IF97.UnitSystem.DEFAULT);
        for (double p = 51e3; p < 2_500e3; p += 7_001) {
            double mpa = p / 1e6;
            assertThat(TABLE.steamVolume(p))
                    .isCloseTo(if97.specificVolumeSaturatedVapourP(mpa), withinPercentage(0.02));
            assertThat(TABLE.steamEnthalpy(p))
                    .isCloseTo(1e3 * if97.specificEnthalpySaturatedVapourP(mpa), withinPercentage(0.02));
            assertThat(TABLE.waterEnthalpy(p))
                    .isCloseTo(1e3 * if97.specificEnthalpySaturatedLiquidP(mpa), withinPercentage(0.02));
        }
    }

    /** Reference library: 1.5 MPa superheated to 300, 350 and 400 C (boils at 198.295 C). */
    @ParameterizedTest
    @CsvSource({"101.705, 3038.27, .16970", "151.705, 3148.03, .18658", "201.705, 3256.37, .20301"})
    void superheatedSteamAsComputedByTheReferenceLibrary(double kelvins, double kjPerKg, double volume) {
        Superheat steam = Superheat.of(kelvins);
        assertThat(steam.enthalpy(1.5e6) / 1e3).isCloseTo(kjPerKg, within(0.1));
        assertThat(steam.density(1.5e6)).isCloseTo(1 / volume, withinPercentage(0.05));
    }

    /** Babcock and Wilcox, Steam, Table 24 (key BW, read): 200 psia superheated 100 F; 2 per cent of volume, data of 1909. */
    @Test
    void superheatedVolumeOfTheHandbook() {
        double p = 200 * 6_894.757;
        double cubicFeetPerLb = 1 / Superheat.of(100 / 1.8).density(p) * 35.3147 * 0.45359237;
        assertThat(cubicFeetPerLb).isCloseTo(2.68, withinPercentage(2.0));
    }

    @Test
    void refusesPressureOutsideTheTable() {
        assertThatIllegalArgumentException().isThrownBy(() -> TABLE.steamVolume(10e3));
        assertThatIllegalArgumentException().isThrownBy(() -> TABLE.steamVolume(3e6));
        assertThatIllegalArgumentException().isThrownBy(() -> Superheat.of(400));
    }

    @Test
    void withoutSuperheatItIsSaturatedSteam() {
        Superheat dry = Superheat.of(0);
        assertThat(dry.kelvins()).isZero();
        assertThat(dry.enthalpy(1.2e6)).isCloseTo(TABLE.steamEnthalpy(1.2e6), withinPercentage(0.02));
        assertThat(dry.density(1.2e6) * TABLE.steamVolume(1.2e6)).isCloseTo(1, within(1e-12));
    }
}
