package org.crosshead.stock;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** The stock services on a real PostgreSQL. */
class StockOnPostgresTests extends StockStoreContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
