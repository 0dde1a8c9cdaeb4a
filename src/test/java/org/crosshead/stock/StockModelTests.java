package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.crosshead.stock.StockFixtures.item;
import static org.crosshead.stock.StockFixtures.made;
import static org.crosshead.stock.StockFixtures.mixedTrafficFigures;
import static org.crosshead.stock.StockFixtures.with;
import static org.crosshead.stock.StockFixtures.without;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.platform.Origin;
import org.junit.jupiter.api.Test;

/** Checks that stored figures become kernel records in the kernel's units, and that nothing unknown is guessed. */
class StockModelTests {

    private static final Instant THEN = Instant.parse("2030-05-06T08:00:00Z");
    private static final double KG_PER_TON = 1016.0469088;

    @Test
    void convertsAClassToTheKernelsUnits() {
        EngineFigures.Resolved engine = resolved(mixedTrafficFigures());
        LocomotiveParameters parameters = engine.parameters();

        assertThat(parameters.cylinders().boreM()).isCloseTo(0.4699, within(1e-12));
        assertThat(parameters.cylinders().wheelDiameterM()).isCloseTo(1.8288, within(1e-12));
        assertThat(parameters.valveGear().cutoffFull()).isEqualTo(0.75);
        assertThat(parameters.boiler().pressureMaxPa()).isCloseTo(1_551_320.4, within(0.1));
        assertThat(parameters.boiler().waterFullKg()).isCloseTo(4546.09, within(1e-9));
        assertThat(parameters.adhesiveMassKg()).isCloseTo(54 * KG_PER_TON, within(1e-6));
        assertThat(parameters.speedMaxMps()).isCloseTo(33.528, within(1e-12));
        assertThat(engine.massKg()).isCloseTo(125 * KG_PER_TON, within(1e-6));
        assertThat(engine.supplies().tankFullKg()).isCloseTo(18_184.36, within(1e-9));
        assertThat(engine.brake().engineBlockForceN()).isCloseTo(398_560.66, within(0.01));
        assertThat(engine.axles()).hasValue(8);
        assertThat(engine.estimates()).isEmpty();
    }

    @Test
    void takesTheValvesFromTheDrawingAndTheRestFromTheFamily() {
        List<SourcedFigure> figures =
                with(with(mixedTrafficFigures(), made("steam_lap", 1.5, "in")), made("blast_orifice", 4.625, "in"));
        CylinderForm family =
                resolved(mixedTrafficFigures()).parameters().valveGear().form();
        CylinderForm drawn = resolved(figures).parameters().valveGear().form();

        assertThat(drawn.valve().lap()).isCloseTo(1.5 / 18.5, within(1e-12));
        assertThat(drawn.blastShare()).isCloseTo(4.625 * 4.625 / (2 * 18.5 * 18.5), within(1e-12));
        assertThat(drawn.valve().portWidth()).isEqualTo(family.valve().portWidth());
        assertThat(drawn.clearance()).isEqualTo(family.clearance());
    }

    @Test
    void takesWhatSparesAndWhatWastesSteamWhereItIsKnown() {
        List<SourcedFigure> figures =
                with(with(mixedTrafficFigures(), made("feed_heating", 90, "degF")), made("leakage", 360, "lb/h"));
        LocomotiveParameters.Fittings known = resolved(figures).parameters().fittings();

        assertThat(known.feedHeatedC()).isCloseTo(65, within(1e-9));
        assertThat(known.steadyKgPerS()).isCloseTo(0.04536, within(1e-5));
        assertThat(resolved(mixedTrafficFigures()).parameters().fittings())
                .isEqualTo(LocomotiveParameters.Fittings.USUAL);
    }

    @Test
    void putsAnEnginesOwnFigureInPlaceOfItsClasss() {
        EngineDraft turned = new EngineDraft("612", "", "M6", "", List.of(made("driving_wheel", 70, "in")));
        EngineRevision engine = new EngineRevision(7, 1, THEN, "Anna", "tyres turned", turned, List.of());

        EngineFigures figures = StockModel.engine(revision(mixedTrafficFigures()), engine);

        assertThat(figures)
                .isInstanceOfSatisfying(
                        EngineFigures.Resolved.class,
                        known -> assertThat(known.parameters().cylinders().wheelDiameterM())
                                .isCloseTo(1.778, within(1e-12)));
    }

    @Test
    void namesWhatIsMissingAndOffersAnEstimate() {
        List<SourcedFigure> figures =
                with(without(mixedTrafficFigures(), "least_cutoff"), StockFixtures.unknown("grate_area", "sq ft"));

        EngineFigures result = StockModel.engine(revision(figures), null);

        assertThat(result).isInstanceOfSatisfying(EngineFigures.Missing.class, lacking -> {
            assertThat(lacking.missing())
                    .extracting(missing -> missing.spec().key())
                    .containsExactly("least_cutoff", "grate_area");
            assertThat(lacking.missing().get(0).estimate())
                    .isEqualTo(new SourcedFigure(
                            "least_cutoff",
                            25.0,
                            "%",
                            Origin.ESTIMATED,
                            "not worked below 25 per cent: common practice",
                            false));
            assertThat(lacking.missing().get(1).estimate()).isNull();
        });
    }

