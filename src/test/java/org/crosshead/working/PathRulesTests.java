package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.working.WorkingFixtures.leg;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.crosshead.route.Direction;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteFixtures;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainRefusedException.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Checks that the legs of a path lie on their routes and meet end to end. */
class PathRulesTests {

    private final Routes routes = mock(Routes.class);

    @BeforeEach
    void railway() {
        given(routes.current(anyString())).willReturn(Optional.empty());
        for (RouteDraft route : List.of(RouteFixtures.mainLine(), RouteFixtures.kilometreLine())) {
            given(routes.current(route.code()))
                    .willReturn(Optional.of(
                            new RouteRevision(1, 1, 1, RouteFixtures.MONDAY, "Anna", "first entry", route)));
        }
        given(routes.junctions()).willReturn(List.of(new JunctionDraft("Mitte", "MAIN", 480, "KILO", 0)));
    }

    @Test
    void takesLegsThatMeetAtAJunctionEitherWay() {
        assertThat(problems(leg("MAIN", 0, 480), single(0, 5))).isEmpty();
        assertThat(problems(single(5, 0), leg("MAIN", 480, 0))).isEmpty();
    }

    @Test
    void takesAReversalOnTheSameRoute() {
        assertThat(problems(leg("MAIN", 0, 480), leg("MAIN", 480, 100))).isEmpty();
    }

    @Test
    void refusesLegsThatDoNotMeet() {
        assertThat(problems(leg("MAIN", 0, 480), single(0.001, 5))).containsExactly("1 fromMeasure path-broken");
        assertThat(problems(leg("MAIN", 0, 479), single(0, 5))).containsExactly("1 fromMeasure path-broken");
        assertThat(problems(leg("MAIN", 0, 400), leg("MAIN", 401, 480))).containsExactly("1 fromMeasure path-broken");
    }

    @Test
    void refusesALegOffItsRoute() {
        assertThat(problems(leg("MAIN", 0, 801))).containsExactly("0 toMeasure leg-off-route");
        assertThat(problems(leg("MAIN", 801, 400))).containsExactly("0 fromMeasure leg-off-route");
        assertThat(problems(leg("NOWHERE", 0, 1))).containsExactly("0 routeCode route-unknown");
        assertThat(problems(leg("KILO", 0, 5))).containsExactly("0 line line-unknown");
    }

    @Test
    void refusesALegWithoutLengthOrAgainstItsDirection() {
        assertThat(problems(leg("MAIN", 100, 100))).containsExactly("0 toMeasure leg-empty");
        assertThat(problems(new Leg("MAIN", 100, 200, "Up Main", Direction.FALLING, false)))
                .containsExactly("0 direction leg-backwards");
    }

    @Test
    void namesPositionsAsTheRouteIsMeasured() {
        Problem problem = found(leg("MAIN", 0, 801)).get(0);

        assertThat(problem.args()).containsExactly("MAIN", "0m 0ch", "10m 0ch");
    }

    private static Leg single(double from, double to) {
        return new Leg("KILO", from, to, "Single", to > from ? Direction.RISING : Direction.FALLING, false);
    }

    private List<String> problems(Leg... legs) {
        return found(legs).stream()
                .map(problem -> problem.index() + " " + problem.field() + " " + problem.code())
                .toList();
    }

    private List<Problem> found(Leg... legs) {
        return new PathRules(routes).problemsOf(WorkingFixtures.train(Arrays.asList(legs), WorkingFixtures.calls()));
    }
}
