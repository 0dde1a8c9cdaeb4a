package org.crosshead.platform.account;

import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionOperations;

/** Makes the first log-in of an empty house, an administrator's, and says its one-time password on the console. */
@Component
@Profile("!demo")
class FirstAdministrator implements ApplicationRunner {

    static final String SUBJECT = "administrator";

    private static final Logger LOG = LoggerFactory.getLogger(FirstAdministrator.class);

    private final AccountStore store;
    private final PasswordEncoder encoder;
    private final TransactionOperations transaction;

    FirstAdministrator(AccountStore store, PasswordEncoder encoder, TransactionOperations transaction) {
        this.store = store;
        this.encoder = encoder;
        this.transaction = transaction;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (!store.isEmpty()) {
            return;
        }
        String password = Passwords.oneTime();
        try {
            transaction.executeWithoutResult(status -> add(password));
            LOG.warn("First start. Log in as \"{}\" with the one-time password {}", SUBJECT, password);
        } catch (DuplicateKeyException another) {
            LOG.info("Another instance has made the first administrator");
        }
    }

    private void add(String password) {
        String hash = Objects.requireNonNull(encoder.encode(password));
        long id = store.add(SUBJECT, hash, null, "Administrator", true);
        store.addRole(id, "ADMINISTRATOR");
    }
}
