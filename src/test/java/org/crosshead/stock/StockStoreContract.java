package org.crosshead.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the stock services promise on every database. */
abstract class StockStoreContract {

    private static final Instant MONDAY = Instant.parse("2030-05-06T08:00:00.123456Z");
    private static final Instant TUESDAY = Instant.parse("2030-05-07T08:00:00Z");

    private final List<String> journal = new ArrayList<>();
    private JdbcClient jdbc;

    private DataSource database;

    /** A database with all tables and nothing in them, anew at each call. */
    abstract DataSource dataSource();

    @BeforeEach
    void migrate() {
        database = dataSource();
        jdbc = JdbcClient.create(database);
    }

    @Test
    void keepsEveryFigureAsItsSourcePrintsIt() {
        ClassRevision stored = classes("Anna", MONDAY).enter(StockFixtures.mixedTrafficClass(), "first entry");

        assertThat(stored.number()).isEqualTo(1);
        assertThat(stored.madeAt()).isEqualTo(MONDAY);
        assertThat(stored.madeBy()).isEqualTo("Anna");
        assertThat(stored.reason()).isEqualTo("first entry");
        assertThat(stored.content().figures()).containsExactlyInAnyOrderElementsOf(StockFixtures.mixedTrafficFigures());
        assertThat(stored.content().notes())
                .isEqualTo(StockFixtures.mixedTrafficClass().notes());
        assertThat(journal).containsExactly("locomotive-class.entered M6: first entry");
    }

    @Test
    void revisesWithoutTouchingTheRevisionBefore() {
        ClassRevision first = classes("Anna", MONDAY).enter(StockFixtures.mixedTrafficClass(), "first entry");
        LocomotiveClassDraft heavier = StockFixtures.classOf(StockFixtures.with(
                StockFixtures.mixedTrafficFigures(), StockFixtures.made("engine_weight", 74, "tons")));

        ClassRevision second = classes("Ben", TUESDAY).enter(heavier, "weighed again", 1);

        assertThat(second.number()).isEqualTo(2);
        assertThat(classes("Ben", TUESDAY).revision(first.id())).contains(first);
        assertThat(classes("Ben", TUESDAY).current("M6")).contains(second);
        assertThat(enteredBy(second, "engine_weight")).isEqualTo("Ben");
        assertThat(enteredBy(second, "length")).isEqualTo("Anna");
        assertThat(journal).hasSize(2);
    }

    @Test
    void refusesARevisionMadeFromOneThatIsNoLongerCurrent() {
        LocomotiveClasses classes = classes("Anna", MONDAY);
        classes.enter(StockFixtures.mixedTrafficClass(), "first entry");
        classes.enter(StockFixtures.mixedTrafficClass(), "second entry");

        assertThatThrownBy(() -> classes.enter(StockFixtures.mixedTrafficClass(), "third", 1))
                .isInstanceOf(StockChangedException.class);
        assertThatThrownBy(() -> classes.enter(StockFixtures.mixedTrafficClass(), "as new", 0))
                .isInstanceOf(StockChangedException.class);
        assertThat(classes.current("M6").orElseThrow().number()).isEqualTo(2);
        assertThat(journal).hasSize(2);
    }

    @Test
    void recordsWhoAcceptedAnEstimateAndWhen() {
        LocomotiveClassDraft draft =
                StockFixtures.classOf(StockFixtures.without(StockFixtures.mixedTrafficFigures(), "least_cutoff"));
        classes("Anna", MONDAY).enter(draft, "first entry");

        ClassRevision accepted = classes("Ben", TUESDAY).acceptEstimate("M6", "least_cutoff");

        FigureEntry entry = accepted.entries().stream()
                .filter(one -> one.figure().key().equals("least_cutoff"))
                .findFirst()
                .orElseThrow();
        assertThat(entry.enteredBy()).isEqualTo("Ben");
        assertThat(entry.enteredAt()).isEqualTo(TUESDAY);
        assertThat(entry.figure().value()).isEqualTo(25);
        assertThat(entry.figure().origin()).isEqualTo(Origin.ESTIMATED);
        assertThat(entry.figure().accepted()).isTrue();
        assertThat(entry.figure().note()).contains("25 per cent");
    }

    @Test
    void hasNoEstimateToAcceptForAKnownFigure() {
        LocomotiveClasses classes = classes("Anna", MONDAY);
        classes.enter(StockFixtures.mixedTrafficClass(), "first entry");

        assertThatThrownBy(() -> classes.acceptEstimate("M6", "least_cutoff"))
                .isInstanceOfSatisfying(
                        StockRefusedException.class,
                        ex -> assertThat(ex.problems())
                                .extracting(StockProblem::code)
                                .containsExactly("stock.refused.no-estimate"));
        assertThat(classes.current("M6").orElseThrow().number()).isEqualTo(1);
    }

