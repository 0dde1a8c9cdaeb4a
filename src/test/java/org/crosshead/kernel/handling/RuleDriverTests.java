package org.crosshead.kernel.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Whole runs of real engines' equals over an invented road, worked by the trade's rules. */
class RuleDriverTests {

    private static final RuleDriver DRIVER = new RuleDriver();
    private static final RuleFireman FIREMAN = new RuleFireman();
    private static final RunRequest BOOKED = DemonstrationRoad.express(8, true);
    private static final Run EXPRESS = Forecast.timed(BOOKED, DRIVER, FIREMAN).run();

    private static List<Change.HandlesSet> settings(Run run) {
        return run.changes().stream()
                .filter(Change.HandlesSet.class::isInstance)
                .map(Change.HandlesSet.class::cast)
                .toList();
    }

    @Test
    void energyBalances() {
        double worstJ = 0;
        for (int i = 0; i + 1 < EXPRESS.size(); i++) {
            double lengthM = EXPRESS.positionM(i + 1) - EXPRESS.positionM(i);
            double netN = EXPRESS.pullN(i)
                    - EXPRESS.resistanceN(i)
                    - EXPRESS.gravityN(i)
                    - EXPRESS.curveN(i)
                    - EXPRESS.brakeN(i);
            double kineticJ =
                    EXPRESS.inertiaKg(i) * (square(EXPRESS.speedMps(i + 1)) - square(EXPRESS.speedMps(i))) / 2;
            worstJ = Math.max(worstJ, Math.abs(netN * lengthM - kineticJ));
        }
        double greatestJ = EXPRESS.inertiaKg(0) * square(26.8) / 2;
        assertThat(worstJ / greatestJ).isLessThan(1e-6);
    }

