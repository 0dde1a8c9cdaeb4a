package org.crosshead.platform.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.transaction.support.TransactionOperations;

@ExtendWith(OutputCaptureExtension.class)
class FirstAdministratorTests {

    private final JdbcConnectionPool pool =
            JdbcConnectionPool.create("jdbc:h2:mem:first-administrator;DB_CLOSE_DELAY=-1", "sa", "");
    private final PasswordEncoder encoder = PasswordEncoderFactories.createDelegatingPasswordEncoder();
    private AccountStore store;

    @BeforeEach
    void migrate() {
        MigratedDatabases.anew(pool);
        store = new AccountStore(JdbcClient.create(pool));
    }

    @AfterEach
    void close() {
        pool.dispose();
    }

    @Test
    void isMadeAtTheFirstStartWithTheOneTimePasswordOnTheConsole(CapturedOutput output) {
        start();

        Account first = store.bySubject("administrator").orElseThrow();
        String password = output.getOut().replaceAll("(?s).*one-time password (\\S+).*", "$1");
        assertThat(encoder.matches(password, first.passwordHash())).isTrue();
        assertThat(first.mustChangePassword()).isTrue();
        assertThat(store.posts(first.id(), java.time.LocalDate.EPOCH)).containsExactly("ADMINISTRATOR");
    }

    @Test
    void isNotMadeWhereThereAreLogIns(CapturedOutput output) {
        store.add("anna", "hash", null, "Anna", false);

        start();

        assertThat(store.all()).hasSize(1);
        assertThat(output.getOut()).doesNotContain("one-time password");
    }

    private void start() {
        new FirstAdministrator(store, encoder, TransactionOperations.withoutTransaction())
                .run(new DefaultApplicationArguments());
    }
}
