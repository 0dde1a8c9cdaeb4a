package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.crosshead.stock.StockFixtures.made;
import static org.crosshead.stock.StockFixtures.mixedTrafficFigures;
import static org.crosshead.stock.StockFixtures.with;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.platform.Origin;
import org.crosshead.stock.figure.VehicleFigure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks that each wrong entry is refused by name, beside its field, and that a right one is not. */
class StockRulesTests {

    @Test
    void refusesNothingOfARightEntry() {
        assertThat(LocomotiveClassRules.problems(StockFixtures.mixedTrafficClass(), "first entry"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "full_gear_cutoff, 140, %, out-of-range",
        "engine_weight, 0, tons, out-of-range",
        "engine_weight, -72, tons, out-of-range",
        "boiler_pressure, 2250, psi, out-of-range",
        "boiler_pressure, 16, furlongs, unit-unknown",
        "boiler_pressure, 16, tons, unit-unknown",
        "cylinder_count, 2.5, '', not-whole",
        "least_cutoff, 75.5, %, out-of-range",
        "adhesive_weight, 80, tons, adhesive-above-engine",
        "boiler_water_least, 1001, gal, water-least-above-full",
        "tender_weight_empty, 54, tons, tender-empty-above-full",
        "coupled_axles, 8, '', ''",
        "wheel_count, 6, '', figure-unknown"
    })
    void namesWhatIsWrongWithAFigure(String key, double value, String unit, String code) {
        List<StockProblem> problems = LocomotiveClassRules.problems(
                StockFixtures.classOf(with(mixedTrafficFigures(), made(key, value, unit))), "first entry");

        if (code.isEmpty()) {
            assertThat(problems).isEmpty();
        } else {
            assertThat(problems)
                    .extracting(StockProblem::field, StockProblem::code)
                    .containsExactly(tuple("figures." + key, "stock.refused." + code));
        }
    }

    @Test
    void saysTheRangeInTheUnitThatWasEntered() {
        StockProblem problem = LocomotiveClassRules.problems(
                        StockFixtures.classOf(with(mixedTrafficFigures(), made("boiler_pressure", 160, "bar"))), "x")
                .get(0);

        assertThat(problem.args().subList(0, 2)).isEqualTo(List.<Object>of(160.0, "bar"));
        assertThat((double) problem.args().get(3)).isBetween(21.7, 21.8);
    }

    @Test
    void refusesALeastCutoffAboveFullGear() {
        List<SourcedFigure> figures = with(mixedTrafficFigures(), made("full_gear_cutoff", 50, "%"));

        assertThat(codes(LocomotiveClassRules.problems(
                        StockFixtures.classOf(with(figures, made("least_cutoff", 60, "%"))), "x")))
                .containsExactly("stock.refused.least-above-full");
    }

    /** Dimensions that bound each other: a crank pin on the tread, a grate without surface, a superheater larger than the boiler. */
    @ParameterizedTest
    @CsvSource({
        "cylinder_stroke, 40, in, driving_wheel, 53, stroke-over-wheel",
        "cylinder_stroke, 26, in, driving_wheel, 36, ''",
        "grate_area, 100, sq ft, heating_surface, 900, grate-over-surface",
        "superheater_surface, 1200, sq ft, heating_surface, 1100, superheater-above-surface",
        "steam_lap, 1.5, in, valve_travel, 3, lap-over-half-travel",
        "steam_lap, 1.5, in, valve_travel, 6, ''",
        "steam_lap, 3, in, valve_travel, 8, lap-of-bore",
        "steam_lap, 1, in, valve_lead, 0.7, lead-of-lap",
        "port_width, 0.35, in, port_length, 18, port-width-of-bore",
        "port_width, 2, in, port_length, 60, port-length-of-bore",
        "blast_orifice, 1.5, in, valve_travel, 6, blast-of-pistons",
        "adhesive_weight_empty, 20, tons, adhesive_weight, 54, adhesive-empty-low",
        "adhesive_weight_empty, 55, tons, adhesive_weight, 54, adhesive-empty-above-full"
    })
    void refusesDimensionsThatCannotBeTogether(
            String key, double value, String unit, String otherKey, double other, String code) {
        List<SourcedFigure> figures =
                with(with(mixedTrafficFigures(), made(key, value, unit)), made(otherKey, other, unit));

        assertThat(codes(LocomotiveClassRules.problems(StockFixtures.classOf(figures), "x")))
                .isEqualTo(code.isEmpty() ? List.of() : List.of("stock.refused." + code));
    }

    /** A brake that presses harder than its wheels hold, and a braked weight percentage over 200, on a coach of 30 tons and 3 of load. */
    @ParameterizedTest
    @CsvSource({
        "brake_block_force, 34, tonf, blocks-slide",
        "brake_block_force, 32, tonf, ''",
        "hand_brake_force, 40, tonf, blocks-slide",
        "braked_weight, 68, tons, braked-weight-high",
        "braked_weight, 65, tons, ''"
    })
    void refusesABrakeThatDoesNotGoWithItsWeight(String key, double value, String unit, String code) {
        List<SourcedFigure> figures =
                with(StockFixtures.coach("COACH", BrakeKind.VACUUM).figures(), made(key, value, unit));

        assertThat(codes(VehicleKinds.problems(StockFixtures.kindOf(figures), "first entry")))
                .isEqualTo(code.isEmpty() ? List.of() : List.of("stock.refused." + code));
    }

    @Test
    void refusesAFigureStatedTwiceAndTenderFiguresOnATankEngine() {
        List<SourcedFigure> twice = new ArrayList<>(mixedTrafficFigures());
        twice.add(made("length", 62, "ft"));
        LocomotiveClassDraft tender = StockFixtures.mixedTrafficClass();
        LocomotiveClassDraft tank = new LocomotiveClassDraft(
                "T1",
                "Tank",
                "",
                false,
                tender.valveFamily(),
                BrakeKind.STEAM,
                BrakeKind.STEAM,
                tender.figures(),
                List.of());

        assertThat(codes(LocomotiveClassRules.problems(StockFixtures.classOf(twice), "x")))
                .containsExactly("stock.refused.figure-twice");
        assertThat(LocomotiveClassRules.problems(tank, "x"))
                .extracting(StockProblem::field)
                .containsExactlyInAnyOrder("trainBrake", "figures.tender_weight_full", "figures.tender_brake_force");
    }

    @Test
    void refusesAValueWithoutOriginAnOriginWithoutValueAndAnEstimateWithoutRule() {
        List<SourcedFigure> figures = List.of(
                new SourcedFigure("tare", 30.0, "tons", Origin.UNKNOWN, "", true),
                new SourcedFigure("load", null, "tons", Origin.MAKERS, "", true),
                new SourcedFigure("length", 60.0, "ft", Origin.ESTIMATED, " ", false),
                new SourcedFigure("axles", null, "", Origin.UNKNOWN, "never counted", true));

        assertThat(codes(FigureRules.problems(figures, VehicleFigure::keyed)))
                .containsExactly(
                        "stock.refused.origin-missing", "stock.refused.value-missing", "stock.refused.rule-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"new", "", "../etc", "<script>", "M 6", "x123456789x123456789x123456789x123456789x"})
    void refusesACodeThatCannotStandInAnAddress(String code) {
        assertThat(TextRules.with("reason").code("code", code).problems())
                .extracting(StockProblem::field)
                .containsExactly("code");
    }

    @Test
    void refusesAChangeWithoutReason() {
        assertThat(LocomotiveClassRules.problems(StockFixtures.mixedTrafficClass(), " "))
                .extracting(StockProblem::field)
                .containsExactly("reason");
    }

    @ParameterizedTest
    @CsvSource({"0, count-below-one", "-1, count-below-one", "201, too-many-vehicles", "10000, too-many-vehicles"})
    void refusesFormationsOfNoVehicleOrTooMany(int count, String code) {
        FormationDraft draft = new FormationDraft("F1", "Long", List.of(StockFixtures.item("COACH", count)));

        List<StockProblem> problems = FormationRules.problems(draft, "x", kind -> true);

        assertThat(codes(problems)).contains("stock.refused." + code);
        assertThat(problems)
                .filteredOn(problem -> problem.code().endsWith("too-many-vehicles"))
                .allSatisfy(problem -> assertThat(problem.args()).contains(200));
    }

    @Test
    void refusesUnknownKindsWrongLoadsAndNumbersForMany() {
        FormationDraft draft =
                new FormationDraft("F1", "Odd", List.of(new FormationDraft.Item("GHOST", 3, -4.0, "4711", true)));

        assertThat(codes(FormationRules.problems(draft, "x", kind -> false)))
                .containsExactly(
                        "stock.refused.kind-unknown",
                        "stock.refused.number-needs-count-one",
                        "stock.refused.out-of-range");
        assertThat(codes(FormationRules.problems(new FormationDraft("F1", "Empty", List.of()), "x", kind -> true)))
                .containsExactly("stock.refused.no-vehicles");
    }

    private static List<String> codes(List<StockProblem> problems) {
        return problems.stream().map(StockProblem::code).toList();
    }
}
