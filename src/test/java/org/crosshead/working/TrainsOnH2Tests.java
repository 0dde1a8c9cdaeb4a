package org.crosshead.working;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** The service of trains on the embedded database. */
class TrainsOnH2Tests extends TrainsContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:working;DB_CLOSE_DELAY=-1", "sa", "");

    @Override
    DataSource dataSource() {
        MigratedDatabases.anew(POOL);
        return POOL;
    }

    @AfterAll
    static void close() {
        POOL.dispose();
    }
}
