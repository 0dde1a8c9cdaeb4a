package org.crosshead.platform;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.crosshead.platform.account.LogIn;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;

/** People and log-ins of no railway that ever was. */
public final class PlatformFixtures {

    private PlatformFixtures() {}

    public static Clock at(Instant moment) {
        return Clock.fixed(moment, ZoneOffset.UTC);
    }

    public static long person(JdbcClient jdbc, String staffNumber, String name) {
        jdbc.sql("insert into person (staff_number, name, version) values (?, ?, 0)")
                .params(staffNumber, name)
                .update();
        return jdbc.sql("select id from person where staff_number = ?")
                .param(staffNumber)
                .query(Long.class)
                .single();
    }

    public static void post(JdbcClient jdbc, long personId, String post, LocalDate first, @Nullable LocalDate last) {
        jdbc.sql("insert into person_post (person_id, post, first_day, last_day) values (:id, :post, :first, :last)")
                .param("id", personId)
                .param("post", post)
                .param("first", first)
                .param("last", last)
                .update();
    }

    public static Authentication loggedIn(LogIn logIn, String... posts) {
        String[] roles =
                java.util.Arrays.stream(posts).map(post -> "ROLE_" + post).toArray(String[]::new);
        return UsernamePasswordAuthenticationToken.authenticated(
                logIn, null, AuthorityUtils.createAuthorityList(roles));
    }

    public static ZoneId utc() {
        return ZoneOffset.UTC;
    }
}
