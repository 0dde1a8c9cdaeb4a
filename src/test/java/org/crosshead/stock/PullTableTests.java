package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import org.crosshead.kernel.resistance.RunningResistance;
import org.junit.jupiter.api.Test;

/** Checks that the table of pull asks the engine for each cutoff and speed, and carries its answers in the pages' units. */
class PullTableTests {

    private static final double LBF_PER_N = 0.22480894310;
    private static final RunningResistance OWN = new RunningResistance(4_000, 0, 10, 9_000);

    @Test
    void tellsWhatTheEngineAnswersAtEachCutoffAndSpeed() {
        PullTable table = PullTable.of(engine(), OWN);

        assertThat(table.cutoffs()).containsExactly(0.75, 0.60, 0.45, 0.35, 0.25, 0.20);
        assertThat(table.rows())
                .extracting(PullTable.Row::speedMph)
                .startsWith(0.0, 5.0)
                .endsWith(70.0, 75.0);
        PullTable.Row atTen = table.rows().get(2);
        assertThat(atTen.cylinderLbf().get(0)).isCloseTo(75_000 * LBF_PER_N, within(0.01));
        assertThat(atTen.boilerLbf()).isCloseTo(500_000 / 4.4704 * LBF_PER_N, within(0.01));
        assertThat(atTen.railLbf()).isCloseTo(90_000 * LBF_PER_N, within(0.01));
        double leftN = 75_000 - 4_000 - 10 * 4.4704 * 4.4704;
        assertThat(atTen.drawbarLbf()).isCloseTo(leftN * LBF_PER_N, within(0.01));
        assertThat(table.rows().get(0).drawbarLbf()).isCloseTo((75_000 - 9_000) * LBF_PER_N, within(0.01));
        double atSeventyFiveN = 500_000 / (75 * 0.44704) - 4_000 - 10 * Math.pow(75 * 0.44704, 2);
        assertThat(table.rows().get(15).drawbarLbf()).isCloseTo(Math.max(0, atSeventyFiveN) * LBF_PER_N, within(0.01));
    }

    @Test
    void setsNoLimitOfTheBoilerAtRest() {
        assertThat(PullTable.of(engine(), OWN).rows().get(0).boilerLbf()).isInfinite();
    }

    private static ConstantEngine engine() {
        ClassRevision revision = new ClassRevision(
                1, 1, Instant.EPOCH, "Anna", "first entry", StockFixtures.mixedTrafficClass(), List.of());
        return new ConstantEngine(((EngineFigures.Resolved) StockModel.engine(revision, null)).parameters());
    }
}
