package org.crosshead.competence.refresh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Subject;
import org.crosshead.competence.refresh.RefreshProblem.Aim;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.ThinCover.Asked;
import org.crosshead.competence.refresh.ThinCover.Unmet;
import org.crosshead.competence.refresh.ThinCover.Why;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An invented depot of six: 1 and 2 drive the hill, 3 lapsed on it, 4 and 5 know the roads on either side, 6 is a fireman. */
class ThinCoverTests {

    private static final LocalDate DAY = LocalDate.of(2030, 5, 6);
    private static final Subject HILL = road("HILL");
    private static final Subject VALE = road("VALE");
    private static final Subject COAST = road("COAST");

    private final Map<Subject, Map<Long, Holding>> all = new TreeMap<>();
    private Map<Subject, Set<Long>> learning = Map.of();
    private Set<Long> drivers = Set.of(1L, 2L, 3L, 4L, 5L);
    private Set<Long> busy = Set.of();
    private Set<Subject> taught = Set.of(HILL, VALE, COAST);
    private Set<Subject> run = Set.of(HILL, VALE, COAST);

    @BeforeEach
    void knowsTheRoads() {
        holds(HILL, 1, State.HELD);
        holds(HILL, 2, State.DUE);
        holds(HILL, 3, State.LAPSED);
        for (long person = 1; person <= 5; person++) {
            holds(VALE, person, State.HELD);
        }
        for (long person : List.of(1L, 2L, 4L)) {
            holds(COAST, person, State.HELD);
        }
    }

    @Test
    void whoLapsedBeginsFirstThenWhoLacksLeast() {
        assertThat(plan(2).needs()).as("two hold it").isEmpty();
        assertThat(plan(3).needs()).extracting(Need::personId).containsExactly(3L);
        assertThat(plan(4).needs())
                .filteredOn(need -> need.subject().equals(HILL))
                .extracting(Need::personId, Need::count, Need::aim, Need::last)
                .containsExactly(tuple(3L, 2, Aim.COVER, DAY.plusDays(56)), tuple(4L, 5, Aim.COVER, DAY.plusDays(56)));
    }

    @Test
    void whoLearnsItAlreadyIsCountedAndNobodyIsAskedTooMuchAtOnce() {
        learning = Map.of(HILL, Set.of(5L));
        assertThat(plan(3).needs()).isEmpty();
        learning = Map.of(HILL, Set.of(5L), road("X"), Set.of(3L), road("Y"), Set.of(3L));
        assertThat(plan(4).needs())
                .filteredOn(need -> need.subject().equals(HILL))
                .as("3 learns two things already")
                .extracting(Need::personId)
                .containsExactly(4L);
    }

    @Test
    void whoIsBarredOrIsNoDriverDoesNotBegin() {
        drivers = Set.of(4L);
        holds(HILL, 4, State.SUSPENDED);
        holds(HILL, 3, State.WITHDRAWN);
        assertThat(plan(3)).satisfies(plan -> {
            assertThat(plan.needs()).isEmpty();
            assertThat(plan.unmet()).contains(new Unmet(HILL, Why.NOBODY));
        });
    }

    @Test
    void whomNoTrainSuitsIsNotAsked() {
        busy = Set.of(3L, 4L);
        assertThat(plan(3).needs()).extracting(Need::personId).containsExactly(5L);
        busy = Set.of(3L, 4L, 5L, 6L);
        assertThat(plan(3).unmet()).containsExactly(new Unmet(HILL, Why.NOBODY));
    }

    @Test
    void whatNobodyTeachesOrNoTrainRunsOverStaysThinAndSaysWhy() {
        taught = Set.of(VALE, COAST);
        assertThat(plan(3).unmet()).containsExactly(new Unmet(HILL, Why.NOT_TAUGHT));
        taught = Set.of(HILL, VALE, COAST);
        run = Set.of(VALE, COAST);
        assertThat(plan(3).unmet()).containsExactly(new Unmet(HILL, Why.NO_TRAIN));
    }

    /** A road that one of the depot's trains asks belongs to it though nobody of it has ever had to do with it. */
    @Test
    void depotIsShortOfWhatItsTrainsAsk() {
        Set<Long> depot = Set.of(4L, 5L, 6L);
        ThinCover own = new ThinCover(all, depot, Set.of(4L, 5L), Map.of(), List.of(train(4)), 1);
        assertThat(own.plan(new Invented(), DAY.plusDays(56)).needs())
                .extracting(Need::personId, Need::subject)
                .containsExactly(tuple(4L, HILL));
        ThinCover others = new ThinCover(all, depot, Set.of(4L, 5L), Map.of(), List.of(train(1)), 1);
        assertThat(others.plan(new Invented(), DAY.plusDays(56)).needs()).isEmpty();
    }

    private ThinCover.Plan plan(int least) {
        return new ThinCover(all, Set.of(1L, 2L, 3L, 4L, 5L, 6L), drivers, learning, List.of(train(1)), least)
                .plan(new Invented(), DAY.plusDays(56));
    }

    private static Asked train(long driver) {
        return new Asked(driver, Set.of(HILL, VALE, COAST));
    }

    private static Subject road(String code) {
        return new Subject(Subject.Kind.SECTION, code);
    }

    private void holds(Subject subject, long person, State state) {
        all.computeIfAbsent(subject, key -> new TreeMap<>())
                .put(person, new Holding(subject, state, null, DAY.minusMonths(person), null, List.of()));
    }

    /** A beginner makes five trips, who lapsed two. */
    private final class Invented implements ThinCover.Teaching {

        @Override
        public boolean isTaught(Subject subject) {
            return taught.contains(subject);
        }

        @Override
        public boolean isRun(Subject subject) {
            return run.contains(subject);
        }

        @Override
        public boolean suits(long personId, Subject subject) {
            return !busy.contains(personId);
        }

        @Override
        public int trips(long personId, Subject subject) {
            return personId == 3 ? 2 : 5;
        }
    }
}
