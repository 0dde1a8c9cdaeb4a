package org.crosshead.platform.account;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What an administrator does with log-ins. A lock or a new password ends the sessions of that log-in at once. */
@Service
public class Accounts {

    private static final Pattern SUBJECT = Pattern.compile("[a-z0-9][a-z0-9._-]{1,39}");

    private final AccountStore store;
    private final PasswordEncoder encoder;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;

    Accounts(
            AccountStore store,
            PasswordEncoder encoder,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.store = store;
        this.encoder = encoder;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public List<AccountRow> all() {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return store.all().stream()
                .map(account -> new AccountRow(
                        account.id(),
                        account.subject(),
                        account.displayName(),
                        account.personId() != null,
                        account.locked(),
                        account.mustChangePassword(),
                        store.posts(account.id(), today)))
                .toList();
    }

    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public List<PersonWithoutLogIn> peopleWithoutLogIn() {
        return store.peopleWithoutLogIn();
    }

    /**
     * Makes a log-in for a person and returns its one-time password, which is kept nowhere.
     *
     * @throws AccountRefusedException if the name does not do or is taken, or the person has a log-in
     */
    @Transactional
    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public OneTimePassword make(String subjectTyped, long personId) {
        String subject = PasswordLogIn.subject(subjectTyped);
        if (!SUBJECT.matcher(subject).matches()) {
            throw new AccountRefusedException("subject", "platform.accounts.subject.form");
        }
        PersonWithoutLogIn person = store.peopleWithoutLogIn().stream()
                .filter(candidate -> candidate.id() == personId)
                .findFirst()
                .orElseThrow(() -> new AccountRefusedException("personId", "platform.accounts.person.choose"));
        if (store.bySubject(subject).isPresent()) {
            throw new AccountRefusedException("subject", "platform.accounts.subject.taken");
        }
        String password = Passwords.oneTime();
        long id = add(subject, password, person);
        journal.write("account.made", "account", id, "Log-in made for staff number " + person.staffNumber());
        return new OneTimePassword(subject, password);
    }

    private long add(String subject, String password, PersonWithoutLogIn person) {
        try {
            return store.add(subject, encoded(password), person.id(), person.name(), true);
        } catch (DuplicateKeyException taken) {
            throw new AccountRefusedException("subject", "platform.accounts.subject.taken");
        }
    }

    /** Gives the log-in a one-time password in place of its own; it must be changed at the next log-in. */
    @Transactional
    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public OneTimePassword reset(long accountId) {
        Account account = notMine(accountId);
        String password = Passwords.oneTime();
        if (!store.setPassword(accountId, account.version(), encoded(password), true)) {
            throw new AccountRefusedException("account", "platform.accounts.changed");
        }
        journal.write("account.reset", "account", accountId, "One-time password given");
        return new OneTimePassword(account.subject(), password);
    }

    @Transactional
    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public void lock(long accountId) {
        notMine(accountId);
        store.setLocked(accountId, true);
        journal.write("account.locked", "account", accountId, "Log-in locked");
    }

    @Transactional
    @PreAuthorize("hasRole('ADMINISTRATOR')")
    public void unlock(long accountId) {
        notMine(accountId);
        store.setLocked(accountId, false);
        journal.write("account.unlocked", "account", accountId, "Log-in unlocked");
    }

    /** An administrator who locked themselves out might leave nobody to let them in again. */
    private Account notMine(long accountId) {
        Account account = store.byId(accountId).orElseThrow(() -> new NotFoundException("account", accountId));
        if (Objects.equals(actor.get().accountId(), accountId)) {
            throw new AccountRefusedException("account", "platform.accounts.own");
        }
        return account;
    }

    private String encoded(String password) {
        return Objects.requireNonNull(encoder.encode(password));
    }
}
