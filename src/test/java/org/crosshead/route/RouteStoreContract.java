package org.crosshead.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.crosshead.route.RouteFixtures.MONDAY;
import static org.crosshead.route.RouteFixtures.gradient;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.crosshead.platform.CurrentActor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the route services promise on every database. */
abstract class RouteStoreContract {

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
    void keepsEveryListAsItsSourcePrintsIt() {
        RouteRevision stored = routes().enter(RouteFixtures.mainLine(), "first entry");

        assertThat(stored.number()).isEqualTo(1);
        assertThat(stored.madeAt()).isEqualTo(MONDAY);
        assertThat(stored.madeBy()).isEqualTo("Anna");
        assertThat(stored.content()).isEqualTo(RouteFixtures.mainLine());
        assertThat(routes().current("MAIN")).contains(stored);
        assertThat(routes().revision("MAIN", 1)).contains(stored);
        assertThat(journal).containsExactly("route.entered MAIN: first entry");
    }

    @Test
    void revisesWithoutTouchingTheRevisionBefore() {
        RouteRevision first = routes().enter(RouteFixtures.mainLine(), "first entry");
        RouteDraft levelled = RouteFixtures.withGradients(List.of(gradient(0, 800, GradientNotation.LEVEL, 0)));

        RouteRevision second = routes().enter(levelled, "surveyed again", 1);

        assertThat(second.number()).isEqualTo(2);
        assertThat(routes().revision(first.id())).contains(first);
        assertThat(routes().current("MAIN")).contains(second);
        assertThat(routes().history("MAIN")).extracting(RevisionNote::number).containsExactly(2, 1);
        assertThat(routes().all())
                .containsExactly(
                        new RouteSummary("MAIN", "Invented main line", second.id(), 2, 800, MeasureUnit.CHAINS));
        assertThat(journal).last().isEqualTo("route.revised MAIN: surveyed again");
    }

    @Test
    void countsEstimatesOnceAPersonHasAcceptedThem() {
        routes().enter(RouteFixtures.waiting(), "first entry");
        assertThat(routes().current("MAIN").orElseThrow().content().estimatesAccepted())
                .isFalse();

        RouteRevision accepted = routes().acceptEstimates("MAIN", 1);

        assertThat(accepted.number()).isEqualTo(2);
        assertThat(accepted.content()).isEqualTo(RouteFixtures.mainLine());
        assertThat(routes().revision("MAIN", 1).orElseThrow().content()).isEqualTo(RouteFixtures.waiting());
        assertThat(journal).last().isEqualTo("route.revised MAIN: Estimates accepted");
        assertThatThrownBy(() -> routes().acceptEstimates("MAIN", 2))
                .isInstanceOf(RouteRefusedException.class)
                .hasMessageContaining("nothing-to-accept");
        assertThatThrownBy(() -> routes().acceptEstimates("GHOST", 1)).isInstanceOf(RouteRefusedException.class);
    }

    @Test
    void acceptsOnlyTheRevisionThatThePersonHasSeen() {
        routes().enter(RouteFixtures.waiting(), "first entry");
        routes().enter(RouteFixtures.waiting(), "second entry");

        assertThatThrownBy(() -> routes().acceptEstimates("MAIN", 1)).isInstanceOf(RouteChangedException.class);
    }

    /** Nothing is accepted in advance: a route without estimates holds no acceptance for later ones. */
    @Test
    void acceptsNothingWhereNothingIsEstimated() {
        RouteDraft surveyed = RouteFixtures.withCurves();
        assertThat(surveyed.estimatesAccepted()).isTrue();

        assertThat(routes().enter(surveyed, "first entry").content().estimatesAccepted())
                .isFalse();
    }

    @Test
    void refusesARevisionMadeFromOneThatIsNoLongerCurrent() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        routes().enter(RouteFixtures.mainLine(), "second entry");

