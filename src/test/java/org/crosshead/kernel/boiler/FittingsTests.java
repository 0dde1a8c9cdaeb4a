package org.crosshead.kernel.boiler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Safety valves and injectors. */
class FittingsTests {

    private static final double LIFT_PA = Units.paFromPsi(215);

    /** Napier: 215 lb absolute lets 11,057 lb an hour through a square inch (BW eq. 49, within 3.2 per cent of Peabody's tests). */
    @Test
    void dischargesAsNapierSays() {
        SafetyValves valves = new SafetyValves(LIFT_PA, Units.m2FromSqFt(1.0 / 144));
        assertThat(Units.lbFromKg(valves.dischargeKgPerS(LIFT_PA)) * 3_600).isCloseTo(11_057, withinPercentage(3.5));
    }

    /** The rule, from memory: two safety valves hold the rise within 6 per cent of the working pressure. */
    @Test
    void passMoreThanTheBoilerMakes() {
        SafetyValves valves = SafetyValves.forBoiler(LIFT_PA, 2.5);
        assertThat(valves.dischargeKgPerS(LIFT_PA)).isCloseTo(3.0, within(1e-9));
        assertThat(valves.dischargeKgPerS(1.06 * LIFT_PA)).isGreaterThan(3.0);
        assertThat(Units.psiFromPa(LIFT_PA - valves.shutPa())).isCloseTo(3, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> new SafetyValves(10e6, 0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> new SafetyValves(LIFT_PA, 0));
    }

    @Test
    void injectorsDeliverWithTheRootOfThePressureAndFailWhereTheyMust() {
        Injectors injectors = new Injectors(2.5, LIFT_PA);
        assertThat(injectors.mostKgPerS(LIFT_PA, 15)).isEqualTo(5);
        assertThat(injectors.mostKgPerS(LIFT_PA / 4, 15)).isCloseTo(2.5, within(1e-9));
        assertThat(injectors.mostKgPerS(Units.paFromPsi(24), 15)).isZero();
        assertThat(injectors.mostKgPerS(LIFT_PA, 50)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> new Injectors(0, LIFT_PA));
        assertThatIllegalArgumentException().isThrownBy(() -> new Injectors(1, 0));
    }
}
