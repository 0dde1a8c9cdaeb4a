package org.crosshead.stock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Checks that the catalogue names each figure once, with units of one kind, a range with two ends, and rules within it. */
class FigureCatalogueTests {

    static Stream<FigureSpec> specs() {
        return Stream.concat(Stream.of(ClassFigure.values()), Stream.of(VehicleFigure.values()));
    }

    static Stream<Arguments> specsAndUnits() {
        return specs().flatMap(spec -> spec.units().stream().map(unit -> Arguments.of(spec, unit)));
    }

    @ParameterizedTest
    @MethodSource("specs")
    void hasARangeWithTwoFiniteEnds(FigureSpec spec) {
        assertThat(spec.range().min()).isNotNegative().isLessThan(spec.range().max());
        assertThat(spec.range().max()).isFinite();
    }

    @ParameterizedTest
    @MethodSource("specsAndUnits")
    void meansTheSameRangeInEachOfItsUnits(FigureSpec spec, FigureUnit unit) {
        assertThat(unit.toSi(spec.range(unit).max()))
                .isCloseTo(spec.customary().toSi(spec.range().max()), within(1e-6 * unit.toSi(1)));
        assertThat(spec.range(unit).holds(spec.range(unit).min())).isTrue();
        assertThat(spec.range(unit).holds(Double.NaN)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        // Exact by the definitions in Units, worked by hand.
        "in, 18.5, 0.4699",
        "mm, 470, 0.47",
        "ft, 6, 1.8288",
        "ch, 8, 160.9344",
        "psi, 225, 1551320.3909628",
        "bar, 16, 1600000",
        "sq ft, 28, 2.60128512",
        "%, 75, 0.75",
        "tons, 72, 73155.377434",
        "cwt, 20, 1016.0469088",
        "t, 73, 73000",
        "gal, 4000, 18184.36",
        "tonf, 1, 9964.01641818",
        "lbf, 1000, 4448.2216152605",
        "mph, 75, 33.528",
        "km/h, 90, 25",
        "Btu/lb, 13000, 30238000",
        "gal/h, 2000, 2.5256055556"
    })
    void convertsToTheKernelsUnit(String label, double value, double si) {
        assertThat(FigureUnit.labelled(label).orElseThrow().toSi(value)).isCloseTo(si, within(si * 1e-9));
    }

    @Test
    void labelsEachUnitOnce() {
        assertThat(Stream.of(FigureUnit.values()).map(FigureUnit::label)).doesNotHaveDuplicates();
        assertThat(FigureUnit.labelled("furlong")).isEmpty();
    }

    @Test
    void findsEachFigureByItsKey() {
        assertThat(ClassFigure.keyed("boiler_pressure")).contains(ClassFigure.BOILER_PRESSURE);
        assertThat(VehicleFigure.keyed("tare")).contains(VehicleFigure.TARE);
        assertThat(ClassFigure.keyed("tare")).isEmpty();
    }

    @Test
    void refusesACutoffOf140PerCentAndAWeightOfNothing() {
        assertThat(ClassFigure.FULL_GEAR_CUTOFF.range().holds(140)).isFalse();
        assertThat(ClassFigure.ENGINE_WEIGHT.range().holds(0)).isFalse();
        assertThat(VehicleFigure.TARE.range().holds(-12)).isFalse();
    }

    @Test
    void estimatesNothingWhileWhatTheRuleRestsOnIsUnknown() {
        assertThat(estimate(ClassFigure.BOILER_WATER_FULL, Map.of())).isEmpty();
        assertThat(estimate(
                        ClassFigure.TENDER_WEIGHT_EMPTY,
                        Map.of("tender_weight_full", 50_000.0, "tank_capacity", 18_000.0)))
                .isEmpty();
    }

    @Test
    void estimatesByTheRuleThatItStates() {
        assertThat(estimate(ClassFigure.FULL_GEAR_CUTOFF, Map.of())).containsExactly(0.75);
        assertThat(estimate(ClassFigure.LEAST_CUTOFF, Map.of())).containsExactly(0.25);
        assertThat(estimate(ClassFigure.BOILER_WATER_FULL, Map.of("heating_surface", 150.0)))
                .containsExactly(4500.0);
        assertThat(estimate(
                        ClassFigure.TENDER_WEIGHT_EMPTY,
                        Map.of("tender_weight_full", 50_000.0, "tank_capacity", 18_000.0, "coal_capacity", 9_000.0)))
                .containsExactly(23_000.0);
        assertThat(estimate(VehicleFigure.BRAKE_BLOCK_FORCE, Map.of("tare", 30_000.0))
                        .get(0))
                .isCloseTo(205_939.65, within(1e-6));
    }

    private static List<Double> estimate(FigureSpec spec, Map<String, Double> known) {
        return spec.estimate().orElseThrow().si().apply(new KnownFigures(known)).stream()
                .toList();
    }
}
