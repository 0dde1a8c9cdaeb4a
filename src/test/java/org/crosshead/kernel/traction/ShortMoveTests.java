package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.traction.ShortMove.Burst;
import org.crosshead.kernel.traction.ShortMove.Load;
import org.crosshead.kernel.traction.ShortMove.Move;
import org.junit.jupiter.api.Test;

class ShortMoveTests {

    private static final LocomotiveParameters TANK = EngineFixtures.tank();
    private static final double PRESSURE_PA = TANK.boiler().pressureMaxPa();
    private static final Load LIGHT = new Load(70_000, 6_000, 5_000);

    private static Move move(double openS, double regulator, boolean cocks) {
        return ShortMove.of(TANK, PRESSURE_PA, LIGHT, new Burst(openS, regulator, cocks));
    }

    @Test
    void aBurstMovesHerTheSameDistanceEveryTimeAndSheRunsOn() {
        Move once = move(2, 0.5, false);
        assertThat(once).isEqualTo(move(2, 0.5, false));
        assertThat(once.movedM()).isBetween(1.0, 100.0);
        assertThat(once.ranOnM()).isBetween(0.3 * once.movedM(), once.movedM());
        assertThat(once.lagS()).isBetween(0.001, 1.0);
    }

    @Test
    void openCocksTakePullAway() {
        Move shut = move(2, 0.5, false);
        Move open = move(2, 0.5, true);
        assertThat(open.movedM()).isLessThan(0.9 * shut.movedM());
        assertThat(open.topMps()).isLessThan(shut.topMps());
    }

    @Test
    void longerWiderHotterMovesFurtherHeavierLess() {
        double usual = move(2, 0.5, false).movedM();
        assertThat(move(3, 0.5, false).movedM()).isGreaterThan(usual);
        assertThat(move(2, 0.7, false).movedM()).isGreaterThan(usual);
        assertThat(move(0.5, 0.5, false).movedM()).isLessThan(usual);
        assertThat(ShortMove.of(TANK, 0.6 * PRESSURE_PA, LIGHT, new Burst(2, 0.5, false))
                        .movedM())
                .isLessThan(usual);
        assertThat(ShortMove.of(TANK, PRESSURE_PA, new Load(140_000, 6_000, 5_000), new Burst(2, 0.5, false))
                        .movedM())
                .isLessThan(usual);
    }

    /** A chest as large as the cylinders, swept twice in a turn: pi D / (2 c), plus the superheater's elements. */
    @Test
    void pullDiesAwayWithinAChainUnderWay() {
        double chainM = 20.1168;
        for (LocomotiveParameters engine : List.of(TANK, EngineFixtures.express())) {
            double plainM = Math.PI * engine.cylinders().wheelDiameterM() / (2 * 0.25);
            double pistonsM2 = engine.cylinders().count()
                    * Math.PI
                    / 4
                    * Math.pow(engine.cylinders().boreM(), 2);
            double elements = 0.007
                    * engine.boiler().superheaterM2()
                    / (pistonsM2 * engine.cylinders().strokeM());
            assertThat(ShortMove.lagM(engine, 0.25))
                    .isCloseTo(plainM * (1 + elements), withinPercentage(1e-6))
                    .isLessThan(1.5 * chainM);
            assertThat(ShortMove.lagM(engine, 0.5)).isCloseTo(ShortMove.lagM(engine, 0.25) / 2, withinPercentage(1e-6));
        }
    }

    @Test
    void withoutSteamOrAgainstTooMuchNothingMoves() {
        assertThat(move(2, 0, false).movedM()).isZero();
        assertThat(ShortMove.of(TANK, PRESSURE_PA, new Load(70_000, 1e9, 5_000), new Burst(2, 1, false)))
                .satisfies(move -> assertThat(move.movedM()).isZero())
                .satisfies(move -> assertThat(move.topMps()).isZero());
    }

    /** Energy: what the steam's pull does from stand to stand is what rolling takes; the pull is at most that of full pressure. */
    @Test
    void runsOnAsRollingAllows() {
        Move move = move(2, 0.5, false);
        double coasting = move.topMps() * move.topMps() * LIGHT.inertiaKg() / 2 / LIGHT.rollingN();
        assertThat(move.ranOnM()).isGreaterThan(coasting);
        double fullN = 0.85 * PRESSURE_PA * TANK.cylinders().forcePerPressureM2();
        assertThat(move.topMps()).isLessThan((fullN - LIGHT.rollingN()) / LIGHT.inertiaKg() * 10);
    }

    /** Held at rest the chest comes to boiler pressure, and the steam in it is what went in: m = V p / (p v). */
    @Test
    void fillsTheChestToBoilerPressureAtRest() {
        Move held = ShortMove.of(TANK, PRESSURE_PA, new Load(70_000, 1e9, 1e9), new Burst(60, 0.5, false));
        double chestM3 = 2
                * Math.PI
                / 4
                * Math.pow(TANK.cylinders().boreM(), 2)
                * TANK.cylinders().strokeM();
        double absPa = PRESSURE_PA + 101_325;
        double volume = SaturatedSteam.table().steamVolume(absPa);
        assertThat(held.steamKg()).isCloseTo(chestM3 / volume * (1 - 101_325 / absPa), withinPercentage(0.5));
        assertThat(held.lagS()).isCloseTo(0, within(1e-12));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> move(-1, 0.5, false));
        assertThatIllegalArgumentException().isThrownBy(() -> move(2, 1.2, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new Load(0, 1, 1));
    }
}
