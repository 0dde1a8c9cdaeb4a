package org.crosshead.kernel.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Ends;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Pace;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IndicatorDiagramTests {

    private static final double BACK_PA = SaturatedSteam.ATMOSPHERE_PA + 10e3;
    private static final double BORE_M = 0.47;

    private static Ends ends(double gaugePa, double exponent) {
        double chestPa = gaugePa + SaturatedSteam.ATMOSPHERE_PA;
        return new Ends(chestPa, 1 / Superheat.of(exponent > 1 ? 120 : 0).density(chestPa), exponent, BACK_PA);
    }

    private static Pace pace(double ftPerMin) {
        return new Pace(1.5, Units.mpsFromFeetPerMinute(ftPerMin) / BORE_M);
    }

    /** Twenty thousand angles against two hundred, over the working range. */
    @ParameterizedTest
    @CsvSource({
        "SHORT, 0.20, 100", "SHORT, 0.30, 300", "SHORT, 0.45, 500", "SHORT, 0.60, 800", "SHORT, 0.75, 60",
        "LONG, 0.15, 300", "LONG, 0.25, 600", "LONG, 0.35, 900", "LONG, 0.50, 1200", "LONG, 0.75, 100"
    })
    void agreesWithASlowerSecondImplementation(String family, double cutoff, double ftPerMin) {
        CylinderForm form = family.equals("SHORT") ? CylinderForm.SHORT_TRAVEL : CylinderForm.LONG_TRAVEL;
        Ends ends = ends(family.equals("SHORT") ? 11e5 : 15e5, family.equals("SHORT") ? 1 : 1.05);
        Diagram fast = IndicatorDiagram.of(form, ValveEvents.at(form.valve(), cutoff), ends, pace(ftPerMin));
        SlowDiagram.Result slow = SlowDiagram.of(form, cutoff, ends, pace(ftPerMin));
        assertThat(fast.meanPressurePa()).isCloseTo(slow.meanPressurePa(), withinPercentage(2.0));
        assertThat(fast.steamKgPerM3()).isCloseTo(slow.steamKgPerM3(), withinPercentage(2.0));
    }

    @Test
    void pressureStaysBetweenChestAndCompressionAndFallsAtRelease() {
        CylinderForm form = CylinderForm.SHORT_TRAVEL;
        Ends ends = ends(10e5, 1);
        List<IndicatorDiagram.Point> points =
                IndicatorDiagram.trace(form, ValveEvents.at(form.valve(), 0.5), ends, pace(300));
        assertThat(points).hasSizeGreaterThan(100);
        for (IndicatorDiagram.Point point : points) {
            assertThat(point.pressurePa()).isBetween(BACK_PA * 0.99, ends.chestPa() * 1.25);
            assertThat(point.strokeShare()).isBetween(0.0, 1.0);
        }
        assertThat(points.get(points.size() * 3 / 4).pressurePa()).isCloseTo(BACK_PA, withinPercentage(10));
    }

    @Test
    void terminalPressureLiesBetweenBackAndChest() {
        CylinderForm form = CylinderForm.LONG_TRAVEL;
        Diagram diagram = IndicatorDiagram.of(form, ValveEvents.at(form.valve(), 0.3), ends(14e5, 1.05), pace(400));
        assertThat(diagram.terminalPa()).isBetween(2 * BACK_PA, 0.6 * 14e5);
    }

    @Test
    void valveCutsOffWhereItIsToldAndKeepsItsLead() {
        ValveProportions valve = CylinderForm.LONG_TRAVEL.valve();
        for (double cutoff = 0.1; cutoff < 0.8; cutoff += 0.05) {
            ValveEvents events = ValveEvents.at(valve, cutoff);
            double cosine = 1 - 2 * cutoff;
            double atCutoff = events.displacement(cosine, Math.sqrt(1 - cosine * cosine));
            assertThat(atCutoff).isCloseTo(valve.lap(), within(1e-12));
            assertThat(events.displacement(1, 0) - valve.lap()).isCloseTo(valve.lead(), within(1e-12));
            assertThat(events.release()).isBetween(cutoff, 1.0);
            assertThat(events.compression()).isBetween(0.0, 0.5);
            assertThat(events.admission()).isBetween(0.0, 0.05);
        }
    }

    /** Common practice (no source): full gear of about 75 per cent; four and a half inches of travel and seven and three eighths. */
    @Test
    void fullGearTravelsAsTheProportionsSay() {
        assertThat(17 * ValveEvents.at(CylinderForm.SHORT_TRAVEL.valve(), 0.75).travel())
                .isCloseTo(4.5, within(0.2));
        assertThat(18.5 * ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), 0.75).travel())
                .isCloseTo(7.4, within(0.2));
    }

    @Test
    void refusesWhatCanNotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Ends(1e5, 0.2, 1, 2e5));
        assertThatIllegalArgumentException().isThrownBy(() -> ends(1e6, 1.4));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ValveProportions(0.05, 0.04, 0, 1, 0.1))
                .withMessageContaining("lead");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CylinderForm(CylinderForm.SHORT_TRAVEL.valve(), 0.31, 0.7, 0.05))
                .withMessageContaining("clearance");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValveEvents.at(CylinderForm.SHORT_TRAVEL.valve(), 1.4))
                .withMessageContaining("cutoff");
    }
}
