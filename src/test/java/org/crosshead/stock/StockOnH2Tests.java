package org.crosshead.stock;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** The stock services on the embedded database. */
class StockOnH2Tests extends StockStoreContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:stock;DB_CLOSE_DELAY=-1", "sa", "");

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
