package org.crosshead.competence;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterAll;

/** Knowledge on the embedded database. */
class KnowledgeOnH2Tests extends KnowledgeContract {

    private static final JdbcConnectionPool POOL =
            JdbcConnectionPool.create("jdbc:h2:mem:knowledge;DB_CLOSE_DELAY=-1", "sa", "");

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
