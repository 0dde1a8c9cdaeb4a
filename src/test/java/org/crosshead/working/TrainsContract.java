package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.list;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.crosshead.working.WorkingFixtures.DAY;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.crosshead.route.RouteFixtures;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.Formations;
import org.crosshead.stock.WorkingPressures;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What the service of trains promises on every database. What it asks of routes, stock and people is stubbed. */
abstract class TrainsContract {

    private static final Instant MONDAY = Instant.parse("2030-05-06T08:00:00Z");

    private final List<String> journal = new ArrayList<>();
    private DataSource source;
    private JdbcClient jdbc;
    private Trains trains;

    /** A database with all tables and nothing in them, anew at each call. */
    abstract DataSource dataSource();

    @BeforeEach
    void migrate() {
        source = dataSource();
        jdbc = JdbcClient.create(source);
        trains = new Trains(
                new TrainStore(jdbc),
                new Bookings(jdbc),
                new PathRules(routes()),
                engines(),
                mock(WorkingPressures.class, call -> OptionalDouble.empty()),
                formations(),
                people(),
                (kind, subjectType, id, summary) -> journal.add(kind + " " + subjectType + " " + summary),
                () -> new CurrentActor.Actor("Anna"),
                Clock.fixed(MONDAY, ZoneOffset.UTC),
                event -> {});
    }

    @Test
    void keepsATrainWithAllItsLists() {
        Train stored = trains.enter(WorkingFixtures.train());

        assertThat(stored.content()).isEqualTo(WorkingFixtures.train());
        assertThat(stored.revision()).isEqualTo(1);
        assertThat(stored.madeAt()).isEqualTo(MONDAY);
        assertThat(stored.madeBy()).isEqualTo("Anna");
        assertThat(trains.find(stored.id())).contains(stored);
        assertThat(trains.find("W1", DAY)).contains(stored);
        assertThat(trains.find("W1", DAY.plusDays(1))).isEmpty();
        assertThat(journal).containsExactly("train.entered train W1 2030-05-06: entered");
    }

    @Test
    void listsTrainsByDayAndCode() {
        trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W3"), List.of(WorkingFixtures.engine("613", null, null)), List.of()));
        Train first = trains.enter(WorkingFixtures.train("W2"));
        trains.enter(WorkingFixtures.train("W1", DAY.plusDays(1)));

        assertThat(trains.between(DAY, DAY)).extracting(TrainSummary::code).containsExactly("W2", "W3");
        assertThat(trains.between(DAY, DAY.plusDays(1)))
                .extracting(TrainSummary::code)
                .containsExactly("W2", "W3", "W1");
        assertThat(trains.between(DAY, DAY).get(0))
                .isEqualTo(new TrainSummary(
                        first.id(),
                        "W2",
                        DAY,
                        "Anfang to Mitte",
                        false,
                        "Anfang",
                        Instant.parse("2030-05-06T10:00:00Z"),
                        "Mitte",
                        Instant.parse("2030-05-06T10:20:00Z"),
                        "SET",
                        List.of("612"),
                        List.of("T-1", "T-2")));
    }

    @Test
    void revisesWithoutTouchingTheRevisionBefore() {
        Train first = trains.enter(WorkingFixtures.train());

        Train second = trains.change(first.id(), first.version(), WorkingFixtures.train("W9"), "new code");

        assertThat(second.revision()).isEqualTo(2);
        assertThat(trains.history(first.id())).extracting(Train::revision).containsExactly(2, 1);
        assertThat(trains.history(first.id()).get(1).reason()).isEqualTo("entered");
        assertThat(trains.find("W9", DAY)).contains(second);
        assertThat(trains.find("W1", DAY)).isEmpty();
        assertThat(journal).last().isEqualTo("train.changed train W9 2030-05-06: new code");
    }

    @Test
    void noticesThatSomebodyElseChangedTheTrain() {
        Train first = trains.enter(WorkingFixtures.train());
        trains.change(first.id(), first.version(), WorkingFixtures.train(), "one");

        assertThatThrownBy(() -> trains.change(first.id(), first.version(), WorkingFixtures.train(), "two"))
                .isInstanceOf(TrainChangedException.class);
        assertThatThrownBy(() -> trains.cancel(first.id(), first.version(), "two"))
                .isInstanceOf(TrainChangedException.class);

        assertThat(trains.history(first.id())).hasSize(2);
    }

