package org.crosshead.platform.account;

import java.util.Objects;
import org.crosshead.platform.Journal;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes the password of whoever is logged in. */
@Service
public class OwnPassword {

    private final AccountStore store;
    private final PostsOfToday posts;
    private final LogInThrottle throttle;
    private final PasswordEncoder encoder;
    private final Journal journal;

    OwnPassword(
            AccountStore store, PostsOfToday posts, LogInThrottle throttle, PasswordEncoder encoder, Journal journal) {
        this.store = store;
        this.posts = posts;
        this.throttle = throttle;
        this.encoder = encoder;
        this.journal = journal;
    }

    /**
     * Changes the password and returns the log-in with which this session goes on; all others of the log-in end.
     *
     * @param address from where it is asked, for the throttle
     * @throws AccountRefusedException if the present password is wrong or the new one does not do
     */
    @Transactional(noRollbackFor = AccountRefusedException.class)
    public Authentication change(LogIn logIn, String address, PasswordChange change) {
        Account account = store.byId(logIn.accountId()).orElseThrow();
        checkPresent(account, address, change.present());
        checkChosen(account, change);
        String hash = Objects.requireNonNull(encoder.encode(change.chosen()));
        if (!store.setPassword(account.id(), account.version(), hash, false)) {
            throw new AccountRefusedException("present", "platform.accounts.changed");
        }
        journal.write("account.password", "account", account.id(), "Password changed by its holder");
        return posts.authentication(store.byId(account.id()).orElseThrow().logIn());
    }

    private void checkPresent(Account account, String address, String present) {
        if (!throttle.admits(account.subject(), address)) {
            throw new AccountRefusedException("present", "platform.login.throttled");
        }
        if (!Passwords.fits(present) || !encoder.matches(present, account.passwordHash())) {
            throw new AccountRefusedException("present", "platform.password.present.wrong");
        }
        throttle.succeeded(account.subject(), address);
    }

    private static void checkChosen(Account account, PasswordChange change) {
        String chosen = change.chosen();
        if (!Passwords.isLongEnough(chosen)) {
            throw new AccountRefusedException("chosen", "platform.password.chosen.short");
        }
        if (!Passwords.fits(chosen)) {
            throw new AccountRefusedException("chosen", "platform.password.chosen.long");
        }
        if (chosen.equals(change.present()) || chosen.equalsIgnoreCase(account.subject())) {
            throw new AccountRefusedException("chosen", "platform.password.chosen.known");
        }
        if (!chosen.equals(change.repeated())) {
            throw new AccountRefusedException("repeated", "platform.password.repeated.other");
        }
    }
}
