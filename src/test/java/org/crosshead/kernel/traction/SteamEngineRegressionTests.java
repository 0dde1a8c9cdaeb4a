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
        return new EngineState(Units.paFromPsi(150), waterKg, 60);
    }

    @ParameterizedTest
    @CsvSource({
        "EXPRESS, 1, 0.25, 20, 35080.40283829008, 43785.82964892292, 128160.61503840686, 1.8803229882711323",
        "EXPRESS, 1, 0.35, 12, 51295.86146927137, 66223.54980560468, 140288.59769230153, 1.8179056440074393",
        "EXPRESS, 0.5, 0.25, 25, 20431.305505477056, 33070.09509714892, 123227.96537693476, 1.449980430452943",
        "EXPRESS, 0.25, 0.45, 8, 20217.507113251362, 73613.54407210805, 141987.23395911517, 0.644571864109697",
        "TANK, 1, 0.25, 20, 17912.892239520545, 22395.680422641733, 103427.86476783712, 1.2437252335966131",
        "TANK, 1, 0.35, 12, 37199.73585764176, 34570.0475387137, 113215.35954115562, 1.6732578588208828",
        "TANK, 0.5, 0.25, 25, 5667.576898995531, 13897.304337544392, 99447.12995331576, 0.6341468613232957",
        "TANK, 0.25, 0.45, 8, 15251.718600175433, 36057.75133435028, 114586.18880911048, 0.6577231657829873"
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
        "EXPRESS, 0.9, 0.12, 0.7, 45, 1013305.5356751606, 5158.242821647101, 61.70417818189081",
        "EXPRESS, 0.1, 0.40, 0, 60, 1059124.0421987677, 5160.505374272664, 82.18651355283168",
        "TANK, 0.9, 0.12, 0.7, 45, 1050440.398255648, 3029.945911021792, 60.076678354208575",
        "TANK, 0.1, 0.40, 0, 60, 1085343.7810895233, 3032.4756791529485, 82.08591955381516"
    })
    void steams(
            String name,
            double steamKgPerS,
            double coalKgPerS,
            double feedKgPerS,
            double durationS,
            double pressurePa,
            double waterKg,
            double fireKg) {
        Engine engine = engine(name);
        EngineState after = engine.after(halfDown(engine), steamKgPerS, new Firing(coalKgPerS, feedKgPerS), durationS);
        assertThat(after.pressurePa()).isCloseTo(pressurePa, withinPercentage(TOLERANCE_PERCENT));
        assertThat(after.waterKg()).isCloseTo(waterKg, withinPercentage(TOLERANCE_PERCENT));
        assertThat(after.fireKg()).isCloseTo(fireKg, withinPercentage(TOLERANCE_PERCENT));
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
