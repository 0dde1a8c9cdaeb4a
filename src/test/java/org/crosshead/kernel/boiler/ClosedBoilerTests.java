package org.crosshead.kernel.boiler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.boiler.ClosedBoiler.Content;
import org.crosshead.kernel.boiler.ClosedBoiler.Sums;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClosedBoilerTests {

    private static final double MAX_PA = 1.8e6;
    private static final ClosedBoiler BOILER = new ClosedBoiler(9, 6e6);
    private static final SaturatedSteam STEAM = SaturatedSteam.table();

    @Test
    void contentOfItsOwnSumsIsItself() {
        Content content = new Content(1.31e6, 6_200);
        Content again = BOILER.content(BOILER.sums(content), MAX_PA, 1.2e6);
        assertThat(again.pressurePa()).isCloseTo(1.31e6, within(1.0));
        assertThat(again.waterKg()).isCloseTo(6_200, within(0.01));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50e3, 0.4e6, 1.3e6, 1.31e6, MAX_PA})
    void answerDoesNotDependOnWhereItIsSoughtFrom(double nearPa) {
        Content content = BOILER.content(BOILER.sums(new Content(1.31e6, 6_200)), MAX_PA, nearPa);
        assertThat(content.pressurePa()).isCloseTo(1.31e6, within(1e-3));
        assertThat(content.waterKg()).isCloseTo(6_200, within(1e-5));
    }

    /** Worked from IF97: 7,000 kg of water falling from 16 to 15 bar flash into about 50 kg of steam, metal left out. */
    @Test
    void waterFlashesIntoSteamAsThePressureFalls() {
        ClosedBoiler noMetal = new ClosedBoiler(7_000 * STEAM.waterVolume(1.6e6) * 1.0001, 0);
        Sums full = noMetal.sums(new Content(1.6e6, 7_000));
        double taken = 0;
        Content content = new Content(1.6e6, 7_000);
        Sums sums = full;
        while (content.pressurePa() > 1.5e6) {
            taken += 0.1;
            sums = sums.plus(-0.1, -0.1 * STEAM.steamEnthalpy(content.pressurePa()));
            content = noMetal.content(sums, MAX_PA, content.pressurePa());
        }
        assertThat(taken).isCloseTo(50, withinPercentage(4.0));
    }

    @Test
    void safetyValvesHoldThePressureAndBlowMassOff() {
        Content content = new Content(MAX_PA, 6_000);
        Sums heated = BOILER.sums(content).plus(0, 50e6);
        Content after = BOILER.content(heated, MAX_PA, MAX_PA);
        assertThat(after.pressurePa()).isEqualTo(MAX_PA);
        double blownKg = heated.massKg() - BOILER.sums(after).massKg();
        assertThat(blownKg * STEAM.steamEnthalpy(MAX_PA))
                .isCloseTo(heated.energyJ() - BOILER.sums(after).energyJ(), withinPercentage(0.001));
        assertThat(blownKg).isCloseTo(50e6 / 1_911e3, withinPercentage(3.0));
    }

    @Test
    void feedOfColdWaterLowersThePressureAndRaisesTheLevel() {
        Content before = new Content(1.2e6, 6_000);
        Content after = BOILER.content(BOILER.sums(before).plus(200, 200 * 63e3), MAX_PA, 1.2e6);
        assertThat(after.pressurePa()).isLessThan(1.2e6);
        assertThat(after.waterKg()).isGreaterThan(6_150);
    }

    @Test
    void boilerThatHasCooledStaysAtTheEndOfTheTable() {
        Content cold = BOILER.content(BOILER.sums(new Content(0.2e6, 6_000)).plus(0, -6e9), MAX_PA, 0.2e6);
        assertThat(cold.pressurePa()).isEqualTo(SaturatedSteam.PRESSURE_LEAST_PA);
    }
}
