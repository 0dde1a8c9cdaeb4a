package org.crosshead.volume;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A season on a real PostgreSQL. */
@SpringBootTest
class VolumeOnPostgresTests extends VolumeContract {

    private static final EmbeddedPostgres POSTGRES = start();

    @Autowired
    private JdbcClient database;

    private static EmbeddedPostgres start() {
        try {
            return EmbeddedPostgres.start();
        } catch (IOException ex) {
            throw new IllegalStateException(ex);
        }
    }

    @DynamicPropertySource
    static void dataSource(DynamicPropertyRegistry properties) {
        properties.add("spring.datasource.url", () -> POSTGRES.getJdbcUrl("postgres", "postgres"));
        properties.add("spring.datasource.username", () -> "postgres");
        properties.add("spring.datasource.password", () -> "");
        // One connection, so that what is set for a plan holds for it.
        properties.add("spring.datasource.hikari.maximum-pool-size", () -> "2");
    }

    @AfterAll
    void stop() throws IOException {
        POSTGRES.close();
    }

    @Override
    String database() {
        return "postgresql";
    }

    @Override
    void forbidScansWhereAnIndexWillDo() {
        database.sql("alter database postgres set enable_seqscan = off").update();
        database.sql(
                        "select pg_terminate_backend(pid) from pg_stat_activity where datname = 'postgres' and pid <> pg_backend_pid()")
                .query()
                .listOfRows();
        database.sql("set enable_seqscan = off").update();
    }
}
