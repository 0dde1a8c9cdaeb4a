package org.crosshead.briefing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Briefings on a real PostgreSQL. */
class BriefingStoreOnPostgresTests extends BriefingStoreContract {

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
