package org.crosshead.platform.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.crosshead.platform.PlatformFixtures.at;
import static org.crosshead.platform.PlatformFixtures.person;
import static org.crosshead.platform.PlatformFixtures.post;

import java.time.Instant;
import java.time.LocalDate;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the tables of log-ins, posts and failed attempts promise on every database. */
abstract class AccountStoreContract {

    private static final LocalDate MONDAY = LocalDate.of(2030, 5, 6);
    private static final LocalDate TUESDAY = LocalDate.of(2030, 5, 7);
    private static final LocalDate WEDNESDAY = LocalDate.of(2030, 5, 8);
    private static final Instant NOON = Instant.parse("2030-05-06T12:00:00Z");

    private JdbcClient jdbc;
    private AccountStore store;

    private DataSource database;

    /** A database with all tables and nothing in them, anew at each call. */
    abstract DataSource dataSource();

    @BeforeEach
    void migrate() {
        database = dataSource();
        jdbc = JdbcClient.create(database);
        store = new AccountStore(jdbc);
    }

    @Test
    void givesThePostsOfTheDayWithBothDaysIncluded() {
        long anna = person(jdbc, "T-1", "Anna Example");
        long account = store.add("anna", "hash", anna, "Anna Example", false);
        post(jdbc, anna, "FIREMAN", MONDAY, TUESDAY);
        post(jdbc, anna, "DRIVER", TUESDAY, null);

        assertThat(store.posts(account, MONDAY.minusDays(1))).isEmpty();
        assertThat(store.posts(account, MONDAY)).containsExactly("FIREMAN");
        assertThat(store.posts(account, TUESDAY)).containsExactly("DRIVER", "FIREMAN");
        assertThat(store.posts(account, WEDNESDAY)).containsExactly("DRIVER");
    }

    @Test
    void givesALogInWithoutPersonItsOwnRolesUntilItIsJoined() {
        long account = store.add("chief", "hash", null, "Administrator", true);
        store.addRole(account, "ADMINISTRATOR");
        assertThat(store.posts(account, MONDAY)).containsExactly("ADMINISTRATOR");

        long ben = person(jdbc, "T-2", "Ben Example");
        store.join(account, ben);

        assertThat(store.posts(account, MONDAY)).isEmpty();
        assertThat(store.byId(account).orElseThrow().displayName()).isEqualTo("Ben Example");
        assertThat(store.byId(account).orElseThrow().personId()).isEqualTo(ben);
    }

    @Test
    void keepsOneLogInOfAName() {
        store.add("anna", "hash", null, "Anna", false);

        assertThatThrownBy(() -> store.add("anna", "hash", null, "Another", false))
                .isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void refusesALogInOfNobodyKnown() {
        assertThatThrownBy(() -> store.add("ghost", "hash", 4711L, "Ghost", false))
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void storesAPasswordOnlyForTheVersionThatWasSeen() {
        long account = store.add("anna", "first", null, "Anna", true);

        assertThat(store.setPassword(account, 0, "second", false)).isTrue();
        assertThat(store.setPassword(account, 0, "third", false)).isFalse();

        Account stored = store.bySubject("anna").orElseThrow();
        assertThat(stored.passwordHash()).isEqualTo("second");
        assertThat(stored.mustChangePassword()).isFalse();
        assertThat(stored.version()).isEqualTo(1);
    }

    @Test
    void endsSessionsByTheVersionWhenLocked() {
        long account = store.add("anna", "hash", null, "Anna", false);
        PostsOfToday posts = new PostsOfToday(store, at(NOON), org.crosshead.platform.PlatformFixtures.utc());
        LogIn session = store.byId(account).orElseThrow().logIn();
        assertThat(posts.renewed(session)).isPresent();

        store.setLocked(account, true);
        assertThat(posts.renewed(session)).isEmpty();
        store.setLocked(account, false);
        assertThat(posts.renewed(session)).as("a session from before the lock").isEmpty();
    }

    @Test
    void admitsFiveAttemptsInFifteenMinutesFromOneAddress() {
        LogInThrottle throttle = new LogInThrottle(jdbc, at(NOON));
        for (int attempt = 1; attempt <= LogInThrottle.FAILURES_MAX; attempt++) {
            assertThat(throttle.admits("anna", "192.0.2.1"))
                    .as("attempt %d", attempt)
                    .isTrue();
        }

        assertThat(throttle.admits("anna", "192.0.2.1")).isFalse();
        assertThat(throttle.admits("anna", "192.0.2.2")).as("another address").isTrue();
        assertThat(throttle.admits("ben", "192.0.2.1")).as("another name").isTrue();
    }

    @Test
    void admitsAgainOnceTheWindowHasPassed() {
        LogInThrottle atNoon = new LogInThrottle(jdbc, at(NOON));
        for (int attempt = 0; attempt < LogInThrottle.FAILURES_MAX; attempt++) {
            atNoon.admits("anna", "192.0.2.1");
        }
        Instant after = NOON.plus(LogInThrottle.WINDOW);

        assertThat(new LogInThrottle(jdbc, at(after.minusSeconds(1))).admits("anna", "192.0.2.1"))
                .isFalse();
        assertThat(new LogInThrottle(jdbc, at(after)).admits("anna", "192.0.2.1"))
                .isTrue();
    }

    @Test
    void forgetsTheFailuresOfWhoeverLogsIn() {
        LogInThrottle throttle = new LogInThrottle(jdbc, at(NOON));
        for (int attempt = 0; attempt < LogInThrottle.FAILURES_MAX; attempt++) {
            throttle.admits("anna", "192.0.2.1");
        }
        throttle.succeeded("anna", "192.0.2.1");

        assertThat(throttle.admits("anna", "192.0.2.1")).isTrue();
    }

    @Test
    void listsPeopleWithoutALogIn() {
        long anna = person(jdbc, "T-1", "Anna Example");
        long ben = person(jdbc, "T-2", "Ben Example");
        store.add("anna", "hash", anna, "Anna Example", false);

        assertThat(store.peopleWithoutLogIn()).containsExactly(new PersonWithoutLogIn(ben, "T-2", "Ben Example"));
    }
}
