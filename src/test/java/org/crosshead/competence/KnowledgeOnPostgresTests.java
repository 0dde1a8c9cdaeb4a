package org.crosshead.competence;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Knowledge on a real PostgreSQL. */
class KnowledgeOnPostgresTests extends KnowledgeContract {

    private static EmbeddedPostgres postgres;

    @BeforeAll
    static void start() throws IOException {
        postgres = EmbeddedPostgres.start();
    }

    @Override
    DataSource dataSource() {
        return postgres.getPostgresDatabase();
    }

    @AfterAll
    static void stop() throws IOException {
        postgres.close();
    }
}
