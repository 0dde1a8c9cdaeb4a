package org.crosshead.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.crosshead.route.RouteFixtures.gradient;
import static org.crosshead.route.RouteFixtures.withFeatureMore;
import static org.crosshead.route.RouteFixtures.withGradients;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.crosshead.platform.Origin;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks that each wrong entry is refused by name, beside its line, and that a right one is not. */
class RouteRulesTests {

    @Test
    void refusesNothingOfARightEntry() {
        assertThat(RouteRules.problems(RouteFixtures.mainLine(), "first entry")).isEmpty();
        assertThat(RouteRules.problems(RouteFixtures.kilometreLine(), "first entry"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "ONE_IN, 0, one-in-zero",
        "ONE_IN, -0.0, one-in-zero",
        "ONE_IN, 3, one-in",
        "ONE_IN, NaN, one-in",
        "ONE_IN, Infinity, one-in",
        "PER_MILLE, 300, per-mille",
        "PER_MILLE, NaN, per-mille",
        "PER_MILLE, -125, ''",
        "ONE_IN, -8, ''",
        "LEVEL, 77, ''"
    })
    void refusesGradientsThatCannotBe(GradientNotation notation, double value, String code) {
        List<RouteProblem> problems =
                RouteRules.problems(withGradients(List.of(gradient(0, 800, notation, value))), "x");

        if (code.isEmpty()) {
            assertThat(problems).isEmpty();
        } else {
            assertThat(problems)
                    .extracting(RouteProblem::list, RouteProblem::index, RouteProblem::field, RouteProblem::code)
                    .containsExactly(tuple("gradients", 0, "value", "route.refused." + code));
        }
    }

    @Test
    void refusesGapsAndOverlapsBesideTheLengthAfterThem() {
        List<GradientLength> lengths = List.of(
                gradient(100, 300, GradientNotation.LEVEL, 0),
                gradient(250, 400, GradientNotation.LEVEL, 0),
                gradient(400, 700, GradientNotation.LEVEL, 0));

        assertThat(RouteRules.problems(withGradients(lengths), "x"))
                .extracting(RouteProblem::index, RouteProblem::field, RouteProblem::code, RouteProblem::args)
                .containsExactly(
                        tuple(0, "fromMeasure", "route.refused.gap", List.<Object>of("0m 0ch", "1m 20ch")),
                        tuple(1, "fromMeasure", "route.refused.overlap", List.<Object>of("3m 10ch", "3m 60ch")),
                        tuple(2, "toMeasure", "route.refused.gap", List.<Object>of("8m 60ch", "10m 0ch")));
    }

    @Test
    void takesLengthsInAnyOrder() {
        List<GradientLength> lengths =
                List.of(gradient(400, 800, GradientNotation.LEVEL, 0), gradient(0, 400, GradientNotation.ONE_IN, 100));

        assertThat(RouteRules.problems(withGradients(lengths), "x")).isEmpty();
    }

    @Test
    void refusesARouteWithoutGradients() {
        assertThat(codes(RouteRules.problems(withGradients(List.of()), "x")))
                .containsExactly("route.refused.no-gradients");
    }

    @Test
    void refusesMoreEntriesThanItTakes() {
        List<GradientLength> lengths = Collections.nCopies(5001, gradient(0, 800, GradientNotation.LEVEL, 0));

        assertThat(codes(RouteRules.problems(withGradients(lengths), "x"))).containsExactly("route.refused.too-many");
    }

    @ParameterizedTest
    @CsvSource({"0", "-40", "151", "NaN"})
    void refusesALimitOfZeroOrOfNoTrain(double limit) {
        RouteDraft draft = RouteFixtures.withLimits(
                RouteFixtures.limit(0, 800, 60, SpeedUnit.MPH, Scope.BOTH),
                RouteFixtures.limit(0, 800, limit, SpeedUnit.MPH, Scope.BOTH));

        assertThat(RouteRules.problems(draft, "x"))
                .extracting(RouteProblem::list, RouteProblem::index, RouteProblem::field)
                .containsExactly(tuple("limits", 1, "limit"));
    }

    @ParameterizedTest
    @CsvSource({"0, CHAINS", "-20, CHAINS", "1, CHAINS", "3000, CHAINS", "39, METRES", "NaN, METRES"})
    void refusesARadiusOfNoRailway(double radius, LengthUnit unit) {
        RouteDraft draft = RouteFixtures.withCurves(new CurveLength(10, 20, radius, unit, Origin.SURVEYED, ""));

        assertThat(codes(RouteRules.problems(draft, "x"))).containsExactly("route.refused.radius");
    }

    @Test
    void refusesCurvesOverEachOther() {
        RouteDraft draft = RouteFixtures.withCurves(
                new CurveLength(10, 20, 40, LengthUnit.CHAINS, Origin.SURVEYED, ""),
                new CurveLength(19, 30, 40, LengthUnit.CHAINS, Origin.SURVEYED, ""));

        assertThat(RouteRules.problems(draft, "x"))
                .extracting(RouteProblem::list, RouteProblem::index, RouteProblem::code)
                .containsExactly(tuple("curves", 1, "route.refused.overlap"));
    }

    @Test
    void refusesASignalOutsideItsRoute() {
        List<RouteProblem> problems = RouteRules.problems(
                withFeatureMore(RouteFixtures.feature(FeatureKind.SIGNAL, 801, null, "Distant", Scope.BOTH, null)),
                "x");

        assertThat(problems)
                .extracting(RouteProblem::list, RouteProblem::index, RouteProblem::field, RouteProblem::code)
                .containsExactly(tuple("features", 5, "atMeasure", "route.refused.outside"));
        assertThat(problems.get(0).args()).containsExactly("10m 1ch", "0m 0ch", "10m 0ch");
    }

    @ParameterizedTest
    @CsvSource({"Slow, Down Main, ''", "'', Down Main, needed", "Fast, Relief, line-unknown", "a;b, Up Main, semicolon"
    })
    void refusesNamelessSignalsAndLinesThatAreNot(String name, String line, String code) {
        List<RouteProblem> problems = RouteRules.problems(
                withFeatureMore(RouteFixtures.feature(FeatureKind.SIGNAL, 500, null, name, Scope.BOTH, line)), "x");

        assertThat(codes(problems)).isEqualTo(code.isEmpty() ? List.of() : List.of("route.refused." + code));
    }

    @Test
    void refusesLengthsWithoutUnitAndNonsenseInThem() {
        Feature unitless = featureWith(300.0, null, null);
        Feature far = featureWith(40_000.0, 0.0, LengthUnit.YARDS);

        assertThat(codes(RouteRules.problems(withFeatureMore(unitless), "x")))
                .containsExactly("route.refused.unit-missing");
        assertThat(codes(RouteRules.problems(withFeatureMore(far), "x")))
                .containsExactly("route.refused.sighting", "route.refused.platform");
    }

    @Test
    void refusesLongRemarksAndEstimatesWithoutRule() {
        GradientLength long1 = new GradientLength(0, 400, GradientNotation.LEVEL, 0, Origin.SURVEYED, "x".repeat(401));
        GradientLength estimate = new GradientLength(400, 800, GradientNotation.LEVEL, 0, Origin.ESTIMATED, " ");

        assertThat(RouteRules.problems(withGradients(List.of(long1, estimate)), "x"))
                .extracting(RouteProblem::index, RouteProblem::field, RouteProblem::code)
                .containsExactly(
                        tuple(0, "note", "route.refused.too-long"), tuple(1, "note", "route.refused.rule-missing"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "../etc", "<script>", "M 6", "new"})
    void refusesACodeThatCannotStandInAnAddress(String code) {
        RouteDraft draft = RouteFixtures.route(
                code, MeasureUnit.CHAINS, 0, 800, List.of(gradient(0, 800, GradientNotation.LEVEL, 0)));

        assertThat(codes(RouteRules.problems(draft, "x"))).containsExactly("route.refused.code");
    }

    @ParameterizedTest
    @CsvSource({"800, 0", "5, 5", "-1, 5", "0, NaN", "0, 1e9"})
    void refusesARouteThatRunsBackwardsOrNowhere(double from, double to) {
        RouteDraft draft = RouteFixtures.route("MAIN", MeasureUnit.CHAINS, from, to, List.of());

        assertThat(RouteRules.problems(draft, "x")).hasSize(1);
    }

    @Test
    void refusesAChangeWithoutReason() {
        assertThat(RouteRules.problems(RouteFixtures.mainLine(), " "))
                .extracting(RouteProblem::field)
                .containsExactly("reason");
    }

    @Test
    void refusesRestrictionsThatCannotHold() {
        RestrictionDraft right = RouteFixtures.restriction("MAIN", 10, 20, 20);
        RestrictionDraft wrong = new RestrictionDraft(
                " ",
                "GHOST",
                10,
                20,
                0,
                SpeedUnit.MPH,
                Scope.BOTH,
                RouteFixtures.MONDAY,
                RouteFixtures.MONDAY.minusSeconds(1),
                "");

        assertThat(restrictionProblems(right)).isEmpty();
        assertThat(restrictionProblems(wrong))
                .extracting(RouteProblem::field)
                .containsExactly("number", "limit", "reason", "routeCode", "lastMoment");
        assertThat(restrictionProblems(RouteFixtures.restriction("MAIN", 790, 810, 20)))
                .extracting(RouteProblem::field)
                .containsExactly("toMeasure");
    }

    private static List<RouteProblem> restrictionProblems(RestrictionDraft draft) {
        return RestrictionRules.problems(
                draft,
                code -> code.equals("MAIN") ? Optional.of(Extent.of(RouteFixtures.mainLine())) : Optional.empty(),
                List.of());
    }

    private static Feature featureWith(
            @org.jspecify.annotations.Nullable Double sighting,
            @org.jspecify.annotations.Nullable Double length,
            @org.jspecify.annotations.Nullable LengthUnit unit) {
        return new Feature(
                FeatureKind.STATION,
                500,
                null,
                "Halt",
                Scope.BOTH,
                null,
                "",
                sighting,
                length,
                unit,
                true,
                true,
                Origin.SURVEYED,
                "");
    }

    private static List<String> codes(List<RouteProblem> problems) {
        return problems.stream().map(RouteProblem::code).toList();
    }
}