    @Test
    void keepsACancelledTrainAndTheReason() {
        Train first = trains.enter(WorkingFixtures.train());

        trains.cancel(first.id(), first.version(), "engine failed");

        Train cancelled = trains.find(first.id()).orElseThrow();
        assertThat(cancelled.cancelled()).isTrue();
        assertThat(cancelled.reason()).isEqualTo("engine failed");
        assertThat(cancelled.content()).isEqualTo(first.content());
        assertThat(trains.between(DAY, DAY).get(0).cancelled()).isTrue();
        assertThatThrownBy(() -> trains.cancel(first.id(), cancelled.version(), "again"))
                .isInstanceOf(TrainChangedException.class);
        assertThatThrownBy(() -> trains.change(first.id(), cancelled.version(), first.content(), "runs after all"))
                .isInstanceOf(TrainChangedException.class);
        assertThat(journal).last().isEqualTo("train.cancelled train W1 2030-05-06: engine failed");
    }

    @Test
    void copiesATrainToAnotherDay() {
        Train first = trains.enter(WorkingFixtures.train());

        Train copy = trains.copy(first.id(), DAY.plusDays(2), new DayShift(ZoneOffset.UTC));

        assertThat(copy.id()).isNotEqualTo(first.id());
        assertThat(copy.content().calls().get(0).departure()).isEqualTo(Instant.parse("2030-05-08T10:00:00Z"));
        assertThatThrownBy(() -> trains.copy(first.id(), DAY, new DayShift(ZoneOffset.UTC)))
                .asInstanceOf(type(TrainRefusedException.class))
                .extracting(refused -> refused.problems().get(0).code())
                .isEqualTo("code-taken");
    }

    @Test
    void refusesAPersonAndAnEngineThatAnotherTrainHasAtThatTime() {
        trains.enter(WorkingFixtures.train("W1"));

        assertThatThrownBy(() -> trains.enter(WorkingFixtures.train("W2")))
                .asInstanceOf(type(TrainRefusedException.class))
                .extracting(refused -> refused.problems().stream()
                        .map(problem -> problem.list() + problem.index() + " " + problem.code() + " "
                                + problem.args().get(0) + " " + problem.args().get(1))
                        .toList())
                .asInstanceOf(list(String.class))
                .containsExactly(
                        "crew0 person-booked T-1 W1", "crew1 person-booked T-2 W1", "engines0 engine-booked 612 W1");
    }

    @Test
    void aCancelledTrainBindsNobodyAndATrainDoesNotBindItself() {
        Train first = trains.enter(WorkingFixtures.train("W1"));
        Train renamed = trains.change(first.id(), first.version(), WorkingFixtures.train("W9"), "renamed");
        trains.cancel(renamed.id(), renamed.version(), "not needed");

        assertThat(trains.enter(WorkingFixtures.train("W2")).content().code()).isEqualTo("W2");
    }

    /** An engine is free again at the minute at which it arrives. */
    @Test
    void anEngineMayFollowItselfInTime() {
        trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W1"), List.of(WorkingFixtures.engine("612", null, null)), List.of()));
        TrainDraft later = WorkingFixtures.later(
                WorkingFixtures.with(
                        WorkingFixtures.train("W2"), List.of(WorkingFixtures.engine("612", null, null)), List.of()),
                20);

        assertThat(trains.enter(later).content().code()).isEqualTo("W2");
        TrainDraft sooner = WorkingFixtures.later(
                WorkingFixtures.with(
                        WorkingFixtures.train("W3"), List.of(WorkingFixtures.engine("612", null, null)), List.of()),
                19);
        assertThatThrownBy(() -> trains.enter(sooner)).isInstanceOf(TrainRefusedException.class);
    }

