package org.crosshead.kernel.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.Planner;
import org.crosshead.kernel.resistance.RunningResistance;
import org.junit.jupiter.api.Test;

class ScatteredRunsTests {

    private static final Spread USUAL = new Spread(0.07, 0.2, 0.15, 0.04, 4, 5, 20_000, 0.05);
    private static final RunRequest REQUEST = DemonstrationRoad.stretched(25_000, 8);
    private static final Plan PLAN = Planner.plan(REQUEST).orElseThrow();
    private static final Run FORECAST = PLAN.outcome().run();

    private static ScatteredRuns runs(Spread spread) {
        return new ScatteredRuns(REQUEST, FORECAST, PLAN, spread);
    }

    private static Day day(double coalHeat, double adhesion, double resistance, double load, double windMps) {
        List<Double> punctual = Collections.nCopies(PLAN.settings().size(), 0.0);
        return new Day(coalHeat, adhesion, resistance, load, windMps, 0, 0, punctual);
    }

    private static Run run(Day day) {
        RunOutcome outcome = runs(Spread.NONE).run(day);
        assertThat(outcome).isInstanceOf(RunOutcome.Arrives.class);
        return outcome.run();
    }

    @Test
    void withoutScatterEveryDayIsAsForecast() {
        Bands bands = runs(Spread.NONE).bands(3);
        assertThat(bands.standsM()).isEmpty();
        assertThat(bands.leastPressurePa()).isEqualTo(FORECAST.pressurePa(FORECAST.lowestPressure(0)));
        assertThat(bands.leastWaterKg()).isEqualTo(FORECAST.waterKg(FORECAST.lowestWater(0)));
        for (int i = 0; i < bands.placesM().size(); i++) {
            int sample = FORECAST.sampleAt(bands.placesM().get(i));
            assertThat(bands.pressurePa().middle().get(i)).isEqualTo(FORECAST.pressurePa(sample));
            assertThat(bands.waterKg().middle().get(i)).isEqualTo(FORECAST.waterKg(sample));
            assertThat(bands.coalKg().middle().get(i)).isEqualTo(FORECAST.coalBurntKg(sample, 0));
        }
    }

    @Test
    void bandsAreTheSameOnOneCoreAndOnAll() throws ExecutionException, InterruptedException {
        Bands all = runs(USUAL).bands(40);
        ForkJoinPool one = new ForkJoinPool(1);
        try {
            assertThat(one.submit(() -> runs(USUAL).bands(40)).get()).isEqualTo(all);
        } finally {
            one.shutdown();
        }
    }

    @Test
    void bandsOpenAlongTheRoadAndHoldTheForecast() {
        Bands bands = runs(USUAL).bands(200);
        assertThat(bands.standsM()).isEmpty();
        int last = bands.placesM().size() - 1;
        double width = bands.coalKg().high().get(last) - bands.coalKg().low().get(last);
        assertThat(width).isGreaterThan(0.1 * bands.coalKg().middle().get(last));
        for (int i = 0; i <= last; i++) {
            assertThat(bands.coalKg().low().get(i))
                    .isLessThanOrEqualTo(bands.coalKg().middle().get(i));
            assertThat(bands.coalKg().middle().get(i))
                    .isLessThanOrEqualTo(bands.coalKg().high().get(i));
            assertThat(bands.pressurePa().high().get(i)).isLessThan(1.05 * 1.55e6);
            assertThat(bands.leastPressurePa())
                    .isLessThanOrEqualTo(bands.pressurePa().low().get(i));
            assertThat(bands.leastWaterKg())
                    .isLessThanOrEqualTo(bands.waterKg().low().get(i));
        }
        Bands.Arrival arrival = bands.calls().get(bands.calls().size() - 1);
        assertThat(arrival.lowS()).isLessThan(FORECAST.durationS());
        assertThat(arrival.highS()).isGreaterThan(FORECAST.durationS());
    }

    @Test
    void poorerCoalIsPutOnInProportion() {
        double usual = run(day(1, 1, 1, 1, 0)).coalTotalKg(0);
        double poorer = run(day(0.9, 1, 1, 1, 0)).coalTotalKg(0);
        assertThat(poorer / usual).isBetween(1.05, 1.15);
    }

    @Test
    void moreResistanceLoadOrWindAgainstMakesTheTrainLater() {
        double usualS = run(day(1, 1, 1, 1, 0)).durationS();
        assertThat(run(day(1, 1, 1.2, 1, 0)).durationS()).isGreaterThan(usualS);
        assertThat(run(day(1, 1, 1, 1.1, 0)).durationS()).isGreaterThan(usualS);
        assertThat(run(day(1, 1, 1, 1, 8)).durationS()).isGreaterThan(usualS);
    }

    @Test
    void worseRailIsEasedForMoreOften() {
        Bands usual = runs(new Spread(0, 0.05, 0, 0, 0, 0, 0, 0)).bands(60);
        Bands wider = runs(new Spread(0, 0.3, 0, 0, 0, 0, 0, 0)).bands(60);
        int usualDays = usual.easedDays().stream().mapToInt(Integer::intValue).sum();
        int widerDays = wider.easedDays().stream().mapToInt(Integer::intValue).sum();
        assertThat(widerDays).isGreaterThan(usualDays);
    }

    @Test
    void windChangesTheSpeedOfTheAir() {
        RunningResistance calm = new RunningResistance(8_000, 500, 12, 12_000);
        for (double windMps : new double[] {-15, -4, 0, 4, 15}) {
            RunningResistance windy = ScatteredTrain.windy(calm, windMps);
            for (double speedMps : new double[] {16, 22, 30}) {
                double airMps = speedMps + windMps;
                assertThat(windy.forceN(speedMps))
                        .isCloseTo(8_000 + 500 * speedMps + 12 * airMps * airMps, within(1e-9 * 50_000));
            }
        }
    }
}
