package org.crosshead.platform.account;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.stereotype.Service;

/** Gives a log-in the rights of the posts that it holds today. */
@Service
public class PostsOfToday {

    private final AccountStore accounts;
    private final Clock clock;
    private final ZoneId zone;

    PostsOfToday(AccountStore accounts, Clock clock, ZoneId zone) {
        this.accounts = accounts;
        this.clock = clock;
        this.zone = zone;
    }

    /** Returns the session's log-in with today's posts, or nothing once it is locked or its password is another. */
    public Optional<Authentication> renewed(LogIn logIn) {
        return accounts.byId(logIn.accountId())
                .filter(account -> !account.locked() && account.version() == logIn.version())
                .map(account -> authentication(account.logIn()));
    }

    Authentication authentication(LogIn logIn) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        String[] roles = accounts.posts(logIn.accountId(), today).stream()
                .map(post -> "ROLE_" + post)
                .toArray(String[]::new);
        return UsernamePasswordAuthenticationToken.authenticated(
                logIn, null, AuthorityUtils.createAuthorityList(roles));
    }
}