    /** From the first minute booked on to the last before booking off a person is bound, over midnight too. */
    @ParameterizedTest
    @CsvSource({"15:59, 23:00, person-booked", "16:00, 23:00, ''", "05:00, 09:15, ''", "05:00, 09:16, person-booked"})
    void bindsAPersonFromBookingOnToBookingOff(String on, String off, String expected) {
        trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W1"),
                List.of(WorkingFixtures.engine("612", null, null)),
                List.of(WorkingFixtures.slot("T-1", Post.DRIVER, "09:15", "16:00"))));
        CrewSlot other =
                new CrewSlot("T-1", Post.DRIVER, "613", null, null, WorkingFixtures.utc(on), WorkingFixtures.utc(off));

        assertThat(codes(WorkingFixtures.with(
                        WorkingFixtures.train("W2"),
                        List.of(WorkingFixtures.engine("613", null, null)),
                        List.of(other))))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"120, person-booked", "240, ''"})
    void bindsAPersonOverMidnight(int minutesAfterMidnight, String expected) {
        Instant evening = Instant.parse("2030-05-06T22:00:00Z");
        Instant night = evening.plus(Duration.ofHours(5));
        trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W1"),
                List.of(WorkingFixtures.engine("612", null, null)),
                List.of(new CrewSlot("T-1", Post.DRIVER, "612", null, null, evening, night))));
        Instant on = evening.plus(Duration.ofHours(2)).plus(Duration.ofMinutes(minutesAfterMidnight));
        TrainDraft nextDay = WorkingFixtures.with(
                WorkingFixtures.train("W1", DAY.plusDays(1)),
                List.of(WorkingFixtures.engine("613", null, null)),
                List.of(new CrewSlot("T-1", Post.DRIVER, "613", null, null, on, on.plus(Duration.ofHours(4)))));

        assertThat(codes(nextDay)).isEqualTo(expected);
    }

    /** The assisting engine comes off at Two at 10:08, and until then belongs to the first train. */
    @ParameterizedTest
    @CsvSource({"7, engine-booked", "8, ''"})
    void bindsAnAssistingEngineOnlyWhereItAssists(int minute, String expected) {
        List<Call> calls = List.of(
                WorkingFixtures.call(0, "Anfang", null, "10:00"),
                WorkingFixtures.call(200, "Two", "10:08", "10:10"),
                WorkingFixtures.call(480, "Mitte", "10:20", null));
        trains.enter(WorkingFixtures.with(
                WorkingFixtures.train(List.of(WorkingFixtures.leg("MAIN", 0, 480)), calls),
                List.of(WorkingFixtures.engine("612", null, null), WorkingFixtures.engine("613", "Anfang", "Two")),
                List.of()));
        TrainDraft other = WorkingFixtures.with(
                WorkingFixtures.train("W2"), List.of(WorkingFixtures.engine("613", null, null)), List.of());

        assertThat(codes(WorkingFixtures.later(other, minute))).isEqualTo(expected);
    }

    @Test
    void oneOfTwoPeopleStoringAtOneMomentIsRefused() throws Exception {
        TransactionTemplate transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        ExecutorService other = Executors.newSingleThreadExecutor();
        try {
            Future<String> second = transaction.execute(status -> {
                trains.enter(WorkingFixtures.train("W1"));
                Future<String> waiting =
                        other.submit(() -> transaction.execute(own -> codes(WorkingFixtures.train("W2"))));
                assertThatThrownBy(() -> waiting.get(300, TimeUnit.MILLISECONDS))
                        .isInstanceOf(TimeoutException.class);
                return waiting;
            });

            assertThat(second.get()).isEqualTo("person-booked person-booked engine-booked");
        } finally {
            other.shutdownNow();
        }
    }

    /** Enters a train; returns the codes of what was refused, or nothing. */
    private String codes(TrainDraft draft) {
        try {
            trains.enter(draft);
            return "";
        } catch (TrainRefusedException ex) {
            return ex.problems().stream()
                    .map(TrainRefusedException.Problem::code)
                    .collect(Collectors.joining(" "));
        }
    }

    @Test
    void storesNothingOfARefusedTrain() {
        TrainDraft wrong = WorkingFixtures.with(
                WorkingFixtures.train(), List.of(WorkingFixtures.engine("9999", null, null)), List.of());

        assertThatThrownBy(() -> trains.enter(wrong)).isInstanceOf(TrainRefusedException.class);

        assertThat(trains.between(DAY, DAY)).isEmpty();
        assertThat(journal).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update train_leg set direction = 'FALLING'",
                "update train_call set departure = arrival - interval '1' hour where arrival is not null",
                "update train_engine set glass_share = 1.1",
                "update train_engine set pressure_psi_gauge = 400",
                "update train_crew_slot set book_off = book_on where book_on is not null",
                "insert into train (version, code, running_day, cancelled, current_revision) "
                        + "values (1, 'W1', date '2030-05-06', false, 0)"
            })
    void theTablesThemselvesRefuseWhatTheRulesRefuse(String sql) {
        trains.enter(WorkingFixtures.train());

        assertThatThrownBy(() -> jdbc.sql(sql).update()).isInstanceOf(DataIntegrityViolationException.class);
    }

    private static Routes routes() {
        Routes routes = mock(Routes.class);
        given(routes.current("MAIN"))
                .willReturn(Optional.of(
                        new RouteRevision(1, 1, 1, MONDAY, "Anna", "first entry", RouteFixtures.mainLine())));
        return routes;
    }

    private static Engines engines() {
        Engines engines = mock(Engines.class);
        given(engines.current(anyString())).willReturn(Optional.empty());
        given(engines.current("612")).willReturn(Optional.of(mock(EngineRevision.class)));
        given(engines.current("613")).willReturn(Optional.of(mock(EngineRevision.class)));
        return engines;
    }

    private static Formations formations() {
        Formations formations = mock(Formations.class);
        given(formations.current("SET")).willReturn(Optional.of(mock(FormationRevision.class)));
        return formations;
    }

    private static People people() {
        People people = mock(People.class);
        given(people.byStaffNumber(any()))
                .willReturn(Optional.of(new Person(
                        1,
                        "T-1",
                        "Ida Testwell",
                        List.of(
                                new PersonDraft.PostHeld(Post.DRIVER, DAY.minusYears(1), null),
                                new PersonDraft.PostHeld(Post.FIREMAN, DAY.minusYears(1), null)))));
        return people;
    }
}
