package org.crosshead.kernel.boiler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FurnaceTests {

    private static final Furnace FURNACE = new Furnace(Units.m2FromSqFt(28.5), 170, 30e6);

    /** Against many small steps of the same law, over fires that grow thick, burn thin and cross from one to the other. */
    @ParameterizedTest
    @CsvSource({
        "0.0, 0.3, 0.5, 60", "0.5, 0.0, 1.0, 600", "1.5, 0.0, 1.0, 900", "1.0, 0.5, 0.1, 300", "0.9, 1.5, 0.6, 600",
        "0.3, 0.2, 0.0, 60", "1.0, 1.0, 1.0, 60", "2.0, 1.2, 0.8, 60", "1.2, 0.2, 0.9, 1800", "0.2, 1.1, 1.0, 1800"
    })
    void burnsAsSmallStepsDo(double fireShare, double coalShare, double air, double durationS) {
        double coal = coalShare * FURNACE.coalMaxKgPerS();
        double start = fireShare * FURNACE.fullKg();
        int count = 200_000;
        double stepped = start;
        for (int i = 0; i < count; i++) {
            stepped += (coal - FURNACE.burningKgPerS(stepped, air)) * durationS / count;
        }
        assertThat(FURNACE.fireAfterKg(start, coal, air, durationS))
                .isCloseTo(stepped, within(2e-5 * FURNACE.fullKg()));
    }

    @Test
    void settlesWhereWhatIsPutOnBurns() {
        double coal = 0.5 * FURNACE.coalMaxKgPerS();
        double fire = FURNACE.fireAfterKg(0, coal, 0.8, 86_400);
        assertThat(FURNACE.burningKgPerS(fire, 0.8)).isCloseTo(coal, withinPercentage(1e-6));
    }

    /** Evaporation goes with the root of the draught: four times the draught, twice the air (BOU Q282, read). */
    @Test
    void airGoesWithTheRootOfTheDraught() {
        double one = Furnace.air(0.4, 0, 1);
        double chimney = Furnace.CHIMNEY_AIR * Furnace.CHIMNEY_AIR;
        double fourTimesTheBlast = Furnace.air(0.8, 0, 1);
        assertThat((fourTimesTheBlast * fourTimesTheBlast - chimney) / (one * one - chimney))
                .isCloseTo(4, within(1e-9));
        assertThat(fourTimesTheBlast / one).isCloseTo(2, within(2 * 0.15));
        assertThat(Furnace.air(3, 0, 1)).isEqualTo(1);
        assertThat(Furnace.air(1, 0, 0.5)).isCloseTo(0.5, within(0.01));
        assertThat(Furnace.air(0, 0, 0)).isZero();
    }

    /** After Fry, from memory: about 0.775 at 20 and 0.525 at 120 lb for each square foot and hour. */
    @ParameterizedTest
    @CsvSource({"20, 0.775", "120, 0.525", "112, 0.545"})
    void efficiencyFallsWithTheRate(double lbPerSqFtHour, double efficiency) {
        double burning = Units.kgFromLb(28.5 * lbPerSqFtHour) / 3_600;
        assertThat(FURNACE.heatW(burning) / (burning * 30e6)).isCloseTo(efficiency, within(1e-9));
        assertThat(FURNACE.heatJ(burning * 60, 60)).isCloseTo(60 * FURNACE.heatW(burning), withinPercentage(1e-9));
        assertThat(FURNACE.heatJ(1, 0)).isZero();
    }

    @Test
    void coalForAHeatIsTheInverse() {
        double coal = 0.7 * FURNACE.coalMaxKgPerS();
        assertThat(FURNACE.coalKgPerS(FURNACE.heatW(coal))).isCloseTo(coal, withinPercentage(1e-9));
        assertThat(FURNACE.coalKgPerS(1e9)).isEqualTo(FURNACE.coalMaxKgPerS());
        assertThat(FURNACE.surfaceLimitKgPerS())
                .isCloseTo(Units.kgFromLb(12.5 * Units.sqFtFromM2(170)) / 3_600, withinPercentage(1e-9));
    }

    @Test
    void refusesAGrateOfNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Furnace(0, 170, 30e6));
        assertThatIllegalArgumentException().isThrownBy(() -> new Furnace(2, 0, 30e6));
        assertThatIllegalArgumentException().isThrownBy(() -> new Furnace(2, 170, 0));
    }
}
