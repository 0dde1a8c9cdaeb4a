package org.crosshead.kernel.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Point;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurningEffortTests {

    /** Full pressure over the whole stroke and none on the way back. */
    private static List<Point> square() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            points.add(new Point((1 - Math.cos(2 * Math.PI * i / 2_000)) / 2, i < 1_000 ? 1e6 : 0));
        }
        return points;
    }

    /**
     * Closed forms for full pressure all the way (computed): two cranks at a right angle give |sin| + |cos|, mean 4/pi, from 1 to
     * the root of 2; three at 120 degrees mean 6/pi, from the root of 3 to 2.
     */
    @ParameterizedTest
    @CsvSource({"2, 1.1107, 0.7854", "3, 1.0472, 0.9069"})
    void fullPressureGivesTheClosedForm(int cylinders, double peak, double least) {
        TurningEffort effort = TurningEffort.of(square(), cylinders);
        assertThat(effort.peakOverMean()).isCloseTo(peak, within(2e-3));
        assertThat(effort.leastOverMean()).isCloseTo(least, within(2e-3));
    }

    /** Two-cylinder ripple of 1.2 to 1.3 (from memory) at the cutoffs of a start on a bank; three and more are evener. */
    @Test
    void twoCylindersRippleAsTheTradeSaysAndThreeLess() {
        CylinderForm form = CylinderForm.LONG_TRAVEL;
        double chestPa = Units.paFromPsi(220) + SaturatedSteam.ATMOSPHERE_PA;
        List<Point> diagram = IndicatorDiagram.trace(
                form,
                ValveEvents.at(form.valve(), 0.5),
                new IndicatorDiagram.Ends(chestPa, 0.14, 1.05, SaturatedSteam.ATMOSPHERE_PA + 5e3),
                new IndicatorDiagram.Pace(1.5, 1));
        double two = TurningEffort.of(diagram, 2).peakOverMean();
        double three = TurningEffort.of(diagram, 3).peakOverMean();
        assertThat(two).isBetween(1.15, 1.35);
        assertThat(three).isLessThan(two);
        assertThat(TurningEffort.of(diagram, 4).peakOverMean()).isCloseTo(two, within(0.02));
    }

    /** At rest in full gear every position of the cranks pulls, the worst with well under the mean. */
    @ParameterizedTest
    @CsvSource({"2, 0.4, 0.85", "3, 0.6, 0.95", "4, 0.4, 0.85"})
    void worstPositionStillPulls(int cylinders, double from, double to) {
        TurningEffort effort = TurningEffort.atRest(ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), 0.75), cylinders);
        assertThat(effort.leastOverMean()).isBetween(from, to);
        assertThat(effort.peakOverMean()).isBetween(1.0, 1.5);
    }

    @Test
    void refusesOneCylinder() {
        assertThatIllegalArgumentException().isThrownBy(() -> TurningEffort.of(square(), 1));
    }
}