    /** Neither at the mark nor anywhere else is more asked of the brake than the service application gives. */
    @Test
    void brakesWithNoMoreThanTheServiceBrake() {
        double fullN = BOOKED.train().service().force().forceN(0);
        double mostN = 0;
        for (int i = 0; i < EXPRESS.size(); i++) {
            mostN = Math.max(mostN, EXPRESS.brakeN(i));
        }
        assertThat(mostN).isGreaterThan(0.5 * fullN).isLessThanOrEqualTo(fullN);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void keepsBookedTimeAndArrivesInRunningOrder() {
        assertThat(EXPRESS.callTimes()).hasSize(5);
        assertThat(EXPRESS.callTimes().get(1).arrivalS()).isBetween(1_400.0, 1_500.0);
        assertThat(EXPRESS.callTimes().get(2).arrivalS()).isBetween(2_700.0, 2_800.0);
        assertThat(EXPRESS.callTimes().get(3).arrivalS()).isBetween(4_900.0, 5_000.0);
        assertThat(EXPRESS.callTimes().get(4).arrivalS()).isBetween(8_200.0, 8_300.0);
        assertThat(EXPRESS.endM()).isEqualTo(DemonstrationRoad.LENGTH_M - 100);
    }

    /** Common practice, no source: started in full gear with the cocks open, shut after about six beats. */
    @Test
    void startsInFullGearAndShutsTheCocksAfterSixBeats() {
        Change.HandlesSet first = settings(EXPRESS).get(0);
        assertThat(first.handles().cocksOpen()).isTrue();
        assertThat(first.handles().controls().cutoff()).isEqualTo(0.75);
        Change.HandlesSet shut = settings(EXPRESS).stream()
                .filter(change -> !change.handles().cocksOpen())
                .findFirst()
                .orElseThrow();
        double turnM = Math.PI * Units.metresFromInches(74);
        assertThat(EXPRESS.positionM(shut.sample()) - 200).isBetween(1.5 * turnM - 0.5, 1.5 * turnM + 4);
    }

    /** Common practice, no source: never worked below the least cutoff of the class. */
    @Test
    void isNeverWorkedBelowTheLeastCutoff() {
        for (Change.HandlesSet change : settings(EXPRESS)) {
            if (change.handles().controls().regulator() > 0) {
                assertThat(change.handles().controls().cutoff()).isBetween(0.2, 0.75);
            }
        }
    }

    @Test
    void boilerStaysBetweenItsLimitsAndNoStopIsOverrun() {
        for (int i = 0; i < EXPRESS.size(); i++) {
            assertThat(EXPRESS.pressurePa(i)).isBetween(Units.paFromPsi(110), Units.paFromPsi(225) + 1);
            assertThat(EXPRESS.waterKg(i)).isBetween(3_910.0, 5_440.0);
        }
        assertThat(EXPRESS.tankWaterKg(EXPRESS.size() - 1, 0)).isPositive();
        assertThat(EXPRESS.coalTotalKg(0)).isBetween(600.0, 2_000.0);
    }

    @Test
    void heavierTrainTellsOfBoilerAndBank() {
        Run heavy = Forecast.unhurried(DemonstrationRoad.express(14, false), DRIVER, FIREMAN)
                .run();
        assertThat(settings(heavy).stream().map(change -> change.handles().cause()))
                .contains(Cause.BANK_BEGINS, Cause.SPEED_RISES, Cause.STOP_AHEAD);
        assertThat(heavy.pressurePa(heavy.lowestPressure(0))).isLessThan(Units.paFromPsi(190));
    }

    @Test
    void halvedStepsTellTheErrorOfTheSteps() {
        RunRequest request = DemonstrationRoad.express(8, false);
        double wholeS = Forecast.unhurried(request, DRIVER, FIREMAN).run().durationS();
        double halvesS = finer(request, 0.5);
        double quartersS = finer(request, 0.25);
        assertThat(halvesS).isCloseTo(wholeS, withinPercentage(0.5));
        assertThat(quartersS).isCloseTo(halvesS, withinPercentage(0.5));
    }

    private static double finer(RunRequest request, double share) {
        return org.crosshead.kernel.motion.FinerForecast.of(request, DRIVER, FIREMAN, share)
                .run()
                .durationS();
    }

    @Test
    void sameRequestGivesTheSameRun() {
        Run again = Forecast.timed(BOOKED, DRIVER, FIREMAN).run();
        assertThat(again.durationS()).isEqualTo(EXPRESS.durationS());
        assertThat(again.coalTotalKg(0)).isEqualTo(EXPRESS.coalTotalKg(0));
        assertThat(again.changes()).isEqualTo(EXPRESS.changes());
    }

    @Test
    void overloadedTrainStallsAndItsLimitIsTold() {
        RunRequest request = DemonstrationRoad.tank(22);
        RunOutcome outcome = Forecast.unhurried(request, DRIVER, FIREMAN);
        assertThat(outcome).isInstanceOf(RunOutcome.Stalls.class);
        assertThat(((RunOutcome.Stalls) outcome).positionM()).isBetween(19_000.0, 29_000.0);
        LoadLimit limit = LoadLimit.of(request, DRIVER, FIREMAN);
        double loadKg = 22 * Units.kgFromLongTons(33);
        assertThat(limit.greatestLoadKg()).isBetween(0.3 * loadKg, 0.99 * loadKg);
        assertThat(limit.assistanceN()).isBetween(1_000.0, 80_000.0);
        assertThat(Forecast.unhurried(request.withTrailing(limit.greatestLoadKg() / loadKg), DRIVER, FIREMAN))
                .isInstanceOf(RunOutcome.Arrives.class);
    }

    @Test
    void trainThatArrivesNeedsNoHelp() {
        LoadLimit limit = LoadLimit.of(DemonstrationRoad.express(8, false), DRIVER, FIREMAN);
        assertThat(limit.assistanceN()).isZero();
        assertThat(limit.greatestLoadKg()).isGreaterThan(8 * Units.kgFromLongTons(33));
    }
}
