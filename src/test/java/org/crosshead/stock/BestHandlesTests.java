package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** The handles named give the pull, the boiler keeps them up, and no other setting of a finer search uses much less. */
class BestHandlesTests {

    private static final SteamEngine ENGINE = SteamEngine.of(EngineFixtures.express());

    @Test
    void giveThePullAndUseLeast() {
        BestHandles best = BestHandles.of(ENGINE);
        EngineState state = new EngineState(
                ENGINE.parameters().boiler().pressureMaxPa(),
                ENGINE.parameters().boiler().waterFullKg(),
                0);
        int found = 0;
        for (BestHandles.Row row : best.rows()) {
            double speedMps = Units.mpsFromMph(row.speedMph());
            for (int i = 0; i < row.cells().size(); i++) {
                Optional<BestHandles.Cell> cell = row.cells().get(i);
                if (cell.isEmpty()) {
                    continue;
                }
                found++;
                double wantedN = Units.newtonsFromLongTonsForce(best.pullsTons().get(i));
                Pull pull = ENGINE.pull(state, cell.get().controls(), speedMps, RailState.DRY);
                assertThat(pull.forceN()).isBetween(wantedN, 1.1 * wantedN);
                assertThat(pull.steamKgPerS()).isLessThanOrEqualTo(ENGINE.evaporationMaxKgPerS(state.pressurePa()));
                assertThat(cell.get().steamLbPerHpHour()).isLessThan(1.02 * finest(state, wantedN, speedMps));
            }
        }
        assertThat(found).isGreaterThan(10);
        assertThat(best.rows().get(6).cells().get(4)).isEmpty();
    }

    private static double finest(EngineState state, double wantedN, double speedMps) {
        double least = Double.POSITIVE_INFINITY;
        for (double regulator = 0.2; regulator <= 1; regulator += 0.05) {
            for (double cutoff = 0.2; cutoff <= 0.75; cutoff += 0.005) {
                Pull pull = ENGINE.pull(state, new Controls(regulator, cutoff), speedMps, RailState.DRY);
                if (pull.forceN() >= wantedN && pull.forceN() <= 1.05 * wantedN) {
                    double rate =
                            Units.lbFromKg(pull.steamKgPerS()) * 3_600 / Units.hpFromWatts(pull.forceN() * speedMps);
                    least = Math.min(least, rate);
                }
            }
        }
        return least;
    }
}
