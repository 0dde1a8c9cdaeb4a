package org.crosshead.platform.account;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** Log-ins on the embedded database. */
class AccountsOnH2Tests extends AccountStoreContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:accounts;DB_CLOSE_DELAY=-1", "sa", "");

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
