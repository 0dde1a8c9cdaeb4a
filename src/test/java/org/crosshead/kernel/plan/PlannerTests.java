package org.crosshead.kernel.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.crosshead.kernel.handling.DemonstrationRoad;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.handling.RuleFireman;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Forecast;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunPolicy;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans on invented roads: in time, within bounds, no dearer than the rules of the trade, and near the best there is. */
class PlannerTests {

    private static final double LATE_S = 30;
    private static final double PRESSURE_SHARE = 0.85;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 24);
    }

    private static Plan plan(RunRequest request) {
        return Planner.plan(request).orElseThrow();
    }

    private static Run arrived(RunOutcome outcome) {
        assertThat(outcome).isInstanceOf(RunOutcome.Arrives.class);
        return outcome.run();
    }

    private static double bookedS(RunRequest request) {
        return request.calls().get(1).times().arrivalS().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isInTimeAndBurnsNoMoreThanTheRules(int seed) {
        RunRequest request = PlanTrips.random(seed);
        Run planned = arrived(plan(request).outcome());
        Run byRules = arrived(Forecast.timed(request, new RuleDriver(), new RuleFireman()));
        assertThat(planned.durationS()).isLessThanOrEqualTo(bookedS(request) + LATE_S);
        assertThat(PlanTrips.coalKg(request, planned)).isLessThan(PlanTrips.coalKg(request, byRules));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepsToItsBounds(int seed) {
        RunRequest request = PlanTrips.random(seed);
        Plan plan = plan(request);
        Run run = arrived(plan.outcome());
        EngineState start = run.state(0, 0);
        var boiler = request.train().engines().get(0).engine().parameters().boiler();
        for (int i = 0; i < run.size(); i++) {
            double allowedMps = request.road().track().limits().limitAt(Math.min(run.positionM(i) + 1, run.endM()));
            assertThat(run.speedMps(i)).isLessThanOrEqualTo(allowedMps + 0.3);
            assertThat(run.waterKg(i)).isGreaterThan(boiler.waterLeastKg());
        }
        double least = run.pressurePa(run.lowestPressure(0));
        assertThat(least).isGreaterThan((PRESSURE_SHARE - 0.05) * start.pressurePa());
        assertThat(plan.cost().hardest()).isLessThan(1.02);
    }

    /** Changes outside starting away: not more than three for each ten kilometres, none within a minute of another. */
    @ParameterizedTest
    @MethodSource("seeds")
    void asksLittleOfTheCrew(int seed) {
        RunRequest request = PlanTrips.random(seed);
        Plan plan = plan(request);
        double lengthKm = (request.endM() - request.startM()) / 1_000;
        assertThat(plan.settings().size() - 1).isLessThanOrEqualTo((int) Math.ceil(0.3 * lengthKm));
        Run run = arrived(plan.outcome());
        for (int i = 2; i < plan.settings().size(); i++) {
            double apartS = run.at(plan.settings().get(i).fromM()).timeS()
                    - run.at(plan.settings().get(i - 1).fromM()).timeS();
            assertThat(apartS).isGreaterThan(55);
        }
        plan.settings().forEach(setting -> {
            double fives = setting.controls().cutoff() * 20;
            boolean full = setting.controls().cutoff() == 0.75;
            assertThat(full || Math.abs(fives - Math.round(fives)) < 1e-9).isTrue();
            assertThat(setting.controls().regulator()).isIn(0.0, 0.5, 1.0);
        });
    }

    /** At equal time against a lattice of speeds half as wide: at most 0.6 per cent dearer. Tenfold: see docs/performance.md. */
    @ParameterizedTest
    @MethodSource("seeds")
    void bareOptimumIsNearAFinerOne(int seed) {
        SpeedProgramme.Fineness half = new SpeedProgramme.Fineness(1, 0.1, 12);
        assertThat(gap(PlanTrips.random(seed), new BareOptimum.Polish(half, 4))).isLessThan(0.006);
    }

    static double gap(RunRequest request, BareOptimum.Polish finer) {
        double leastPa = PRESSURE_SHARE
                * request.train()
                        .engines()
                        .get(0)
                        .engine()
                        .parameters()
                        .boiler()
                        .pressureMaxPa();
        BareOptimum plain = BareOptimum.of(request, leastPa).orElseThrow();
        BareOptimum fine = BareOptimum.of(request, leastPa, finer).orElseThrow();
        double price = fine.prices.timeKgPerS[0];
        double equalKg = plain.account.coalKg + price * (totalS(plain) - totalS(fine));
        return equalKg / fine.account.coalKg - 1;
    }

    private static double totalS(BareOptimum optimum) {
        SpeedPath path = optimum.paths.get(0);
        return path.timeS(path.fromNode(), path.fromNode() + path.cells());
    }

    private static RunRequest weighed(RunRequest request, RunPolicy.Weights weights) {
        RunPolicy policy = request.policy();
        return new RunRequest(
                request.road(),
                request.train(),
                request.calls(),
                new RunPolicy(policy.brakingMargin(), policy.coastS(), policy.speedMaxMps(), weights));
    }

    private static double waterKg(RunRequest request) {
        return BareOptimum.of(request, 0.85 * 1.55e6).orElseThrow().paths.stream()
                .mapToDouble(path -> Arrays.stream(path.steamKg()).sum())
                .sum();
    }

    /** Where water is dear as little steam is used as may be at that time, and no more coal for it than the weight says. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5, 11})
    void dearWaterIsSaved(int seed) {
        RunRequest request = PlanTrips.random(seed);
        double usual = waterKg(request);
        double saving = waterKg(weighed(request, new RunPolicy.Weights(1, 0.01, 8)));
        assertThat(saving).isLessThan(usual);
    }

    /** A time that cannot be kept is driven for as hard as lateness is worth. */
    @Test
    void trainRunsForItsTimeAsHardAsLatenessIsWorth() {
        RunRequest hard = PlanTrips.trip(
                new double[] {0, 8_000, 16_000, 24_000}, new double[] {0, 0.008, 0}, 10, OptionalDouble.of(1_000));
        Plan usual = plan(hard);
        Plan easy = plan(weighed(hard, new RunPolicy.Weights(0, 0.01, 1)));
        assertThat(arrived(easy.outcome()).durationS())
                .isGreaterThan(arrived(usual.outcome()).durationS() + 5);
        assertThat(PlanTrips.coalKg(hard, easy.outcome().run()))
                .isLessThan(PlanTrips.coalKg(hard, usual.outcome().run()));
    }

    /** A bank of 1 in 40 with twelve coaches: the express does not take them; with fewer it does. */
    @Test
    void trainWithoutAPlanIsToldWhyAndWithWhatLoadThereIsOne() {
        RunRequest heavy = PlanTrips.trip(
                new double[] {0, 3_000, 12_000, 15_000}, new double[] {0, 0.025, 0}, 12, OptionalDouble.empty());
        assertThat(Planner.plan(heavy)).isEmpty();
        PlanFailure failure = Planner.failure(heavy).orElseThrow();
        assertThat(failure.limit()).isIn(PlanFailure.Limit.PULL, PlanFailure.Limit.SETTINGS, PlanFailure.Limit.STANDS);
        assertThat(failure.loadShare()).isBetween(0.1, 0.95);
        assertThat(failure.withMoreTime()).isFalse();
        assertThat(Planner.plan(heavy.withTrailing(failure.loadShare()))).isPresent();
        assertThat(Planner.plan(heavy.withTrailing(failure.loadShare() + 1.0 / 16)))
                .isEmpty();
        assertThat(Planner.failure(PlanTrips.random(3))).isEmpty();
    }

    @Test
    void sameInputGivesTheSamePlanToTheLastBit() {
        RunRequest request = PlanTrips.random(7);
        Plan first = plan(request);
        Plan second = plan(request);
        assertThat(second.settings()).isEqualTo(first.settings());
        assertThat(second.cost()).isEqualTo(first.cost());
        Run a = first.outcome().run();
        Run b = second.outcome().run();
        assertThat(b.size()).isEqualTo(a.size());
        for (int i = 0; i < a.size(); i++) {
            assertThat(b.timeS(i)).isEqualTo(a.timeS(i));
            assertThat(b.pressurePa(i)).isEqualTo(a.pressurePa(i));
        }
    }

    /** Speed is given away on the climb and taken back on the fall; the boiler is full at the foot and spent at the top. */
    @Test
    void speedAndBoilerAreLentOnTheBankAndPaidBackAfterIt() {
        double[] boundaries = {0, 8_000, 14_000, 20_000, 30_000};
        double[] gradients = {0, 1.0 / 110, -1.0 / 140, 0};
        RunRequest request = PlanTrips.trip(boundaries, gradients, 9, OptionalDouble.of(1_900));
        Run run = arrived(plan(request).outcome());
        assertThat(run.at(13_800).speedMps()).isLessThan(run.at(7_900).speedMps() - 1);
        assertThat(run.at(19_500).speedMps()).isGreaterThan(run.at(13_800).speedMps() + 2);
        Engine engine = request.train().engines().get(0).engine();
        double foot = engine.reserveKg(run.state(run.sampleAt(7_900), 0));
        double top = engine.reserveKg(run.state(run.sampleAt(14_300), 0));
        assertThat(foot).isGreaterThan(top + 50);
        double after = engine.reserveKg(run.state(run.sampleAt(20_500), 0));
        assertThat(after).isGreaterThan(top + 30);
    }

    /** A road with a bank on which the boiler is borrowed from; least pressures from none to nearly the working one. */
    @ParameterizedTest
    @ValueSource(doubles = {0.65, 0.75, 0.8, 0.85})
    void pressureIsNeverBelowTheLeastOfTheClass(double share) {
        LocomotiveParameters express = EngineFixtures.express();
        Boiler boiler = express.boiler();
        double leastPa = share * boiler.pressureMaxPa();
        Engine engine = SteamEngine.of(new LocomotiveParameters(
                express.cylinders(),
                express.valveGear(),
                new Boiler(
                        boiler.pressureMaxPa(),
                        boiler.grateM2(),
                        boiler.heatingSurfaceM2(),
                        boiler.superheaterM2(),
                        boiler.waterFullKg(),
                        boiler.waterLeastKg(),
                        boiler.coalHeatJPerKg(),
                        boiler.injectorKgPerS(),
                        OptionalDouble.of(leastPa)),
                express.adhesiveMassKg(),
                express.speedMaxMps()));
        RunRequest request = PlanTrips.trip(
                engine,
                new double[] {0, 8_000, 14_000, 20_000},
                new double[] {0, 1.0 / 110, -1.0 / 200},
                9,
                OptionalDouble.of(1_500));
        Optional<Plan> plan = Planner.plan(request);
        plan.ifPresent(made -> {
            Run run = made.outcome().run();
            assertThat(run.pressurePa(run.lowestPressure(0))).isGreaterThanOrEqualTo(leastPa);
        });
        assertThat(plan.isPresent()).as("a plan at %s", share).isTrue();
    }

    @Test
    void steamIsShutBeforeTheBrake() {
        Run run = arrived(plan(PlanTrips.random(3)).outcome());
        List<Change> changes = run.changes();
        int brake = IntStream.range(0, changes.size())
                .filter(i -> changes.get(i) instanceof Change.BrakeApplied applied && applied.forStop())
                .findFirst()
                .orElseThrow();
        Change.HandlesSet last = changes.subList(0, brake).stream()
                .filter(Change.HandlesSet.class::isInstance)
                .map(Change.HandlesSet.class::cast)
                .reduce((first, second) -> second)
                .orElseThrow();
        assertThat(last.handles().controls().regulator()).isZero();
        assertThat(run.timeS(changes.get(brake).sample()) - run.timeS(last.sample()))
                .isGreaterThan(30);
    }

    /** Common practice: ten coaches on 1 in 94, 50 per cent soon after the start, full gear only at the very start. */
    @Test
    void startIsNotchedUpAsIsUsual() {
        RunRequest request =
                PlanTrips.trip(new double[] {0, 8_000}, new double[] {1.0 / 94}, 10, OptionalDouble.empty());
        Run run = arrived(plan(request).outcome());
        double fullGearToMps = 0;
        int looked = 0;
        for (int i = 0; i < run.size(); i++) {
            double mph = Units.mphFromMps(run.speedMps(i));
            if (run.cutoff(i) > 0.74 && run.regulator(i) > 0) {
                fullGearToMps = Math.max(fullGearToMps, run.speedMps(i));
            }
            if (run.regulator(i) > 0 && mph > 5.5 && mph < 7.5 && run.positionM(i) < 800) {
                assertThat(run.cutoff(i)).isCloseTo(0.5, within(0.051));
                looked++;
            }
        }
        assertThat(looked).isPositive();
        assertThat(Units.mphFromMps(fullGearToMps)).isBetween(1.0, 6.0);
    }

    @Test
    void trainThatCannotClimbHasNoPlan() {
        RunRequest request =
                PlanTrips.trip(new double[] {0, 4_000, 12_000}, new double[] {0, 1.0 / 40}, 14, OptionalDouble.empty());
        assertThat(Planner.plan(request)).isEmpty();
    }

    /** Timing points and stops of a long trip: each within half a minute, or as fast as can be. */
    @Test
    void timingPointsAreKept() {
        List<Double> marks = new ArrayList<>();
        for (double at = 600; at < DemonstrationRoad.LENGTH_M; at += 700) {
            marks.add(at);
        }
        RunRequest request = DemonstrationRoad.express(8, true).marked(marks);
        Run run = arrived(plan(request).outcome());
        run.callTimes()
                .forEach(time -> request.calls()
                        .get(time.call())
                        .times()
                        .arrivalS()
                        .ifPresent(booked -> assertThat(time.arrivalS()).isLessThanOrEqualTo(booked + LATE_S)));
    }
}
