package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the engine gave when it was last looked at: a change of these figures must be explained, none of them is published. */
class SteamEngineRegressionTests {

    private static final double TOLERANCE_PERCENT = 1e-6;

    private static Engine engine(String name) {
        return SteamEngine.of("EXPRESS".equals(name) ? EngineFixtures.express() : EngineFixtures.tank());
    }

    private static EngineState halfDown(Engine engine) {
        double waterKg = 0.95 * engine.parameters().boiler().waterFullKg();
        return new EngineState(Units.paFromPsi(150), waterKg, 2e6);
    }

    @ParameterizedTest
    @CsvSource({
        "EXPRESS, 1, 0.25, 20, 41083.799275103265, 45412.983520427544, 128160.61503840686, 2.1232055006437385",
        "EXPRESS, 1, 0.35, 12, 53591.09391034625, 69073.37773602862, 140288.59769230153, 1.8208886760011778",
        "EXPRESS, 0.5, 0.25, 25, 27566.281811345354, 35882.529558949296, 123227.96537693476, 1.8030036555080182",
        "EXPRESS, 0.25, 0.45, 8, 22211.567208971468, 85370.71493505294, 141987.23395911517, 0.6106210210726017",
        "TANK, 1, 0.25, 20, 24593.381636751255, 14548.319503252485, 103427.86476783712, 2.6286236621881063",
        "TANK, 1, 0.35, 12, 39416.85507572124, 24266.082191459485, 113215.35954115562, 2.5258368815460095",
        "TANK, 0.5, 0.25, 25, 14841.929126418945, 11239.201270668684, 99447.12995331576, 2.0534205258658447",
        "TANK, 0.25, 0.45, 8, 18143.9000137885, 31117.657600811952, 114586.18880911048, 0.9066647687952543"
    })
    void pulls(
            String name,
            double regulator,
            double cutoff,
            double speedMps,
            double cylinderN,
            double boilerN,
            double railN,
            double steamKgPerS) {
        Engine engine = engine(name);
        Pull pull = engine.pull(halfDown(engine), new Controls(regulator, cutoff), speedMps, RailState.DRY);
        assertThat(pull.cylinderForceN()).isCloseTo(cylinderN, withinPercentage(TOLERANCE_PERCENT));
        assertThat(pull.boilerForceN()).isCloseTo(boilerN, withinPercentage(TOLERANCE_PERCENT));
        assertThat(pull.railForceN()).isCloseTo(railN, withinPercentage(TOLERANCE_PERCENT));
        assertThat(pull.steamKgPerS()).isCloseTo(steamKgPerS, withinPercentage(TOLERANCE_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({
        "EXPRESS, 0.9, 0.12, 0.7, 45, 1022025.5820840057, 5158.155732864129, 2079699.5206785419",
        "EXPRESS, 0.1, 0.40, 0, 60, 1155054.4087555958, 5159.566898820098, 2790864.049684066",
        "TANK, 0.9, 0.12, 0.7, 45, 1013691.5941948954, 3030.146524003763, 2085005.0594432214",
        "TANK, 0.1, 0.40, 0, 60, 1137634.9533727795, 3005.4104373669575, 2425447.2967532054"
    })
    void steams(
            String name,
            double steamKgPerS,
            double coalKgPerS,
            double feedKgPerS,
            double durationS,
            double pressurePa,
            double waterKg,
            double fireW) {
        Engine engine = engine(name);
        EngineState after = engine.after(halfDown(engine), steamKgPerS, new Firing(coalKgPerS, feedKgPerS), durationS);
        assertThat(after.pressurePa()).isCloseTo(pressurePa, withinPercentage(TOLERANCE_PERCENT));
        assertThat(after.waterKg()).isCloseTo(waterKg, withinPercentage(TOLERANCE_PERCENT));
        assertThat(after.fireW()).isCloseTo(fireW, withinPercentage(TOLERANCE_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({"EXPRESS, 2.346937189658754, 0.10234577011534475", "TANK, 1.5549735069444444, 0.09920998001081519"})
    void evaporates(String name, double evaporationKgPerS, double coalKgPerS) {
        Engine engine = engine(name);
        double pressurePa = halfDown(engine).pressurePa();
        assertThat(engine.evaporationMaxKgPerS(pressurePa))
                .isCloseTo(evaporationKgPerS, withinPercentage(TOLERANCE_PERCENT));
        assertThat(engine.coalForSteamKgPerS(0.8, pressurePa))
                .isCloseTo(coalKgPerS, withinPercentage(TOLERANCE_PERCENT));
    }
}