    @Test
    void keepsAnEngineOfItsClassWithItsOwnFigures() {
        classes("Anna", MONDAY).enter(StockFixtures.mixedTrafficClass(), "first entry");
        EngineDraft draft = new EngineDraft(
                "612",
                "",
                "M6",
                "Steams best with a thin fire",
                List.of(StockFixtures.made("driving_wheel", 71, "in")));

        EngineRevision stored = engines().enter(draft, "tyres turned");

        assertThat(stored.content()).isEqualTo(draft);
        assertThat(engines().ofClass("M6")).containsExactly(stored);
        assertThatThrownBy(() -> engines().enter(new EngineDraft("613", "", "X9", "", List.of()), "new"))
                .isInstanceOfSatisfying(
                        StockRefusedException.class,
                        ex -> assertThat(ex.problems())
                                .extracting(StockProblem::field)
                                .containsExactly("classCode"));
    }

    @Test
    void refusesAClassThatNoLongerAgreesWithAnEnginesOwnFigures() {
        classes("Anna", MONDAY).enter(StockFixtures.mixedTrafficClass(), "first entry");
        engines()
                .enter(
                        new EngineDraft("612", "", "M6", "", List.of(StockFixtures.made("full_gear_cutoff", 70, "%"))),
                        "worn gear");
        LocomotiveClassDraft draft = StockFixtures.classOf(
                StockFixtures.with(StockFixtures.mixedTrafficFigures(), StockFixtures.made("least_cutoff", 72, "%")));

        assertThatThrownBy(() -> classes("Anna", MONDAY).enter(draft, "odd"))
                .isInstanceOfSatisfying(
                        StockRefusedException.class,
                        ex -> assertThat(ex.problems())
                                .extracting(StockProblem::code)
                                .containsExactly("stock.refused.engine-disagrees"));
    }

    @Test
    void keepsAFormationFrontFirst() {
        VehicleKinds kinds = new VehicleKinds(new VehicleKindStore(store()), writer("Anna", MONDAY));
        VehicleKindDraft coach = StockFixtures.coach("COACH", BrakeKind.VACUUM);
        VehicleKindRevision kind = kinds.enter(coach, "first entry");
        kinds.enter(StockFixtures.wagon(), "first entry");
        FormationDraft draft = new FormationDraft(
                "F1",
                "Four coaches and a wagon",
                List.of(
                        new FormationDraft.Item("COACH", 1, 2.5, "4711", false),
                        StockFixtures.item("COACH", 3),
                        StockFixtures.item("WAGON", 1)));
        Formations formations = new Formations(
                new FormationStore(jdbc, store()), new VehicleKindStore(store()), writer("Anna", MONDAY));

        FormationRevision stored = formations.enter(draft, "first entry");

        assertThat(kind.content().figures()).containsExactlyInAnyOrderElementsOf(coach.figures());
        assertThat(kind.content().bearing()).isEqualTo(Bearing.PLAIN);
        assertThat(stored.content()).isEqualTo(draft);
        assertThat(formations.all()).containsExactly(stored);
        assertThat(formations.current("F1")).contains(stored);
    }

    @Test
    void theTablesThemselvesRefuseAValueOfUnknownOrigin() {
        ClassRevision stored = classes("Anna", MONDAY).enter(StockFixtures.mixedTrafficClass(), "first entry");

        assertThatThrownBy(() -> jdbc.sql("update class_figure set origin = 'UNKNOWN' where revision_id = ?")
                        .param(stored.id())
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    private static String enteredBy(ClassRevision revision, String key) {
        return revision.entries().stream()
                .filter(entry -> entry.figure().key().equals(key))
                .findFirst()
                .orElseThrow()
                .enteredBy();
    }

    private LocomotiveClasses classes(String actor, Instant now) {
        return new LocomotiveClasses(
                new LocomotiveClassStore(jdbc, store()), new EngineStore(jdbc, store()), writer(actor, now));
    }

    private Engines engines() {
        return new Engines(
                new EngineStore(jdbc, store()),
                store(),
                new LocomotiveClassStore(jdbc, store()),
                writer("Anna", MONDAY));
    }

    private RevisionStore store() {
        return new RevisionStore(jdbc);
    }

    private RevisionWriter writer(String actor, Instant now) {
        return new RevisionWriter(
                store(),
                Clock.fixed(now, ZoneOffset.UTC),
                () -> new CurrentActor.Actor(actor),
                (kind, subjectType, id, summary) -> journal.add(kind + " " + summary));
    }
}
