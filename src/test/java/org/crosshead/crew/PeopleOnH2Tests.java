package org.crosshead.crew;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** People on the embedded database. */
class PeopleOnH2Tests extends PeopleContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:people;DB_CLOSE_DELAY=-1", "sa", "");

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
