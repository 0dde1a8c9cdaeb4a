package org.crosshead.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import org.crosshead.route.Routes;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** The demonstration railway goes in whole on PostgreSQL too. */
@SpringBootTest
@ActiveProfiles("demo")
class DemonstrationOnPostgresIntegrationTests {

    @SuppressWarnings("NullAway.Init") // started before the context
    private static EmbeddedPostgres postgres;

    @Autowired
    private Routes routes;

    @Autowired
    private JdbcClient jdbc;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) throws IOException {
        postgres = EmbeddedPostgres.start();
        properties.add("spring.datasource.url", () -> postgres.getJdbcUrl("postgres", "postgres"));
        properties.add("spring.datasource.username", () -> "postgres");
    }

    @AfterAll
    static void stop() throws IOException {
        postgres.close();
    }

    @Test
    void importsTheWholeRailway() {
        assertThat(routes.all()).hasSize(3);
        assertThat(jdbc.sql("select count(*) from train").query(Integer.class).single())
                .isEqualTo(11);
        assertThat(jdbc.sql("select count(*) from person").query(Integer.class).single())
                .isEqualTo(13);
    }
}
