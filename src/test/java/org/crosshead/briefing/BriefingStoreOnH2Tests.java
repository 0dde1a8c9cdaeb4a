package org.crosshead.briefing;

import javax.sql.DataSource;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** Briefings on the embedded database. */
class BriefingStoreOnH2Tests extends BriefingStoreContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:briefing-store;DB_CLOSE_DELAY=-1", "sa", "");

    @Override
    DataSource dataSource() {
        return POOL;
    }

    @AfterAll
    static void close() {
        POOL.dispose();
    }
}
