package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.route.Direction;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteFixtures;
import org.crosshead.route.TrainKind;
import org.crosshead.working.PathFinder.Spot;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.Leg;
import org.junit.jupiter.api.Test;

/** Checks the path and the calls that are worked out for a new train. */
class PathFinderTests {

    private static final RouteDraft MAIN = RouteFixtures.mainLine();
    private static final RouteDraft KILO = RouteFixtures.kilometreLine();
    private static final List<JunctionDraft> JUNCTIONS = List.of(new JunctionDraft("Mitte", "MAIN", 480, "KILO", 0));
    private static final PathFinder FINDER = new PathFinder(List.of(MAIN, KILO), JUNCTIONS);

    @Test
    void findsPlacesByName() {
        assertThat(FINDER.spotOf("Mitte")).contains(new Spot("MAIN", 480));
        assertThat(FINDER.spotOf("Home")).as("a signal is no place to go to").isEmpty();
        assertThat(FINDER.spotOf("Nowhere")).isEmpty();
    }

    @Test
    void runsAlongOneRouteOnTheLineOfItsDirection() {
        assertThat(FINDER.find(spot("Anfang"), spot("Mitte")))
                .contains(List.of(new Leg("MAIN", 0, 480, "Down Main", Direction.RISING, false)));
        assertThat(FINDER.find(spot("Mitte"), spot("Anfang")))
                .contains(List.of(new Leg("MAIN", 480, 0, "Up Main", Direction.FALLING, false)));
    }

    @Test
    void crossesAJunctionEitherWay() {
        assertThat(FINDER.find(spot("Anfang"), spot("Ende")))
                .contains(List.of(
                        new Leg("MAIN", 0, 480, "Down Main", Direction.RISING, false),
                        new Leg("KILO", 0, 5, "Single", Direction.RISING, false)));
        assertThat(FINDER.find(spot("Ende"), spot("Anfang")))
                .contains(List.of(
                        new Leg("KILO", 5, 0, "Single", Direction.FALLING, false),
                        new Leg("MAIN", 480, 0, "Up Main", Direction.FALLING, false)));
    }

    @Test
    void takesTheShorterOfTwoWays() {
        List<JunctionDraft> two = List.of(
                new JunctionDraft("Mitte", "MAIN", 480, "KILO", 0), new JunctionDraft("Loop", "MAIN", 80, "KILO", 4.5));

        assertThat(new PathFinder(List.of(MAIN, KILO), two).find(spot("Anfang"), spot("Ende")))
                .contains(List.of(
                        new Leg("MAIN", 0, 80, "Down Main", Direction.RISING, false),
                        new Leg("KILO", 4.5, 5, "Single", Direction.RISING, false)));
    }

    @Test
    void findsNoWayWhereNothingJoins() {
        PathFinder apart = new PathFinder(List.of(MAIN, KILO), List.of());

        assertThat(apart.find(spot("Anfang"), spot("Ende"))).isEqualTo(Optional.empty());
    }

    /** 6 miles at 30 miles an hour are 12 minutes, 5 km at it 6 minutes 13 seconds: rounded up to the minute. */
    @Test
    void worksOutCallsAtWholeMinutes() {
        List<Leg> legs = FINDER.find(spot("Anfang"), spot("Ende")).orElseThrow();
        Instant ten = Instant.parse("2030-05-06T10:00:00Z");

        List<Call> stopping = calls(legs, ten, true);
        List<Call> fast = calls(legs, ten, false);

        assertThat(stopping)
                .containsExactly(
                        new Call(1, 0, "Anfang", true, null, ten, false),
                        new Call(1, 480, "Mitte", true, at("10:12"), at("10:13"), false),
                        new Call(2, 5, "Ende", true, at("10:20"), null, false));
        assertThat(fast.get(1)).isEqualTo(new Call(1, 480, "Mitte", false, null, at("10:12"), false));
        assertThat(fast.get(2).arrival()).isEqualTo(at("10:19"));
    }

    private static List<Call> calls(List<Leg> legs, Instant departure, boolean everyStation) {
        return new FirstDraft(Map.of("MAIN", MAIN, "KILO", KILO))
                .calls(legs, departure, TrainKind.PASSENGER, everyStation);
    }

    private static Instant at(String time) {
        return Instant.parse("2030-05-06T" + time + ":00Z");
    }

    private static Spot spot(String place) {
        return FINDER.spotOf(place).orElseThrow();
    }
}
