package org.crosshead.crew;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** People on a real PostgreSQL. */
class PeopleOnPostgresTests extends PeopleContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
