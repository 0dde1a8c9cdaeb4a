package org.crosshead.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;
import static org.crosshead.route.Direction.FALLING;
import static org.crosshead.route.Direction.RISING;
import static org.crosshead.route.RouteFixtures.MONDAY;

import java.util.List;
import org.crosshead.kernel.track.Track;
import org.crosshead.platform.Origin;
import org.crosshead.route.PathLimit.Source;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks that a path over routes of different measure and direction is one line in metres. A chain is 20.1168 m. */
class PathGeometryTests {

    private static final double CHAIN_M = 20.1168;
    private static final double MPH = 0.44704;
    private static final RouteRevision MAIN = revision(RouteFixtures.mainLine());
    private static final RouteRevision KILO = revision(RouteFixtures.kilometreLine());

    @Test
    void runsTheWholeRouteAsItsMeasureRises() {
        PathGeometry path = path(leg(MAIN, 0, 800, RISING));
        Track track = path.track(50);

        assertThat(path.lengthM()).isCloseTo(16_093.44, within(1e-9));
        assertThat(track.endM()).isEqualTo(path.lengthM());
        assertThat(track.gradients().gradientAt(100)).isEqualTo(0.01);
        assertThat(track.gradients().gradientAt(400 * CHAIN_M)).isZero();
        assertThat(track.gradients().gradientAt(790 * CHAIN_M)).isEqualTo(-0.005);
        assertThat(track.curves().radiusAt(110 * CHAIN_M)).isCloseTo(40 * CHAIN_M, within(1e-9));
        assertThat(track.curves().radiusAt(125 * CHAIN_M)).isEqualTo(800);
        assertThat(track.curves().radiusAt(99 * CHAIN_M)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(track.curves().radiusAt(131 * CHAIN_M)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void turnsALegRoundWhereTheMeasureFalls() {
        PathGeometry path = path(leg(MAIN, 700, 90, FALLING));
        Track track = path.track(50);

        assertThat(path.gradients())
                .extracting(PathGradient::fromM, PathGradient::value)
                .containsExactly(tuple(0.0, 200.0), tuple(path.pathM(1, 480), 0.0), tuple(path.pathM(1, 320), -100.0));
        assertThat(path.gradients()).last().extracting(PathGradient::toM).isEqualTo(path.lengthM());
        assertThat(track.gradients().gradientAt(10)).isEqualTo(0.005);
        assertThat(track.gradients().gradientAt(path.pathM(1, 100))).isEqualTo(-0.01);
        assertThat(path.pathM(1, 600)).isCloseTo(100 * CHAIN_M, within(1e-9));
        assertThat(path.curves())
                .extracting(PathCurve::radius)
                .as("in running order")
                .containsExactly(800.0, 40.0);
        assertThat(track.curves().radiusAt(path.pathM(1, 110))).isCloseTo(40 * CHAIN_M, within(1e-9));
        assertThat(path.at(100 * CHAIN_M))
                .isEqualTo(new Spot(1, "MAIN", path.at(100 * CHAIN_M).measure(), "7m 40ch"));
    }

    @Test
    void joinsAKilometreLegToAChainLeg() {
        PathGeometry path = path(leg(MAIN, 300, 480, RISING), leg(KILO, 0, 5, RISING));
        double joinM = 180 * CHAIN_M;

        assertThat(path.lengthM()).isCloseTo(joinM + 5000, within(1e-9));
        assertThat(path.pathM(2, 1.5)).isCloseTo(joinM + 1500, within(1e-9));
        assertThat(path.at(joinM + 1500.2).measureText()).isEqualTo("1.500 km");
        assertThat(path.at(joinM + 1500.2).legNumber()).isEqualTo(2);
        assertThat(path.at(joinM).routeCode()).isEqualTo("KILO");
        assertThat(path.at(joinM - 1).measureText()).isEqualTo("6m 0ch");
        assertThat(path.track(50).gradients().gradientAt(joinM - 1)).isZero();
        assertThat(path.track(50).gradients().gradientAt(joinM + 1)).isEqualTo(0.008);
        assertThat(path.track(50).limits().limitAt(joinM + 1)).isCloseTo(60 / 3.6, within(1e-12));
        assertThat(path.reversalsM()).isEmpty();
    }

    @Test
    void comesBackOverTheSameRailsAfterAReversal() {
        PathGeometry path = path(leg(MAIN, 100, 480, RISING), new PathLeg(MAIN, 480, 200, "Up Main", FALLING, true));
        double reversalM = 380 * CHAIN_M;
        Track track = path.track(50);

        assertThat(path.reversalsM()).containsExactly(reversalM);
        assertThat(path.lengthM()).isCloseTo(660 * CHAIN_M, within(1e-9));
        assertThat(track.gradients().gradientAt(path.pathM(1, 250))).isEqualTo(0.01);
        assertThat(track.gradients().gradientAt(path.pathM(2, 250))).isEqualTo(-0.01);
        assertThat(track.gradients().heightM(path.pathM(2, 250)))
                .as("the same place is as high on the way back")
                .isCloseTo(track.gradients().heightM(path.pathM(1, 250)), within(1e-6));
        assertThat(path.features())
                .extracting(one -> one.feature().kind(), one -> one.feature().name(), PathFeature::legNumber)
                .containsExactly(
                        tuple(FeatureKind.SIGNAL, "Home", 1),
                        tuple(FeatureKind.TUNNEL, "", 1),
                        tuple(FeatureKind.STATION, "Mitte", 1),
                        tuple(FeatureKind.TUNNEL, "", 2));
    }

    @Test
    void keepsOnlyFeaturesOfItsDirectionAndLine() {
        assertThat(names(path(leg(MAIN, 0, 800, RISING)))).containsExactly("Anfang", "Home", "", "Mitte");
        assertThat(names(path(new PathLeg(MAIN, 800, 0, "Up Main", FALLING, false))))
                .containsExactly("Mitte", "", "Starter", "Anfang");
        assertThat(names(path(new PathLeg(MAIN, 800, 0, "Down Main", FALLING, false))))
                .containsExactly("Mitte", "", "Anfang");
    }

    @Test
    void meetsATunnelFromItsFarEndAndCutsItToTheLeg() {
        PathFeature whole = tunnel(path(leg(MAIN, 480, 200, FALLING)));
        PathFeature cut = tunnel(path(leg(MAIN, 310, 480, RISING)));

        assertThat(whole.fromM()).isCloseTo(150 * CHAIN_M, within(1e-9));
        assertThat(whole.toM()).isCloseTo(180 * CHAIN_M, within(1e-9));
        assertThat(whole.measureText()).isEqualTo("4m 10ch");
        assertThat(cut.fromM()).isZero();
        assertThat(cut.toM()).isCloseTo(20 * CHAIN_M, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "PASSENGER, RISING, false, 310, 40, 60",
        "PASSENGER, FALLING, false, 310, 60, 60",
        "UNFITTED_GOODS, RISING, false, 310, 40, 45",
        "UNFITTED_GOODS, FALLING, false, 310, 45, 45",
        "PASSENGER, RISING, true, 450, 30, 60",
        "PASSENGER, RISING, false, 450, 60, 60"
    })
    void countsOnlyLimitsOfTheTrainsKindDirectionAndFacing(
            TrainKind kind, Direction direction, boolean tenderFirst, double at, double mph, double elsewhereMph) {
        double from = direction == RISING ? 0 : 800;
        PathGeometry path = PathGeometry.of(
                List.of(new PathLeg(MAIN, from, 800 - from, "Down Main", direction, tenderFirst)), kind, List.of());
        Track track = path.track(70);

        assertThat(track.limits().limitAt(path.pathM(1, at))).isCloseTo(mph * MPH, within(1e-9));
        assertThat(track.limits().limitAt(path.pathM(1, 600))).isCloseTo(elsewhereMph * MPH, within(1e-9));
    }

    @Test
    void addsTemporaryRestrictionsWithTheirNumbers() {
        Restriction held = new Restriction(7, RouteFixtures.restriction("MAIN", 500, 520, 15), MONDAY, "Anna", null);
        Restriction elsewhere = new Restriction(8, RouteFixtures.restriction("KILO", 1, 2, 5), MONDAY, "Anna", null);
        PathGeometry path =
                PathGeometry.of(List.of(leg(MAIN, 800, 510, FALLING)), TrainKind.PASSENGER, List.of(held, elsewhere));

        assertThat(path.limits())
                .extracting(PathLimit::source, PathLimit::number, PathLimit::limit)
                .containsExactly(tuple(Source.PERMANENT, "", 60.0), tuple(Source.TEMPORARY, "T 12", 15.0));
        assertThat(path.limits().get(1).fromM()).isCloseTo(280 * CHAIN_M, within(1e-9));
        assertThat(path.limits().get(1).toM()).isEqualTo(path.lengthM());
        assertThat(path.track(50).limits().limitAt(285 * CHAIN_M)).isCloseTo(15 * MPH, within(1e-9));
    }

    @Test
    void takesTheGreatestSpeedWhereNoLimitIsLaidDown() {
        RouteRevision free = revision(RouteFixtures.withLimits());

        assertThat(path(leg(free, 0, 800, RISING)).track(33).limits().limitAt(100))
                .isEqualTo(33);
    }

    @Test
    void findsEveryPlaceAgain() {
        PathGeometry path = path(leg(MAIN, 480, 100, FALLING), leg(MAIN, 100, 480, RISING), leg(KILO, 0, 5, RISING));

        for (double pathM = 0; pathM <= path.lengthM(); pathM += 137.3) {
            Spot spot = path.at(pathM);
            assertThat(path.pathM(spot.legNumber(), spot.measure())).isCloseTo(pathM, within(1e-6));
        }
    }

    @Test
    void refusesLegsThatLeaveTheirRouteOrRunAgainstTheirDirection() {
        assertThatThrownBy(() -> leg(MAIN, 0, 801, RISING)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> leg(MAIN, 0, 80, FALLING)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> leg(MAIN, 80, 80, RISING)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> leg(MAIN, Double.NaN, 80, RISING)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namesWhatNobodyMeasuredAsRun() {
        List<PathEstimate> rising = path(leg(MAIN, 125, 480, RISING)).estimates();

        assertThat(rising).singleElement().satisfies(estimate -> {
            assertThat(estimate.kind()).isEqualTo(PathEstimate.Kind.CURVE);
            assertThat(estimate.fromM()).isZero();
            assertThat(estimate.toM()).isCloseTo(5 * CHAIN_M, within(1e-9));
            assertThat(estimate.accepted()).isTrue();
        });
        assertThat(path(leg(MAIN, 130, 480, RISING)).estimates()).isEmpty();
        assertThat(path(leg(revision(RouteFixtures.waiting()), 480, 0, FALLING)).estimates())
                .singleElement()
                .satisfies(estimate -> {
                    assertThat(estimate.fromM()).isCloseTo(350 * CHAIN_M, within(1e-9));
                    assertThat(estimate.toM()).isCloseTo(360 * CHAIN_M, within(1e-9));
                    assertThat(estimate.accepted()).isFalse();
                });
    }

    @Test
    void neighbouringEstimatesAreOneAndEveryListIsLookedAt() {
        RouteDraft main = RouteFixtures.mainLine();
        List<GradientLength> gradients = List.of(
                new GradientLength(0, 320, GradientNotation.ONE_IN, 100, Origin.ESTIMATED, "map"),
                new GradientLength(320, 480, GradientNotation.LEVEL, 0, Origin.UNKNOWN, ""),
                RouteFixtures.gradient(480, 800, GradientNotation.ONE_IN, -200));
        List<LimitLength> limits = List.of(
                new LimitLength(0, 80, 20, SpeedUnit.MPH, Scope.RISING, null, false, Origin.ESTIMATED, "map"),
                new LimitLength(0, 80, 10, SpeedUnit.MPH, Scope.FALLING, null, false, Origin.ESTIMATED, "map"));
        List<Feature> features = List.of(new Feature(
                FeatureKind.LANDMARK,
                40,
                null,
                "Elm",
                Scope.BOTH,
                null,
                "",
                null,
                null,
                null,
                true,
                false,
                Origin.UNKNOWN,
                ""));
        RouteDraft draft = new RouteDraft(
                "MAIN",
                main.name(),
                main.measureUnit(),
                "Down",
                "Up",
                0,
                800,
                main.lines(),
                gradients,
                List.of(),
                limits,
                features,
                false);

        assertThat(path(leg(revision(draft), 0, 800, RISING)).estimates())
                .extracting(PathEstimate::kind, PathEstimate::toM, PathEstimate::name)
                .containsExactly(
                        tuple(PathEstimate.Kind.GRADIENT, MeasureUnit.CHAINS.metres(480), ""),
                        tuple(PathEstimate.Kind.LIMIT, MeasureUnit.CHAINS.metres(80), ""),
                        tuple(PathEstimate.Kind.FEATURE, null, "Elm"));
    }

    @Test
    void refusesPlacesThatAreNotOnThePath() {
        PathGeometry path = path(leg(MAIN, 100, 480, RISING));

        assertThatThrownBy(() -> path.pathM(1, 99)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> path.pathM(2, 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> path.at(path.lengthM() + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> path()).isInstanceOf(IllegalArgumentException.class);
    }

    private static PathFeature tunnel(PathGeometry path) {
        return path.features().stream()
                .filter(one -> one.feature().kind() == FeatureKind.TUNNEL)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> names(PathGeometry path) {
        return path.features().stream().map(one -> one.feature().name()).toList();
    }

    private static PathGeometry path(PathLeg... legs) {
        return PathGeometry.of(List.of(legs), TrainKind.PASSENGER, List.of());
    }

    private static PathLeg leg(RouteRevision route, double from, double to, Direction direction) {
        return new PathLeg(route, from, to, "Down Main", direction, false);
    }

    private static RouteRevision revision(RouteDraft draft) {
        return new RouteRevision(1, 1, 1, MONDAY, "Anna", "first entry", draft);
    }
}
