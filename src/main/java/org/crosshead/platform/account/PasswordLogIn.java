package org.crosshead.platform.account;

import java.util.Locale;
import java.util.Optional;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;

/** Checks the password of a log-in; a wrong name, a wrong password and a lock are told apart to nobody. */
@Component
class PasswordLogIn implements AuthenticationProvider {

    static final int SUBJECT_LENGTH_MAX = 80;

    private final AccountStore accounts;
    private final PostsOfToday posts;
    private final LogInThrottle throttle;
    private final PasswordEncoder encoder;
    private final String hashOfNobody;

    PasswordLogIn(AccountStore accounts, PostsOfToday posts, LogInThrottle throttle, PasswordEncoder encoder) {
        this.accounts = accounts;
        this.posts = posts;
        this.throttle = throttle;
        this.encoder = encoder;
        this.hashOfNobody = encoder.encode(Passwords.oneTime());
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        String subject = subject(asked.getName());
        String address = address(asked);
        if (!throttle.admits(subject, address)) {
            throw new TooManyAttemptsException();
        }
        Optional<Account> account = accounts.bySubject(subject);
        if (!matches(account, String.valueOf(asked.getCredentials()))) {
            throw new BadCredentialsException("wrong name or password, or locked");
        }
        throttle.succeeded(subject, address);
        return posts.authentication(account.orElseThrow().logIn());
    }

    /** Compares also where there is nothing to compare with, so that the time taken tells nothing. */
    private boolean matches(Optional<Account> account, String password) {
        String hash = account.map(Account::passwordHash).orElse(hashOfNobody);
        boolean right = Passwords.fits(password) && encoder.matches(password, hash);
        return right && account.isPresent() && !account.get().locked();
    }

    @Override
    public boolean supports(Class<?> type) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(type);
    }

    static String subject(String typed) {
        String subject = typed.strip().toLowerCase(Locale.ROOT);
        return subject.substring(0, Math.min(subject.length(), SUBJECT_LENGTH_MAX));
    }

    private static String address(Authentication asked) {
        return asked.getDetails() instanceof WebAuthenticationDetails details
                ? String.valueOf(details.getRemoteAddress())
                : "unknown";
    }
}