    @Test
    void usesAnEstimateOnlyOnceAPersonHasAcceptedIt() {
        List<SourcedFigure> waiting = with(mixedTrafficFigures(), estimate(false));
        List<SourcedFigure> accepted = with(mixedTrafficFigures(), estimate(true));

        assertThat(StockModel.engine(revision(waiting), null)).isInstanceOf(EngineFigures.Missing.class);
        assertThat(resolved(accepted).estimates()).containsExactly(new EstimateUsed("M6", estimate(true)));
        assertThat(resolved(accepted).parameters().boiler().grateM2()).isCloseTo(2.7870912, within(1e-9));
    }

    @Test
    void totalsAFormation() {
        LoadSummary summary = StockModel.summary(resolved(BrakeKind.VACUUM, item("COACH", 3), item("WAGON", 2)));

        assertThat(summary.vehicles()).isEqualTo(5);
        assertThat(summary.tareTons()).isCloseTo(104, within(1e-9));
        assertThat(summary.loadTons()).isCloseTo(133, within(1e-9));
        assertThat(summary.lengthFt()).isCloseTo(220, within(1e-9));
        assertThat(summary.axles()).isEqualTo(OptionalInt.of(16));
        assertThat(summary.brakedShare()).isCloseTo(99.0 / 133, within(1e-12));
    }

    @Test
    void countsNoBrakeThatTheTrainPipeDoesNotReach() {
        assertThat(share(BrakeKind.VACUUM, item("WAGON", 1), item("COACH", 3))).isZero();
        assertThat(share(BrakeKind.AIR, item("COACH", 3))).isZero();
        assertThat(share(BrakeKind.VACUUM, item("PIPED", 1), item("COACH", 1))).isCloseTo(0.5, within(1e-12));
        assertThat(share(BrakeKind.VACUUM, new FormationDraft.Item("COACH", 1, null, "4711", false)))
                .isZero();
    }

    @Test
    void warnsOfMixedBrakesAndOfAPipeThatEnds() {
        FormationDraft mixed = new FormationDraft("F1", "Mixed", List.of(item("COACH", 2), item("AIR", 2)));
        FormationDraft through = new FormationDraft("F2", "Through", List.of(item("COACH", 2), item("PIPED", 1)));

        assertThat(StockModel.warnings(mixed, kinds()))
                .extracting(StockProblem::code)
                .containsExactly("stock.warning.mixed-brakes", "stock.warning.pipe-ends");
        assertThat(StockModel.warnings(through, kinds())).isEmpty();
    }

    @Test
    void prefersTheLoadThatTheFormationStates() {
        FormationFigures.Resolved loaded = resolved(BrakeKind.NONE, new FormationDraft.Item("WAGON", 2, 4.0, "", true));

        assertThat(loaded.massKg()).isCloseTo(22 * KG_PER_TON, within(1e-6));
    }

    @Test
    void makesOneBodyOfEnginesAndFormation() {
        ResistanceRule tenNewtonsPerTonne =
                (family, massKg, axles) -> new RunningResistance(massKg / 100, 0, 0, massKg / 50);

        TrainBody body = StockModel.body(
                List.of(resolved(mixedTrafficFigures())),
                resolved(BrakeKind.VACUUM, item("COACH", 4)),
                tenNewtonsPerTonne);

        assertThat(body.massKg()).isCloseTo(257 * KG_PER_TON, within(1e-6));
        assertThat(body.lengthM()).isCloseTo(303 * 0.3048, within(1e-9));
        assertThat(body.resistance().constantN()).isCloseTo(257 * KG_PER_TON / 100, within(1e-6));
    }

    private static double share(BrakeKind trainBrake, FormationDraft.Item... items) {
        return StockModel.summary(resolved(trainBrake, items)).brakedShare();
    }

    private static FormationFigures.Resolved resolved(BrakeKind trainBrake, FormationDraft.Item... items) {
        FormationDraft draft = new FormationDraft("F1", "Any", List.of(items));
        return (FormationFigures.Resolved) StockModel.formation(draft, kinds(), trainBrake);
    }

    private static Map<String, VehicleKindRevision> kinds() {
        Map<String, VehicleKindRevision> kinds = new HashMap<>();
        for (VehicleKindDraft kind : List.of(
                StockFixtures.coach("COACH", BrakeKind.VACUUM),
                StockFixtures.coach("AIR", BrakeKind.AIR),
                StockFixtures.coach("PIPED", BrakeKind.PIPED),
                StockFixtures.wagon())) {
            kinds.put(kind.code(), new VehicleKindRevision(1, 1, THEN, "Anna", "first entry", kind, List.of()));
        }
        return kinds;
    }

    private static SourcedFigure estimate(boolean accepted) {
        return new SourcedFigure("grate_area", 30.0, "sq ft", Origin.ESTIMATED, "like its sister class", accepted);
    }

    private static EngineFigures.Resolved resolved(List<SourcedFigure> figures) {
        return (EngineFigures.Resolved) StockModel.engine(revision(figures), null);
    }

    private static ClassRevision revision(List<SourcedFigure> figures) {
        return new ClassRevision(1, 1, THEN, "Anna", "first entry", StockFixtures.classOf(figures), List.of());
    }
}
