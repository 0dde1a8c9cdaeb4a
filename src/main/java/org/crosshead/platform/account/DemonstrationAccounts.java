package org.crosshead.platform.account;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Log-ins of the demonstration, one for each post, all with one password that stands on the log-in page.
 *
 * <p>They are joined to people of the demonstration railway by staff number, after all start-up work, and have the post by
 * themselves as long as there is no such person.
 */
@Service
@Profile("demo")
public class DemonstrationAccounts {

    public static final String PASSWORD = "demonstration";

    private static final List<DemonstrationAccount> ALL = List.of(
            new DemonstrationAccount("inspector", "INSPECTOR", "I-01"),
            new DemonstrationAccount("manager", "MANAGER", "M-01"),
            new DemonstrationAccount("assessor", "ASSESSOR", "A-01"),
            new DemonstrationAccount("administrator", "ADMINISTRATOR", "X-01"),
            new DemonstrationAccount("driver", "DRIVER", "D-01"),
            new DemonstrationAccount("fireman", "FIREMAN", "F-01"));

    private final AccountStore store;
    private final PasswordEncoder encoder;

    DemonstrationAccounts(AccountStore store, PasswordEncoder encoder) {
        this.store = store;
        this.encoder = encoder;
    }

    public List<DemonstrationAccount> all() {
        return ALL;
    }

    /** Makes the log-ins that are missing and joins to its person each that is not joined yet. */
    @EventListener(ApplicationReadyEvent.class)
    @Transactional
    public void make() {
        List<DemonstrationAccount> missing = ALL.stream()
                .filter(account -> store.bySubject(account.subject()).isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            String hash = Objects.requireNonNull(encoder.encode(PASSWORD));
            missing.forEach(account -> add(account, hash));
        }
        ALL.forEach(this::join);
    }

    private void add(DemonstrationAccount account, String hash) {
        long id = store.add(account.subject(), hash, null, "Demonstration " + account.subject(), false);
        store.addRole(id, account.post());
    }

    private void join(DemonstrationAccount demonstration) {
        Account account = store.bySubject(demonstration.subject()).orElseThrow();
        Optional<PersonWithoutLogIn> person = store.personByStaffNumber(demonstration.staffNumber());
        if (account.personId() == null && person.isPresent()) {
            store.join(account.id(), person.get().id());
        }
    }

    /** A log-in of the demonstration and the person whose it is. */
    public record DemonstrationAccount(String subject, String post, String staffNumber) {}
}