        assertThatThrownBy(() -> routes().enter(RouteFixtures.mainLine(), "third", 1))
                .isInstanceOf(RouteChangedException.class);
        assertThatThrownBy(() -> routes().enter(RouteFixtures.mainLine(), "as new", 0))
                .isInstanceOf(RouteChangedException.class);
        assertThat(routes().current("MAIN").orElseThrow().number()).isEqualTo(2);
    }

    @Test
    void keepsListsInTheOrderInWhichTheyLieAndLevelAsZero() {
        RouteDraft jumbled = RouteFixtures.withGradients(
                List.of(gradient(400, 800, GradientNotation.LEVEL, 7), gradient(0, 400, GradientNotation.ONE_IN, 100)));

        assertThat(routes().enter(jumbled, "first entry").content().gradients())
                .containsExactly(
                        gradient(0, 400, GradientNotation.ONE_IN, 100), gradient(400, 800, GradientNotation.LEVEL, 0));
    }

    @Test
    void storesNothingOfARefusedDraft() {
        RouteDraft broken = RouteFixtures.withGradients(List.of(gradient(0, 400, GradientNotation.LEVEL, 0)));

        assertThatThrownBy(() -> routes().enter(broken, "first entry"))
                .isInstanceOfSatisfying(
                        RouteRefusedException.class,
                        ex -> assertThat(ex.problems())
                                .extracting(RouteProblem::code)
                                .containsExactly("route.refused.gap"));
        assertThat(routes().all()).isEmpty();
        assertThat(journal).isEmpty();
    }

    @Test
    void keepsTheUnitOfARouteForGood() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        RouteDraft metric = RouteFixtures.route(
                "MAIN", MeasureUnit.KILOMETRES, 0, 800, List.of(gradient(0, 800, GradientNotation.LEVEL, 0)));

        assertThat(refusals(() -> routes().enter(metric, "new posts")))
                .containsExactly("measureUnit route.refused.measure-unit-changed");
    }

    @Test
    void joinsRoutesOnceAndOnlyOnThem() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        routes().enter(RouteFixtures.kilometreLine(), "first entry");
        JunctionDraft junction = new JunctionDraft("Gabel", "MAIN", 480, "KILO", 0);

        routes().join(junction);

        assertThat(routes().junctions()).containsExactly(junction);
        assertThat(journal).last().isEqualTo("junction.entered Gabel");
        assertThat(refusals(() -> routes().join(new JunctionDraft("Gabel", "KILO", 0, "MAIN", 480))))
                .containsExactly("atMeasure route.refused.junction-twice");
        assertThat(refusals(() -> routes().join(new JunctionDraft("Ende", "MAIN", 900, "GHOST", 0))))
                .containsExactly("atMeasure route.refused.outside", "otherRouteCode route.refused.route-unknown");
        assertThat(refusals(() -> routes().join(new JunctionDraft("Selbst", "MAIN", 0, "MAIN", 800))))
                .containsExactly("otherRouteCode route.refused.junction-of-one-route");
    }

    @Test
    void refusesToLeaveAJunctionOutside() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        routes().enter(RouteFixtures.kilometreLine(), "first entry");
        routes().join(new JunctionDraft("Gabel", "MAIN", 790, "KILO", 0));
        RouteDraft shorter = RouteFixtures.route(
                "MAIN", MeasureUnit.CHAINS, 0, 700, List.of(gradient(0, 700, GradientNotation.LEVEL, 0)));

        assertThat(refusals(() -> routes().enter(shorter, "cut back")))
                .contains("toMeasure route.refused.junction-left");
    }

    @Test
    void hasRestrictionsInForceOverTheirSpanBothEndsIncluded() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        RestrictionDraft draft = RouteFixtures.restriction("MAIN", 300, 320, 20);
        long id = restrictions(MONDAY).enter(draft);

        Restriction stored = restrictions(MONDAY).find(id).orElseThrow();
        assertThat(stored).isEqualTo(new Restriction(id, draft, MONDAY, "Anna", null));
        assertThat(inForce(draft.lastMoment(), draft.lastMoment().plusSeconds(60)))
                .containsExactly(stored);
        assertThat(inForce(draft.firstMoment().minusSeconds(60), draft.firstMoment()))
                .containsExactly(stored);
        assertThat(inForce(draft.lastMoment().plusSeconds(1), draft.lastMoment().plusSeconds(60)))
                .isEmpty();
        assertThat(inForce(
                        draft.firstMoment().minusSeconds(60),
                        draft.firstMoment().minusSeconds(1)))
                .isEmpty();
        assertThat(restrictions(MONDAY).inForce("KILO", draft.firstMoment(), draft.lastMoment()))
                .isEmpty();
        assertThat(refusals(() -> restrictions(MONDAY).enter(draft)))
                .containsExactly("number route.refused.restriction-twice");
    }

    @Test
    void countsAWithdrawnRestrictionUntilItsWithdrawal() {
        routes().enter(RouteFixtures.mainLine(), "first entry");
        long id = restrictions(MONDAY).enter(RouteFixtures.restriction("MAIN", 300, 320, 20));
        Instant noon = MONDAY.plusSeconds(14_400);

        restrictions(noon).withdraw(id, "tamped");

        assertThat(inForce(MONDAY, noon.plusSeconds(60))).hasSize(1);
        assertThat(inForce(noon, noon.plusSeconds(60))).isEmpty();
        assertThat(restrictions(noon).all())
                .extracting(Restriction::withdrawnAt)
                .containsExactly(noon);
        assertThat(refusals(() -> restrictions(noon).withdraw(id, "again")))
                .containsExactly("id route.refused.not-in-force");
        assertThat(refusals(() -> restrictions(noon).withdraw(id, " "))).containsExactly("reason route.refused.needed");
        assertThat(journal).endsWith("restriction.entered T 12 on MAIN", "restriction.withdrawn tamped");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update limit_length set speed_limit = 0",
                "update gradient_length set gradient_value = 0 where notation = 'ONE_IN'",
                "update gradient_length set to_measure = from_measure",
                "update feature set line_name = 'Relief'",
                "update feature set length_unit = null",
                "update curve_length set radius = 0"
            })
    void theTablesThemselvesRefuseWhatTheRulesRefuse(String sql) {
        routes().enter(RouteFixtures.mainLine(), "first entry");

        assertThatThrownBy(() -> jdbc.sql(sql).update()).isInstanceOf(DataIntegrityViolationException.class);
    }

    private List<Restriction> inForce(Instant from, Instant to) {
        return restrictions(MONDAY).inForce("MAIN", from, to);
    }

    private static List<String> refusals(Runnable change) {
        List<String> refusals = new ArrayList<>();
        assertThatThrownBy(change::run)
                .isInstanceOfSatisfying(
                        RouteRefusedException.class,
                        ex -> ex.problems().forEach(one -> refusals.add(one.field() + " " + one.code())));
        return refusals;
    }

    private Routes routes() {
        return new Routes(store(), new JunctionStore(jdbc), journal(MONDAY));
    }

    private Restrictions restrictions(Instant now) {
        return new Restrictions(new RestrictionStore(jdbc), store(), journal(now));
    }

    private RouteStore store() {
        return new RouteStore(jdbc, new RouteLists(jdbc));
    }

    private RouteJournal journal(Instant now) {
        return new RouteJournal(
                Clock.fixed(now, ZoneOffset.UTC),
                () -> new CurrentActor.Actor("Anna"),
                (kind, subjectType, id, summary) -> journal.add(kind + " " + summary));
    }
}
