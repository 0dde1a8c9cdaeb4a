package org.crosshead.kernel.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** The table against the diagrams it stands for, and the laws it must keep. */
class CylinderTableTests {

    private static final double MOST_PA = Units.paFromPsi(225);
    private static final CylinderTable.Bore BORE = new CylinderTable.Bore(0.47, 0.7);
    private static final Superheat HOT = Superheat.of(110);
    private static final CylinderTable LONG = CylinderTable.of(BORE, CylinderForm.LONG_TRAVEL, HOT, MOST_PA);
    private static final CylinderTable SHORT =
            CylinderTable.of(BORE, CylinderForm.SHORT_TRAVEL, Superheat.of(0), MOST_PA);

    /** Working range: half of the pressure and more, 15 to 75 per cent, 50 to 1,200 ft/min; 300 seeded places. */
    @Test
    void straightLinesBetweenNodesKeepToTheDiagramWithinTwoPerCent() {
        Random random = new Random(4);
        for (int i = 0; i < 300; i++) {
            double chestPa = MOST_PA * (0.5 + 0.5 * random.nextDouble());
            double cutoff = 0.15 + 0.6 * random.nextDouble();
            double pistonMps = Units.mpsFromFeetPerMinute(50 + 1_150 * random.nextDouble());
            double steam = LONG.steamKgPerM3(chestPa, cutoff, pistonMps)
                    / (1 + MissingQuantity.share(cutoff, pistonMps, HOT.kelvins()));
            double absolutePa = chestPa + SaturatedSteam.ATMOSPHERE_PA;
            double backPa =
                    SaturatedSteam.ATMOSPHERE_PA + CylinderTable.blastPa(CylinderForm.LONG_TRAVEL, steam, pistonMps);
            Diagram diagram = IndicatorDiagram.of(
                    CylinderForm.LONG_TRAVEL,
                    ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), cutoff),
                    new IndicatorDiagram.Ends(
                            absolutePa, 1 / HOT.density(absolutePa), IndicatorDiagram.EXPONENT_SUPERHEATED, backPa),
                    new IndicatorDiagram.Pace(BORE.strokeM() / BORE.boreM(), pistonMps / BORE.boreM()));
            String where = String.format("%.0f Pa, %.3f, %.2f m/s", chestPa, cutoff, pistonMps);
            assertThat(LONG.meanPressurePa(chestPa, cutoff, pistonMps))
                    .as(where)
                    .isCloseTo(diagram.meanPressurePa(), withinPercentage(2.0));
            assertThat(steam).as(where).isCloseTo(diagram.steamKgPerM3(), withinPercentage(2.0));
        }
    }

    @Test
    void morePressureAndUpToAThousandFeetMoreCutoffGiveMoreAndMoreSpeedNeverMore() {
        for (CylinderTable table : new CylinderTable[] {LONG, SHORT}) {
            for (double share = 0.3; share < 0.92; share += 0.1) {
                for (double cutoff = 0.15; cutoff < 0.74; cutoff += 0.03) {
                    for (double ftPerMin = 0; ftPerMin < 1_400; ftPerMin += 37) {
                        double pistonMps = Units.mpsFromFeetPerMinute(ftPerMin);
                        double here = table.meanPressurePa(share * MOST_PA, cutoff, pistonMps);
                        // Beyond, the blast takes back what more steam gives.
                        if (ftPerMin <= 1_000) {
                            assertThat(table.meanPressurePa(share * MOST_PA, cutoff + 0.03, pistonMps))
                                    .isGreaterThan(here);
                        }
                        assertThat(table.meanPressurePa((share + 0.05) * MOST_PA, cutoff, pistonMps))
                                .isGreaterThan(here);
                        if (ftPerMin >= 150) {
                            assertThat(table.meanPressurePa(share * MOST_PA, cutoff, pistonMps + 0.05))
                                    .as("%s %.2f %.2f %.0f", table == LONG, share, cutoff, ftPerMin)
                                    .isLessThanOrEqualTo(here);
                        }
                    }
                }
            }
        }
    }

    /** A ten-thousandth of the range never moves the answer by more than a five-hundredth of chest pressure. */
    @Test
    void isContinuousInAllThree() {
        double step = 1e-4;
        for (double x = 0.02; x < 0.99; x += 0.0137) {
            double here = SHORT.meanPressurePa(x * MOST_PA, 0.1 + 0.7 * x, 10 * x);
            double next = SHORT.meanPressurePa((x + step) * MOST_PA, 0.1 + 0.7 * (x + step), 10 * (x + step));
            assertThat(Math.abs(next - here)).isLessThan(MOST_PA / 500);
        }
    }

    @Test
    void moreIsMissingAtShortCutoffsAndLittleOfSuperheatedSteam() {
        double pistonMps = Units.mpsFromFeetPerMinute(500);
        assertThat(MissingQuantity.share(0.2, pistonMps, 0)).isBetween(0.30, 0.40);
        assertThat(MissingQuantity.share(0.7, pistonMps, 0)).isBetween(0.15, 0.20);
        assertThat(MissingQuantity.share(0.2, pistonMps, 150)).isEqualTo(0.12);
        assertThat(MissingQuantity.share(0.2, 2 * pistonMps, 0)).isLessThan(MissingQuantity.share(0.2, pistonMps, 0));
    }
}
