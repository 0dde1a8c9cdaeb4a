package org.crosshead.working;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** The service of trains on a real PostgreSQL. */
class TrainsOnPostgresTests extends TrainsContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
