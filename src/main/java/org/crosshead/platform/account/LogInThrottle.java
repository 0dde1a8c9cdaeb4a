package org.crosshead.platform.account;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Objects;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.jdbc.support.KeyHolder;
import org.springframework.stereotype.Component;

/**
 * Counts failed attempts to log in, in the database, so that all instances count together.
 *
 * <p>An attempt is entered before the password is compared and counted afterwards: attempts made at the same moment cannot
 * slip past the limit together.
 */
@Component
class LogInThrottle {

    static final int FAILURES_MAX = 5;
    static final Duration WINDOW = Duration.ofMinutes(15);
    private static final int ADDRESS_LENGTH_MAX = 64;

    private final JdbcClient jdbc;
    private final Clock clock;

    LogInThrottle(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Enters an attempt and says whether it may be made; one that may not does not count against the next. */
    boolean admits(String subject, String address) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        jdbc.sql("delete from login_attempt where at <= :from")
                .param("from", now.minus(WINDOW))
                .update();
        long attempt = enter(subject, shortened(address), now);
        if (count(subject, shortened(address)) <= FAILURES_MAX) {
            return true;
        }
        jdbc.sql("delete from login_attempt where id = :id")
                .param("id", attempt)
                .update();
        return false;
    }

    /** Forgets the attempts of somebody who has now logged in. */
    void succeeded(String subject, String address) {
        jdbc.sql("delete from login_attempt where subject = :subject and address = :address")
                .param("subject", subject)
                .param("address", shortened(address))
                .update();
    }

    private long enter(String subject, String address, OffsetDateTime now) {
        KeyHolder key = new GeneratedKeyHolder();
        jdbc.sql("insert into login_attempt (subject, address, at) values (:subject, :address, :at)")
                .param("subject", subject)
                .param("address", address)
                .param("at", now)
                .update(key, "id");
        return Objects.requireNonNull(key.getKeyAs(Long.class));
    }

    private long count(String subject, String address) {
        return jdbc.sql("select count(*) from login_attempt where subject = :subject and address = :address")
                .param("subject", subject)
                .param("address", address)
                .query(Long.class)
                .single();
    }

    private static String shortened(String address) {
        return address.substring(0, Math.min(address.length(), ADDRESS_LENGTH_MAX));
    }
}
