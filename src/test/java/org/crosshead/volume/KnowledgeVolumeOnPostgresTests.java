package org.crosshead.volume;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** Ten million entries on a real PostgreSQL. */
@SpringBootTest
class KnowledgeVolumeOnPostgresTests extends KnowledgeVolumeContract {

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
    int entriesEach() {
        return 5_000;
    }

    @Override
    String numbers(int most) {
        return "(select n from generate_series(1, " + most + ") as g(n)) as e";
    }

    @Override
    void analyse() {
        database.sql("analyze").update();
    }

    @Override
    void forbidScansWhereAnIndexWillDo() {
        // With figures of ten million rows its planner scans none of them for one person or section.
    }
}
