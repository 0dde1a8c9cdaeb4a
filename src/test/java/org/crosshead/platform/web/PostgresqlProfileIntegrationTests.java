package org.crosshead.platform.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.web.Browser.location;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.DynamicPropertyRegistrar;

/** The service on PostgreSQL, by the profile and the three variables that the README names. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@ActiveProfiles("postgresql")
@DirtiesContext
class PostgresqlProfileIntegrationTests {

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PasswordEncoder encoder;

    /** A database that begins before the service and ends after it. */
    @TestConfiguration
    static class Database {

        @Bean(destroyMethod = "close")
        EmbeddedPostgres postgres() throws IOException {
            return EmbeddedPostgres.start();
        }

        @Bean
        DynamicPropertyRegistrar variables(EmbeddedPostgres postgres) {
            return registry -> {
                registry.add("CROSSHEAD_DB_URL", () -> postgres.getJdbcUrl("postgres", "postgres"));
                registry.add("CROSSHEAD_DB_USER", () -> "postgres");
                registry.add("CROSSHEAD_DB_PASSWORD", () -> "postgres");
            };
        }
    }

    @Test
    void keepsSessionsAndTheFirstAdministrator() throws Exception {
        jdbc.sql("update account set password_hash = ?, must_change_password = false where subject = 'administrator'")
                .param(encoder.encode("a good long word"))
                .update();
        Browser browser = new Browser(port);

        assertThat(location(browser.logIn("administrator", "a good long word"))).startsWith("/");
        assertThat(browser.get("/accounts").statusCode()).isEqualTo(200);
        assertThat(browser.get("/journal").statusCode()).isEqualTo(200);
        assertThat(jdbc.sql("select count(*) from spring_session where principal_name = 'administrator'")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }
}
