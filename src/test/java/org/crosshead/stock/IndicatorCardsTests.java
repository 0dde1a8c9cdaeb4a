package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.Instant;
import java.util.List;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.IndicatorCards.Card;
import org.crosshead.stock.IndicatorCards.Point;
import org.junit.jupiter.api.Test;

/** The diagrams drawn for a class: their area is the work that they state, and the engine works by them. */
class IndicatorCardsTests {

    private static LocomotiveParameters parameters() {
        ClassRevision revision = new ClassRevision(
                1, 1, Instant.EPOCH, "Anna", "first entry", StockFixtures.mixedTrafficClass(), List.of());
        return ((EngineFigures.Resolved) StockModel.engine(revision, null)).parameters();
    }

    /** The planimeter: area within the drawn line over its length, by the trapezium rule. */
    @Test
    void areaWithinTheLineIsTheMeanPressure() {
        for (Card card : IndicatorCards.of(parameters()).cards()) {
            double area = 0;
            for (int i = 0; i < card.points().size(); i++) {
                Point here = card.points().get(i);
                Point next = card.points().get((i + 1) % card.points().size());
                area += (here.psi() + next.psi()) / 2 * (next.strokeShare() - here.strokeShare());
            }
            assertThat(area).as("%s", card.cutoff()).isCloseTo(card.meanPsi(), withinPercentage(0.5));
        }
    }

    /** The engine reads its mean pressure from a table between nodes; 3 per cent of the chest's is what that leaves. */
    @Test
    void enginePullsByTheDiagramsDrawn() {
        LocomotiveParameters parameters = parameters();
        SteamEngine engine = SteamEngine.of(parameters);
        EngineState state = new EngineState(
                parameters.boiler().pressureMaxPa(), parameters.boiler().waterFullKg(), 0);
        List<Card> cards = IndicatorCards.of(parameters).cards();
        for (Card card : cards.subList(1, cards.size())) {
            double speedMps = Units.mpsFromMph(card.speedMph());
            Pull pull = engine.pull(state, new Controls(1, card.cutoff()), speedMps, RailState.DRY);
            double meanPa = pull.cylinderForceN() / parameters.cylinders().forcePerPressureM2();
            assertThat(meanPa / parameters.boiler().pressureMaxPa())
                    .as("%s", card.cutoff())
                    .isCloseTo(card.chestShare(), within(0.03));
            double strokesPerS = 2
                    * parameters.cylinders().count()
                    * speedMps
                    / (Math.PI * parameters.cylinders().wheelDiameterM());
            assertThat(Units.lbFromKg(pull.steamKgPerS()) / strokesPerS).isCloseTo(card.steamLb(), withinPercentage(8));
        }
    }

    @Test
    void fullGearFillsTheCylinderAndShortCutoffsExpandTheSteam() {
        List<Card> cards = IndicatorCards.of(parameters()).cards();
        assertThat(cards).hasSize(3);
        Card starting = cards.get(0);
        Card running = cards.get(2);
        assertThat(starting.chestShare()).isBetween(0.85, 1.0);
        assertThat(starting.terminalPsi()).isGreaterThan(2 * running.terminalPsi());
        assertThat(running.backPsi()).isGreaterThan(0);
        assertThat(running.steamLb()).isLessThan(0.5 * starting.steamLb());
        assertThat(running.condensedShare()).isBetween(0.0, 0.4);
    }
}
