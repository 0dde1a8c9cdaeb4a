package org.crosshead.kernel.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks holding and restarting against a law's table and worked balances. */
class StandingReferenceTests {

    /** The law's figures answer to a braked axle holding a tenth of its load, rounded now up, now down: within 2 of 100 axles. */
    @ParameterizedTest
    @CsvFileSource(resources = "mine-railway-axles.csv", useHeadersInDisplayName = true)
    void holdsAsTheMineRailwaysMust(double oneIn, String source, int axles) {
        double axleKg = 5_000;
        int count =
                Holding.handBrakes(100 * axleKg, -Units.gradientFromOneIn(oneIn), 0.1 * axleKg * Units.GRAVITY_MPS2, 1);
        assertThat(count).as(source).isCloseTo(axles, within(2));
    }

    /** The mine railways' table, entered as a railway's own rule, yields its printed axles of a hundred again. */
    @ParameterizedTest
    @CsvFileSource(resources = "mine-railway-axles.csv", useHeadersInDisplayName = true)
    void ownRuleAnswersAsItIsPrinted(double oneIn, String source, int axles) {
        double slope = Units.gradientFromOneIn(oneIn);
        HandBrakeTable table = new HandBrakeTable(new TreeMap<>(), new TreeMap<>(Map.of(slope, axles / 100.0)));
        assertThat(table.brakes(100, -slope)).as(source).hasValue(axles);
        assertThat(table.brakes(100, slope * 0.99)).hasValue(0);
    }

    /** [HAND-BRAKE-CHART] a company chart, as read: 1 for 2 cars, 2 to 9, 3 to 19, 4 to 29, one more each ten, 11 from 90. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "9, 2", "10, 3", "19, 3", "20, 4", "29, 4", "30, 5", "89, 10", "90, 11"})
    void chartByVehiclesAnswersAsItIsPrinted(int cars, int brakes) {
        NavigableMap<Integer, Integer> chart = new TreeMap<>(Map.of(2, 1, 9, 2));
        for (int tens = 1; tens <= 8; tens++) {
            chart.put(10 * tens + 9, tens + 2);
        }
        chart.put(999, 11);
        assertThat(new HandBrakeTable(chart, new TreeMap<>()).brakes(cars, 0)).hasValue(brakes);
    }

    /** [WORKED] (computed): 300 t, 16 kN a brake, factor 1.25. */
    @ParameterizedTest
    @CsvSource({"100, 29.42, 3", "40, 73.55, 6"})
    void countsHandBrakes(double oneIn, double gravityKn, int brakes) {
        double gradient = -Units.gradientFromOneIn(oneIn);
        double gravityN = Holding.balance(300_000, gradient, 0, Holding.SAFETY).gravityN();
        assertThat(gravityN).isCloseTo(gravityKn * 1000 / Math.sqrt(1 + gradient * gradient), within(6.0));
        assertThat(Holding.handBrakes(300_000, gradient, 16_000, Holding.SAFETY))
                .isEqualTo(brakes);
    }

    /** [WORKED] (computed): 410 t, 8 thousandths to start, 1 in 50, a curve of 1.5 thousandths need 118.6 kN. */
    @Test
    void restartNeedsThePrintedPull() {
        double massKg = 410_000;
        double radiusM = 55 + 650 / 1.5;
        assertThat(CurveResistance.perMassN(radiusM)).isCloseTo(0.0015 * Units.GRAVITY_MPS2, within(1e-12));
        RunningResistance starting = new RunningResistance(0, 0, 0, 0.008 * massKg * Units.GRAVITY_MPS2);
        TrainBody train = new TrainBody(massKg, 0.08, 250, starting);
        assertThat(Restart.balance(train, 0.02, radiusM, 0).neededN()).isCloseTo(118_600, within(50.0));
    }
}
