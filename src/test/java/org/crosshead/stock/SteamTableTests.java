package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.SteamEngine;
import org.junit.jupiter.api.Test;

/** The table of steam against what one would expect of any engine. */
class SteamTableTests {

    private static LocomotiveParameters parameters() {
        ClassRevision revision = new ClassRevision(
                1, 1, Instant.EPOCH, "Anna", "first entry", StockFixtures.mixedTrafficClass(), List.of());
        return ((EngineFigures.Resolved) StockModel.engine(revision, null)).parameters();
    }

    @Test
    void longerCutoffsUseMoreSteamAndMoreForEachHorsePower() {
        SteamTable table = SteamTable.of(SteamEngine.of(parameters()));
        assertThat(table.cutoffs()).isSortedAccordingTo((one, two) -> Double.compare(two, one));
        assertThat(table.rows()).hasSizeGreaterThan(5);
        SteamTable.Row atThirty = table.rows().get(2);
        assertThat(atThirty.speedMph()).isEqualTo(30);
        for (int i = 1; i < table.cutoffs().size(); i++) {
            assertThat(atThirty.cells().get(i).steamLbPerHour())
                    .isLessThan(atThirty.cells().get(i - 1).steamLbPerHour());
            assertThat(atThirty.cells().get(i).steamLbPerHpHour())
                    .isLessThan(atThirty.cells().get(i - 1).steamLbPerHpHour());
        }
    }

    /** From memory: 16 to 20 lb for a horse-power hour superheated, 15 per cent; some 2 to 3 lb of coal. */
    @Test
    void economyAtAQuarterIsOfTheRightOrder() {
        SteamTable table = SteamTable.of(SteamEngine.of(parameters()));
        SteamTable.Cell cell = table.rows().get(2).cells().get(table.cutoffs().indexOf(0.25));
        assertThat(cell.keptUp()).isTrue();
        assertThat(cell.steamLbPerHpHour()).isBetween(16 * 0.85, 20 * 1.15);
        assertThat(cell.coalLbPerHpHour()).isBetween(1.5, 3.5);
    }

    @Test
    void whatTheBoilerDoesNotKeepUpHasNoCoal() {
        SteamTable table = SteamTable.of(SteamEngine.of(parameters()));
        SteamTable.Cell fullGearFast = table.rows().get(5).cells().get(0);
        assertThat(fullGearFast.keptUp()).isFalse();
        assertThat(fullGearFast.coalLbPerHpHour()).isNaN();
        assertThat(table.starting().leastOverMean()).isCloseTo(0.6, within(0.3));
    }
}
