package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.crosshead.platform.Origin;
import org.crosshead.route.Direction;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.crosshead.route.TrainKind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 49 CFR 240.231(c), from memory: no pilot where the mean grade is less than 1 % over three miles on end and the stretch is no longer than a
 * mile, or nothing may run faster than 20 mph. Measures in chains, 80 to the mile.
 */
class EasyGradesTests {

    private final List<GradientLength> gradients = new ArrayList<>();
    private final List<LimitLength> limits = new ArrayList<>();
    private Origin origin = Origin.SURVEYED;

    private void grade(double from, double to, double percent) {
        gradients.add(new GradientLength(from, to, GradientNotation.PER_MILLE, 10 * percent, origin, ""));
    }

    private void limit(double from, double to, double mph, Scope scope, @Nullable TrainKind kind) {
        limits.add(new LimitLength(from, to, mph, SpeedUnit.MPH, scope, kind, false, Origin.SURVEYED, ""));
    }

    private RouteDraft route() {
        return new RouteDraft(
                "R",
                "Road",
                MeasureUnit.CHAINS,
                "Down",
                "Up",
                0,
                800,
                List.of("Single"),
                gradients,
                List.of(),
                limits,
                List.of(),
                false);
    }

    private boolean covers(double from, double to) {
        return EasyGrades.cover(route(), Direction.RISING, from, to);
    }

    /** Miles run, grade and limit; 0 for no limit. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.8, 0, true",
        "1, -0.8, 0, true",
        "1, 1.1, 0, false",
        "1, -1.1, 0, false",
        "1, 1.0, 0, false",
        "1.1, 0.8, 0, false",
        "2, 0.9, 25, false",
        "2, 0.9, 20, true",
        "8, 0.9, 20, true",
        "8, 1.1, 15, false"
    })
    void mileOrTwentyMilesAnHourOverEasyGrades(double miles, double percent, double mph, boolean covered) {
        grade(0, 800, percent);
        if (mph > 0) {
            limit(0, 800, mph, Scope.BOTH, null);
        }
        assertThat(covers(0, 80 * miles)).isEqualTo(covered);
    }

    /** Two miles at 1.3 % among easy ones: the three steepest miles on end rise by (2 x 1.3 + 0.5) / 3 = 1.03 %, all ten by 0.66 %. */
    @Test
    void steepestThreeMilesCountAndNotTheMeanOfAll() {
        grade(0, 240, 0.5);
        grade(240, 400, 1.3);
        grade(400, 800, 0.5);
        limit(0, 800, 20, Scope.BOTH, null);
        assertThat(EasyGrades.steepestMean(route(), 0, 800)).isCloseTo(3.1 / 3 / 100, within(1e-12));
        assertThat(covers(0, 800)).isFalse();
        assertThat(covers(400, 800)).isTrue();
    }

    @Test
    void limitHoldsAllTheWayForEveryTrainInThatDirection() {
        grade(0, 800, 0);
        limit(0, 100, 20, Scope.BOTH, null);
        limit(100, 300, 15, Scope.RISING, null);
        assertThat(covers(0, 300)).isTrue();
        assertThat(EasyGrades.cover(route(), Direction.FALLING, 0, 300)).isFalse();
        assertThat(covers(0, 301)).isFalse();
        limit(300, 400, 20, Scope.BOTH, TrainKind.PASSENGER);
        assertThat(covers(0, 400)).as("of passenger trains alone").isFalse();
    }

    /** What is not known is not taken for easy. */
    @Test
    void estimatesAndGapsAreNotTakenForEasy() {
        grade(0, 40, 0.1);
        assertThat(covers(0, 80)).as("a gap").isFalse();
        origin = Origin.ESTIMATED;
        grade(40, 80, 0.1);
        assertThat(covers(0, 80)).as("an estimate that nobody has accepted").isFalse();
        assertThat(EasyGrades.cover(route().accepted(), Direction.RISING, 0, 80))
                .isTrue();
    }

    /** Against a window moved in steps of a hundredth of a chain over invented roads. */
    @Test
    void steepestMeanIsThatOfAWindowMovedInSmallSteps() {
        Random random = new Random(7);
        for (int road = 0; road < 20; road++) {
            gradients.clear();
            double at = 0;
            while (at < 800) {
                double to = Math.min(800, at + 10 + random.nextInt(150));
                grade(at, to, random.nextInt(41) / 10.0 - 2);
                at = to;
            }
            double slow = 0;
            for (int from = 0; from <= 56_000; from++) {
                slow = Math.max(slow, Math.abs(mean(from / 100.0, from / 100.0 + 240)));
            }
            assertThat(EasyGrades.steepestMean(route(), 0, 800)).isCloseTo(slow, within(1e-6));
        }
    }

    private double mean(double from, double to) {
        return gradients.stream()
                        .mapToDouble(one -> one.value()
                                / 1000
                                * Math.max(0, Math.min(to, one.toMeasure()) - Math.max(from, one.fromMeasure())))
                        .sum()
                / (to - from);
    }
}
