package org.crosshead.route;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** The route services on a real PostgreSQL. */
class RouteOnPostgresTests extends RouteStoreContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
